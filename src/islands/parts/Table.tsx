/** A table of texts that scrolls in its own box where the page is narrow. */
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
              <th scope="row">{head}</th>
              {cells.map((cell) => (
                <td>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
