/** Characters shown of a long file: a box with all of it is slow. */
const SHOWN = 20_000;
/** Stands for the rest of it. */
const MORE = '\n…';

/** What a file of a logger may be called. */
export const LOG_FILES = '.csv,.txt,.tsv,text/*';

/** What numbers without a unit are in, for a reader of these units. */
export const SCALES = { metric: '°C', us: '°F' } as const;

/** The box for the rows of a temperature log. What is typed into a long one leaves the rest of it as it is. */
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
