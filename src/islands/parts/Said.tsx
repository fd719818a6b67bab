import { useSettled } from '../hooks.ts';

/**
 * What a screen reader hears once the text has settled. A component of its own, so that the pause
 * redraws nothing else.
 */
export const Said = ({ text }: { readonly text: string }) => (
  <p class="unseen" role="status">
    {useSettled(text)}
  </p>
);
