import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = 'src/styles';

/** A style sheet without its comments and without what is for paper only. */
function forScreen(css: string): string {
  let text = css.replace(/\/\*[\s\S]*?\*\//g, '');
  for (let from = text.indexOf('@media print'); from >= 0; from = text.indexOf('@media print')) {
    let open = 0;
    let to = text.indexOf('{', from);
    do {
      if (text[to] === '{') open++;
      if (text[to] === '}') open--;
      to++;
    } while (open > 0);
    text = text.slice(0, from) + text.slice(to);
  }
  return text;
}

/** Rules that make the browser style all of a page anew whenever anything in it comes or goes. */
const hungOnThePage = (css: string) =>
  [...forScreen(css).matchAll(/(?:^|[\s,}>~+])((?:html|body|main|:root)[^\s,{]*:has\()/g)].map(
    ([, rule]) => rule,
  );

test('no rule for the screen asks the whole page what it holds', () => {
  expect(hungOnThePage('a{} body:has(.x) .y{} /* main:has(.z) */ main.w:has(> p){}')).toEqual([
    'body:has(',
    'main.w:has(',
  ]);
  expect(hungOnThePage('@media print { body:has(.x) { a { b: c } } } .domain:has(p){}')).toEqual(
    [],
  );
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.css')))
    expect(hungOnThePage(readFileSync(`${folder}/${file}`, 'utf8')), file).toEqual([]);
});
