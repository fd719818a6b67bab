import type { OffersProps } from '../fields.ts';

/** Common values beside a field, as buttons: the label of each, and the text it types. */
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
