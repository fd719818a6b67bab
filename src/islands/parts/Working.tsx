/** The formulas, each followed by the same with the reader's numbers in it. */
export function Working({
  formulas,
  put,
}: {
  readonly formulas: readonly string[];
  readonly put: readonly string[];
}) {
  return (
    <details class="working">
      <summary>Show the working</summary>
      <ol>
        {formulas.map((html, i) => (
          <li>
            <div class="formula" data-formula dangerouslySetInnerHTML={{ __html: html }} />
            {put[i] && <p class="put">{put[i]}</p>}
          </li>
        ))}
      </ol>
    </details>
  );
}
