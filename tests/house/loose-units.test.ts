import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { looseUnits } from './loose-units.ts';

const folder = 'src/worksheets';
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.tsx?$/.test(file),
);

const loose = (code: string) => looseUnits('a.tsx', code).map(({ text }) => text);

test('a unit that may begin a line is found in every sort of text', () => {
  expect(loose("const a = 'less than 5 °C';")).toEqual(['less than 5 °C']);
  expect(loose(`const a = \`at \${t} °C and \${p} % of it\`;`)).toEqual([' °C and ', ' % of it']);
  expect(loose('const a = <p>some 3 × 4 m of it</p>;')).toEqual(['some 3 × 4 m of it']);
  expect(loose('const a = "some 5\\u00a0m of it";')).toEqual([]);
});

test('what is entered or drawn is no text', () => {
  expect(loose("number('mass', { example: '5 kg', min: '1 g' }); weighed('x', '0 kg');")).toEqual(
    [],
  );
  expect(loose('const a = <path d="M0 0 L5 4 h5" />;')).toEqual([]);
});

// The built pages are mended as a whole; what a worksheet draws once it is awake is not.
test('no worksheet parts a number from its unit', () => {
  expect(files.length).toBeGreaterThan(0);
  const parted = files.flatMap((file) =>
    looseUnits(file, readFileSync(join(folder, file), 'utf8')).map(
      ({ text }) => `${file}: ${text.trim()}`,
    ),
  );
  expect(parted).toEqual([]);
});
