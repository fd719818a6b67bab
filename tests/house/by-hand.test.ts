import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { byHand, byHandInText } from './by-hand.ts';

const filesOf = (pattern: string) => {
  const files = globSync(pattern).map((file) => file.replaceAll('\\', '/'));
  expect(files.length).toBeGreaterThan(60);
  return files;
};
const found = (pattern: string, look: (file: string, code: string) => readonly string[]) =>
  filesOf(pattern).flatMap((file) =>
    look(file, readFileSync(file, 'utf8')).map((text) => `${file}: ${text}`),
  );

test('a number set by hand is seen where a unit stands behind it', () => {
  const seen = (code: string) => byHand('a.tsx', code);
  expect(
    seen(`const a = \`\${x.toFixed(1)}\u00a0°F and \${+(y * 100).toPrecision(3)}\u00a0% of it\`;`),
  ).toHaveLength(2);
  expect(seen('const a = <p>{(x * 100).toFixed(0)}&nbsp;% or {x.toFixed(0)} %</p>;')).toHaveLength(
    2,
  );
  // By a name, and in a unit that a name holds.
  expect(
    seen(`const d = (s) => (s / DAY).toFixed(1); const a = \`\${d(3)}\u00a0d\`;`),
  ).toHaveLength(1);
  expect(seen(`const n = String(x.toFixed(2)); const a = \`\${n}\u00a0\${unit}\`;`)).toHaveLength(
    1,
  );
  // A ratio, a coordinate, and what 'say' has set.
  expect(seen(`const a = \`\${x.toFixed(2)} times \${say(x, 'mass')}\u00a0more\`;`)).toEqual([]);
  expect(seen(`const a = <path d={\`M\${x.toFixed(1)} \${y.toFixed(1)}h4\`} />;`)).toEqual([]);
});

test('and in a chapter, where the unit would be another in the other system', () => {
  expect(
    byHandInText('holds {mix.cement.toFixed(0)} kg of it, {a.b.toPrecision(2)} kg/m³.'),
  ).toEqual(['mix.cement.toFixed(0) kg', 'a.b.toPrecision(2) kg/m³']);
  expect(byHandInText('{x.toFixed(2)} in all, {x.toFixed(1)} h, {x.toFixed(0)} litres')).toEqual(
    [],
  );
});

test('no worksheet sets a number with a unit by hand', () => {
  expect(found('src/worksheets/**/*.{ts,tsx}', byHand)).toEqual([]);
});

/** Where a chapter does, and why. */
const STANDS: Readonly<Record<string, string>> = {
  'curing/drying-wind.mdx: usActionAnHour.toFixed(3) kg/(m²·h)': 'in US units just before it',
  'mix/proportion.mdx: base.massPerCement.toFixed(2) kg': 'worked in kilograms and litres',
  'mix/proportion.mdx: demoCube.cement.toFixed(1) kg': 'worked in kilograms and cubic metres',
  'mix/proportion.mdx: demoCube.foamVolume.toFixed(4) m³': 'worked in kilograms and cubic metres',
  'mix/proportion.mdx: litresPerCement.toFixed(3) L': 'worked in kilograms and litres',
  'safety/skin-and-eyes.mdx: chromium.toFixed(0) mg': 'to the kilogram: a ratio',
  'water/foam-and-soap.mdx: lostPerGram.laurate.toFixed(1) g': 'for each gram: a ratio',
  'water/foam-and-soap.mdx: lostPerGram.oleate.toFixed(1) g': 'for each gram: a ratio',
  'water/hardness.mdx: mainsHardness.total.toFixed(2) mmol/L':
    'as chemists say it; in both just after it',
  'water/softening.mdx: (SALT_PER_EQUIVALENT * 1000).toFixed(0) g':
    'to an equivalent, of chemistry',
};

test('no chapter gives an amount in one system alone', () => {
  const all = found('content/chapters/**/*.{mdx,ts}', (_, text) => byHandInText(text));
  expect(all.map((text) => text.replace('content/chapters/', '')).toSorted()).toEqual(
    Object.keys(STANDS).toSorted(),
  );
});
