/** Properties of a worksheet that stand beside it in its page. */
const BESIDE = ['cautions', 'defers', 'sources'];

/**
 * Removes from a worksheet's script what only the build reads: the texts beside it, and the TeX of
 * its formulas, which are already typeset in the page.
 * @returns {import('vite').Plugin}
 */
export const withoutBuilt = () => ({
  name: 'without-built',
  enforce: 'pre',
  apply: 'build',
  applyToEnvironment: ({ name }) => name === 'client',
  transform: {
    filter: { id: /src[\\/]worksheets[\\/].*\.tsx$/, code: 'export default worksheet(' },
    handler(code) {
      return lighter(code, this.parse(code, { lang: 'tsx' }));
    },
  },
});

/**
 * The source of a worksheet's file, reduced to what a browser needs.
 * @param {string} code
 * @param {any} file  as parsed
 */
export function lighter(code, file) {
  /** @type {(part: any) => string} */
  const text = ({ start, end }) => code.slice(start, end);
  /** @type {(object: any, names: readonly string[], said?: (property: any) => string) => string} */
  const without = ({ properties }, names, said = text) =>
    `{${properties.filter((/** @type {any} */ { key }) => !names.includes(key?.name)).map(said)}}`;
  /** @type {(step: any) => string} */
  const step = (step) => without(step, ['tex']);
  const [sheet] = file.body.find(isDefault).declaration.arguments;
  const light = without(sheet, BESIDE, (property) =>
    property.key?.name === 'working'
      ? `working:[${property.value.elements.map(step)}]`
      : text(property),
  );
  return code.slice(0, sheet.start) + light + code.slice(sheet.end);
}

const isDefault = (/** @type {{ type: string }} */ { type }) => type === 'ExportDefaultDeclaration';
