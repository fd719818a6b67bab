/**
 * In a narrow column a long number may wrap before a long unit, except in brackets, so that the
 * table fits the page. It never wraps before a short unit or its ±. A short sum in brackets does
 * not wrap.
 */
const breakable = (text: string) =>
  (text.length <= 12
    ? text
    : text.replace(/(?<!±)\u00a0(?![^(]*\))(?!\S{1,3}(?:[\s,]|$))/g, ' ')
  ).replace(/\([^)]{1,15}\)/g, (sum) => sum.replaceAll(' ', '\u00a0'));

/** A cell with more than an amount and its bracket wraps on a wide page too. */
const long = (cell = '') => (cell.length > 21 ? 'long' : undefined);

/**
 * A number, with its ± if any, and its unit, and nothing after that: no date, no sum in brackets.
 */
const AMOUNT =
  /^([\d.,\u202f\u2212+-]*\d(?:[ \u00a0]±[ \u00a0][\d.,]+)?)\u00a0((?:\/\(|[^\d,;(±\u00a0])+\)?)$/;

/** The unit that all numbers of a column share, if any; a cell without a digit does not count. */
function sharedUnit(cells: readonly string[]): string | undefined {
  const numbers = cells.filter((cell) => /\d/.test(cell));
  const units = new Set(numbers.map((cell) => AMOUNT.exec(cell)?.[2]));
  const [unit] = units;
  return numbers.length > 1 && units.size === 1 ? unit : undefined;
}

/** The number of characters before the decimal point of a cell that holds only a number, or one with its ±. */
const lead = (cell = '') =>
  /^([+\u2212]?[\d\u202f]+)(?:[.,]\d+)?(?:[ \u00a0]±.*)?$/.exec(cell)?.[1]?.length ?? 0;

/**
 * A table of texts. The points of a column's numbers stand below each other. Cells wrap on a narrow
 * page, and what still does not fit scrolls. In a row with fewer cells than the head, the last cell
 * spans the remaining columns.
 */
export function Table({
  caption,
  columns,
  rows,
}: {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}) {
  if (rows.length === 0) return null;
  // A unit stated once, in the head, leaves more room for the numbers.
  const units = columns.map((column, i) => column && sharedUnit(rows.map((row) => row[i] ?? '')));
  const bare = (cell = '', i: number) => (units[i] && AMOUNT.exec(cell)?.[1]) || cell;
  const leads = columns.map((_, i) => Math.max(...rows.map((row) => lead(bare(row[i], i)))));
  const text = (cell: string, i: number) => {
    const shown = bare(cell, i);
    // Spaces as wide as a digit.
    return '\u2007'.repeat(lead(shown) && leads[i]! - lead(shown)) + breakable(shown);
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by key
    <section class="scroll" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column, i) =>
              column ? (
                <th scope="col">
                  {column}
                  {units[i] && <span class="in-unit">, {units[i]}</span>}
                </th>
              ) : (
                <td />
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells]) => (
            <tr>
              <th scope="row" class={long(head)}>
                {text(head ?? '', 0)}
              </th>
              {cells.map((cell, i) => (
                <td
                  class={long(cell)}
                  colSpan={
                    i + 1 === cells.length && i + 2 < columns.length
                      ? columns.length - cells.length
                      : undefined
                  }
                >
                  {text(cell, i + 1)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
