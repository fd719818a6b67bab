import { useSettled } from '../hooks.ts';

/** What a screen reader hears once it has settled: by itself, so that the pause draws nothing else. */
export const Said = ({ text }: { readonly text: string }) => (
  <p class="unseen" role="status">
    {useSettled(text)}
  </p>
);
