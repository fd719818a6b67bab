import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries, System } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import dryingToUse from '../../src/worksheets/curing/drying-to-use.tsx';
import frostGuard from '../../src/worksheets/curing/frost-guard.tsx';
import heatInside from '../../src/worksheets/curing/heat-inside.tsx';
import strengthTime from '../../src/worksheets/curing/strength-time.tsx';
import heatThrough from '../../src/worksheets/finished/heat-through.tsx';
import strengthDensity from '../../src/worksheets/finished/strength-density.tsx';
import { sheets } from './all.ts';
import { mustAnswer } from './must-answer.ts';

interface Picture {
  /** What a screen reader is given. */
  readonly label: string;
  /** What is drawn, and what stands below it. */
  readonly inside: string;
  readonly caption: string;
}

const drawing = /<svg\b([^>]*)>([\s\S]*?)<\/svg>(?:\s*<figcaption[^>]*>([\s\S]*?)<\/figcaption>)?/g;
const spaced = (text: string) => text.replace(/&(?:#160|nbsp);|\u00a0/g, ' ');

function pictures(sheet: AnyWorksheet, system: System, entries: Entries = {}): Picture[] {
  const say = speaker(system);
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  const picture = sheet.figure?.({ values: found.values, result: found.result, say });
  if (!picture) return [];
  return [...renderToString(h(Fragment, {}, picture)).matchAll(drawing)].map(
    ([, about = '', inside = '', caption = '']) => ({
      label: spaced(/aria-label="([^"]*)"/.exec(about)?.[1] ?? ''),
      inside: spaced(inside),
      caption: spaced(caption),
    }),
  );
}

const METRIC =
  '°C|mm|m|kg|g|mg/L(?: CaCO₃)?|L|mL|Pa|kPa|MPa|bar|kJ|kg/m³|g/L|L/min|W/\\(m·K\\)|kg/\\(m²·h\\)|mPa·s';
const US =
  '°F|in|ft|lb|oz|gal|qt|psi|psf|cfm|Btu|Btu·in/\\(h·ft²·°F\\)|lb/ft³|lb/\\(ft²·h\\)|gpg|oz/gal';
const EITHER = '%|d|days|h|min|s';
/** Numbers that have their unit behind them, or share the one behind the next: `6 to 21 °C`. */
const withUnit = (units: string) =>
  new RegExp(`(?<![\\d.])(\\d[\\d.]*)(?=(?: (?:to|and) [−\\d.]+)? (?:${units})(?![\\w/·³]))`, 'g');
const plain = (text: string) => text.toLowerCase().replaceAll(',', '');
/** pH has no unit: its name stands for one. */
const ACIDITY = /(?<=pH [^;]*)\d[\d.]*/g;
const count = (text: string, of: RegExp) => text.match(of)?.length ?? 0;

/** Metric by design, in both systems: viscosity has no US unit in use. */
const METRIC_IN_BOTH: Readonly<Record<string, string>> = {
  glycerol: 'mPa·s',
};

describe.each(sheets.filter(({ figure }) => figure).map((sheet) => [sheet.id, sheet] as const))(
  'the picture of %s',
  (id, sheet) => {
    test.each(['metric', 'us'] as const)('describes what it draws in %s', (system) => {
      const drawn = pictures(sheet, system);
      expect(drawn.length).toBeGreaterThan(0);
      for (const { label, inside, caption } of drawn) {
        if (/class="(?:curve|band)\b/.test(inside)) {
          const numbers = count(label, withUnit(`${METRIC}|${US}|${EITHER}`));
          expect(numbers + count(label, ACIDITY), label).toBeGreaterThanOrEqual(2);
        }
        const foreign = label.match(withUnit(system === 'us' ? METRIC : US)) ?? [];
        const allowed = system === 'us' ? METRIC_IN_BOTH[id] : undefined;
        const excused = allowed ? (label.match(withUnit(allowed)) ?? []) : [];
        expect(foreign, label).toEqual(excused);
        // A minus, no hyphen; no power of ten where a number will do.
        expect(label).not.toMatch(/(?:^|[\s(])-\d|\de[+-]?\d|NaN|undefined/);
        // Every level that is drawn is named, and has its number there.
        for (const [, name = ''] of inside.matchAll(
          /class="level"[^>]*><\/path><text[^>]*>([^<]*)<\/text>/g,
        ))
          if (name) expect(plain(`${label} ${caption}`)).toContain(plain(name));
      }
    });
  },
);

test('every listed exception from the reader’s units still occurs', () => {
  for (const [id, unit] of Object.entries(METRIC_IN_BOTH)) {
    const sheet = sheets.find((sheet) => sheet.id === id)!;
    expect(pictures(sheet, 'us').some(({ label }) => count(label, withUnit(unit)) > 0)).toBe(true);
  }
});

test('the drying curve describes when it is dry enough, how dry, and the range', () => {
  const [{ label }] = pictures(dryingToUse as AnyWorksheet, 'metric') as [Picture];
  expect(label).toMatch(/dry enough, 4\.2 %, after 37 d, in the band after 7\.3 d to 180 d/);
});

describe('the frost picture', () => {
  const strengths = (entries: Entries, system: System = 'metric') =>
    pictures(frostGuard as AnyWorksheet, system, entries).map(({ label }) => label);
  test('describes the strength waited for, and when it is reached', () => {
    expect(strengths({})[1]).toMatch(/what you wait for, 0\.30 MPa, is reached after 6\.4 d/);
    expect(strengths({}, 'us')[1]).toMatch(/what you wait for, 44 psi, is reached after 6\.4 d/);
  });
  test('gives an early freeze in hours, with a true minus sign', () => {
    const cold = { 'curing.days': { t: '8 12\n-4 3\n-4 3' } };
    const [warmth, ...young] = strengths(cold);
    expect(warmth).toMatch(/from −4 °C to 1\d °C, against freezing at 0 °C/);
    // Too young for any strength as it freezes: none is drawn.
    expect(young).toEqual([]);
    const later = strengths({ 'curing.days': { t: '8 12\n8 12\n-4 3\n-4 3' } });
    expect(later[1]).toMatch(
      /^Strength grows to .* in \d\d h, and it freezes; .* is not reached\./,
    );
    // Typed in the reader's own unit there.
    const us = { 'curing.days': { t: '46 54\n25 37\n25 37' } };
    expect(strengths(us, 'us')[0]).toMatch(/from 25 °F to .* against freezing at 32 °F/);
  });
});

test('the heat inside is described for wet and dry conductivity, and at the faces', () => {
  const sheet = heatInside as AnyWorksheet;
  const say = speaker('metric');
  const found = answer(sheet, readWorksheet(sheet, {}, {}, say), say);
  if (!found.ok) throw new Error('no answer');
  const { asDry } = found.result as ReturnType<typeof heatInside.work>;
  const [, curves] = pictures(sheet, 'metric') as [Picture, Picture];
  const dry = spaced(say(asDry!.peak.temperature, 'temperature'));
  const lag = spaced(say(asDry!.difference.value, 'temperatureDifference', { significant: 2 }));
  expect(curves.label).toContain(`As when dry: hottest ${dry} after`);
  expect(curves.label).toContain(`the inside is at most ${lag} warmer`);
  expect(curves.label).toMatch(/the faces come to \d+ °C and \d+ °C, as when wet\./);
});

test('each of the reader’s results and each published one is described with its value', () => {
  const own = {
    'strength-density.own': { t: 'crushed' },
    'strength-density.crushed': { t: '500 1.2\n620 2.4' },
  };
  const [{ label }] = pictures(strengthDensity as AnyWorksheet, 'metric', own) as [Picture];
  expect(label).toContain('Your own tests: 500 kg/m³, 1.2 MPa; 620 kg/m³, 2.4 MPa.');
  expect(label).toContain('Crosses: 561 kg/m³ to 1404 kg/m³, 0.18 MPa to 7.8 MPa.');
  const [{ label: us }] = pictures(strengthDensity as AnyWorksheet, 'us') as [Picture];
  expect(us).toContain('7.3 psi to 7300 psi on a logarithmic scale');
  expect(us).not.toContain('own tests');
});

test('the dry band and the measured points of conductivity are described', () => {
  const [{ label }] = pictures(heatThrough as AnyWorksheet, 'metric') as [Picture];
  expect(label).toMatch(/dry: 0\.10 W\/\(m·K\) to 0\.15 W\/\(m·K\); with its moisture/);
  expect(label).toMatch(/Crosses: 561 kg\/m³ to 1404 kg\/m³, 0\.28 W\/\(m·K\) to 0\.66/);
});

test('strengths in psi have no exponent, and own results are described', () => {
  const [{ label }] = pictures(strengthTime as AnyWorksheet, 'us') as [Picture];
  expect(label).toMatch(/at 28 d: 80 psi to 230 psi/);
  const own = {
    'curing.strengthFrom': { t: 'own' },
    'curing.results': { t: '3 0.42\n28 0.8' },
  };
  const [{ label: mine }] = pictures(strengthTime as AnyWorksheet, 'metric', own) as [Picture];
  expect(mine).toContain('Your results: 3.0 d 0.42 MPa; 28 d 0.80 MPa.');
});
