import type { ComponentChildren } from 'preact';
import type { Judgement } from '../worksheet.ts';

export const WORDS = { good: 'Good', look: 'Look again', stop: 'Stop' } as const;

/** Distinguished by shape and word as well as by colour. */
const SHAPES = {
  good: (
    <>
      <circle cx="12" cy="12" r="10.5" />
      <path class="sign" d="M7 12.5l3.5 3.5L17 9" />
    </>
  ),
  look: (
    <>
      <path d="M12 1.8 23 21.5H1Z" />
      <path class="sign" d="M12 9v6M12 18.2v.2" />
    </>
  ),
  stop: (
    <>
      <path d="M7.5 1.5h9l6 6v9l-6 6h-9l-6-6v-9Z" />
      <path class="sign" d="M8 8l8 8M16 8l-8 8" />
    </>
  ),
} as const;

/** What to do about the result, and a link to where. */
export function Verdict({
  verdict,
  say,
  children,
}: Judgement & { readonly children?: ComponentChildren }) {
  return (
    <p class={`verdict ${verdict}`}>
      <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
        {SHAPES[verdict]}
      </svg>
      <span>
        <strong>{WORDS[verdict]}.</strong> {say}
        {children}
      </span>
    </p>
  );
}
