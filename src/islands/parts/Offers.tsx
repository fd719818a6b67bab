import type { OffersProps } from '../fields.ts';

/** A short list of common values beside a field, as buttons: what each says, and what it types. */
export const offers =
  (list: readonly (readonly [label: string, text: string])[]) =>
  ({ onText }: OffersProps) => (
    <p class="offers">
      {list.map(([label, text]) => (
        <button type="button" onClick={() => onText(text)}>
          {label}
        </button>
      ))}
    </p>
  );
