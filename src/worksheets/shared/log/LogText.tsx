/** The number of characters shown of a long file: a box with all of it would be slow. */
const SHOWN = 20_000;
/** Shown in place of the rest. */
const MORE = '\n…';

/** The types of file that a logger may write. */
export const LOG_FILES = '.csv,.txt,.tsv,text/*';

/** The temperature scale assumed for numbers without a unit, by the reader’s system of units. */
export const SCALES = { metric: '°C', us: '°F' } as const;

/**
 * The box for the rows of a temperature log. Of a long log it shows the beginning; typing there
 * keeps the rest.
 */
export function LogText(of: {
  readonly id: string;
  readonly text: string;
  readonly placeholder?: string;
  readonly help?: string;
  readonly onText: (text: string) => void;
}) {
  const long = of.text.length > SHOWN;
  return (
    <textarea
      id={of.id}
      rows={4}
      spellcheck={false}
      autocomplete="off"
      aria-describedby={of.help}
      placeholder={of.placeholder}
      value={long ? of.text.slice(0, SHOWN) + MORE : of.text}
      onInput={(event) => {
        const typed = event.currentTarget.value;
        of.onText(
          long && typed.endsWith(MORE)
            ? typed.slice(0, -MORE.length) + of.text.slice(SHOWN)
            : typed,
        );
      }}
    />
  );
}
