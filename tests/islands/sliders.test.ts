import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import type { NumberReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import HomeBucket from '../../src/worksheets/live/home-bucket.tsx';
import LiftingPoints from '../../src/worksheets/live/lifting-points.tsx';
import blend from '../../src/worksheets/water/blend-waters.tsx';

/** What a screen reader says of the slider in some markup. */
const spoken = (html: string) =>
  /aria-valuetext="([^"]*)"/.exec(html)![1]!.replaceAll('\u00a0', ' ');

/** And of the one beside a field of the blend, with what is typed there. */
function beside(t: string) {
  const { fields } = readWorksheet(blend, { 'water.softTarget': { t } }, {}, speaker('metric'));
  const reading = fields.target as NumberReading;
  const { Input, ...range } = reading.field.slider!;
  return spoken(renderToString(h(Input, { reading, range, onText: () => {}, putBack: () => {} })));
}

test('a slider’s value is announced in one unit, whatever is typed beside it', () => {
  expect(beside('90')).toBe('90 mg/L CaCO₃');
  expect(beside('5 gpg')).toMatch(/^85\.\d* mg\/L CaCO₃$/);
  expect([beside('abc'), beside('')]).toEqual(['no number', 'no number']);
});

test('a slider over a picture announces its result', () => {
  expect(spoken(renderToString(h(HomeBucket, {})))).toMatch(
    /^600 kg\/m³: 7\.75 kg of cement, .* of foam$/,
  );
  expect(spoken(renderToString(h(LiftingPoints, {})))).toMatch(
    /^10 % of the length .* \d+\.\d times the least/,
  );
});
