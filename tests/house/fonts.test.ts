import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = 'src/styles/fonts';
const faces = readdirSync(folder).filter((file) => file.endsWith('.woff2'));

test('all faces together weigh at most 90 kB', () => {
  const total = faces.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
  expect(total).toBeGreaterThan(0);
  expect(total).toBeLessThanOrEqual(90_000);
});

test('every face the styles name is there, and no other is shipped', () => {
  const css = readFileSync('src/styles/fonts.css', 'utf8');
  const named = [...css.matchAll(/\/fonts\/([\w-]+\.woff2)/g)].map((match) => match[1]);
  expect(named.toSorted()).toEqual(faces.toSorted());
});

test('the licence of each family is shipped', () => {
  for (const face of faces) {
    const family = face.split(/[-.]/)[0];
    const licence = readFileSync(join('public/licences', `${family}-OFL.txt`), 'utf8');
    expect(licence, face).toContain('SIL Open Font License');
  }
});
