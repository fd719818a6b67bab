/** Where a column is narrow a number may part from its unit, rather than push the table off the page. */
const breakable = (text: string) => text.replaceAll('\u00a0', ' ');

/** A table of texts; its cells wrap where the page is narrow, and what still does not fit scrolls. */
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
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by key
    <section class="scroll" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>{columns.map((column) => (column ? <th scope="col">{column}</th> : <td />))}</tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells]) => (
            <tr>
              <th scope="row">{breakable(head ?? '')}</th>
              {cells.map((cell) => (
                <td>{breakable(cell)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
