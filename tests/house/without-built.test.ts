import { globSync, readFileSync } from 'node:fs';
import { parseSync } from 'vite';
import { expect, test } from 'vitest';
import { lighter } from '~/components/live/without-built.mjs';

const parse = (code: string) => parseSync('sheet.tsx', code).program;
const BUILT = /^ *(cautions|defers|sources|(\{ )?tex): /m;

const sheets = globSync('src/worksheets/*/*.tsx').filter((file) =>
  /export default worksheet/.test(readFileSync(file, 'utf8')),
);

test('a worksheet’s script has neither what stands beside it nor TeX, and all else', () => {
  expect(sheets.length).toBeGreaterThan(50);
  for (const file of sheets) {
    const code = readFileSync(file, 'utf8');
    expect(code, file).toMatch(BUILT);
    const light = lighter(code, parse(code));
    expect(light, file).not.toMatch(/\b(cautions|defers|sources|tex): /);
    expect(light, file).not.toContain('String.raw');
    expect(parseSync(file, light).errors, file).toEqual([]);
    expect(light.match(/\bput(:|\()/g), file).toEqual(code.match(/\bput(:|\()/g));
  }
});

test('a property spread into it stays', () => {
  const code =
    'const a = 1;\nexport default worksheet({ ...rest, working: [{ tex: "x", put: () => "y" }], sources: ["z"], figure });\n';
  expect(lighter(code, parse(code))).toBe(
    'const a = 1;\nexport default worksheet({...rest,working:[{put: () => "y"}],figure});\n',
  );
});
