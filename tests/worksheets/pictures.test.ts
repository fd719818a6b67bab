import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Shape } from '../../src/core/placing/shapes.ts';
import { judgeMixingWater } from '../../src/core/water/fitness.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { LETTER } from '../../src/islands/plots/scale.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import mixTemperature from '../../src/worksheets/curing/mix-temperature.tsx';
import strengthTime from '../../src/worksheets/curing/strength-time.tsx';
import stripWindow from '../../src/worksheets/demould/strip-window.tsx';
import { ViscosityChart } from '../../src/worksheets/foam/drawn/ViscosityChart.tsx';
import timeInHand from '../../src/worksheets/foam/time-in-hand.tsx';
import correct from '../../src/worksheets/mix/correct.tsx';
import several from '../../src/worksheets/mix/correct-buckets.tsx';
import { DoseBar } from '../../src/worksheets/mix/drawn/DoseBar.tsx';
import { LiftColumn } from '../../src/worksheets/placing/drawn/LiftColumn.tsx';
import { ShapeDrawing } from '../../src/worksheets/placing/drawn/ShapeDrawing.tsx';
import formPressure from '../../src/worksheets/placing/form-pressure.tsx';
import storedEnergy from '../../src/worksheets/safety/stored-energy.tsx';
import blendWaters from '../../src/worksheets/water/blend-waters.tsx';
import { LimitBars } from '../../src/worksheets/water/drawn/LimitBars.tsx';
import soapLost from '../../src/worksheets/water/soap-lost.tsx';
import softenSoda from '../../src/worksheets/water/soften-soda.tsx';
import waterHardness from '../../src/worksheets/water/water-hardness.tsx';
import { mustAnswer } from './must-answer.ts';

/** A worksheet's picture of its example, with some fields filled in. */
function pictureOf(sheet: unknown, entries = {}, system: 'metric' | 'us' = 'metric'): string {
  const own = sheet as AnyWorksheet;
  const say = speaker(system);
  const found = answer(own, readWorksheet(own, entries, {}, say), say);
  mustAnswer(found);
  return renderToString(
    h(Fragment, {}, own.figure?.({ values: found.values, result: found.result, say })),
  );
}
/** Where the lines of a class begin, and how high the highest line of the grid lies. */
const begins = (html: string, name: string) =>
  [...html.matchAll(new RegExp(`class="${name}" d="M([\\d.]+) ([\\d.]+)`, 'g'))].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );
const topLine = (html: string) =>
  Math.min(
    ...[...html.matchAll(/translate\(0 ([\d.]+)\)"><path class="grid"/g)].map(([, y]) => Number(y)),
  );

const slab = { shape: 'slab', length: 0.45, width: 0.3, thickness: 0.06 } as const;

describe('the labels and lines of pictures', () => {
  test('a limit of a single standard is level with its name', () => {
    const judged = judgeMixingWater(
      { nitrate: 0.02, dissolvedSolids: 0.5, sulfate: 0.05 },
      'plain',
    );
    const html = renderToString(
      h(LimitBars, {
        judged,
        names: { nitrate: 'Nitrate', dissolvedSolids: 'Solids', sulfate: 'Sulfate' },
        say: speaker('metric'),
      }),
    );
    const heights = (name: string) =>
      [
        ...(html.split(`${name}</text>`)[1]?.split('class="strong"')[0] ?? '').matchAll(
          /<rect[^>]* y="(\d+)"/g,
        ),
      ].map(([, y]) => Number(y));
    expect(heights('Sulfate')).toHaveLength(2);
    const between = heights('Sulfate').reduce((a, b) => a + b) / 2;
    expect(heights('Nitrate')).toEqual([between]);
    expect(heights('Solids')).toEqual([between]);
  });

  test.each([
    [4500, '100'],
    [4501, '100.02'],
    [4499, '99.98'],
    [3000, '67'],
  ])('chloride of %d mg/L where 4500 are allowed is %s % of the limit', (mgPerL, percent) => {
    const judged = judgeMixingWater({ chloride: mgPerL / 1000 }, 'plain');
    const html = renderToString(
      h(LimitBars, { judged, names: { chloride: 'Chloride' }, say: speaker('metric') }),
    );
    expect(html).toContain(`Chloride ${percent}\u00a0% of EN 1008`);
    expect(html).toContain(`EN ${percent}\u00a0%<`);
  });

  test('a water harder than the usual axis extends the axis', () => {
    const dots = (hardness: string) => {
      const html = pictureOf(soapLost, {
        [benchKey(soapLost, 'hardness')]: { t: hardness, u: 'mg/L CaCO3' },
      });
      const numbers = [...html.matchAll(/y="21" text-anchor="middle">(\d+)</g)];
      const [, yours] = [...html.matchAll(/<circle[^>]* cx="([\d.]+)" cy="([\d.]+)"/g)];
      return {
        at: [Number(yours![1]), Number(yours![2])],
        right: Number(/class="axis" d="M[\d.]+ [\d.]+V[\d.]+H([\d.]+)/.exec(html)![1]),
        top: topLine(html),
        last: Number(numbers.at(-1)![1]),
      };
    };
    // All of 8.2 g/L of oleate is lost from 1347.9 mg/L on: at the top, and here at the end of the axis.
    const hard = dots('1500');
    expect(hard.at[0]).toBeCloseTo(hard.right, 6);
    expect(hard.at[1]).toBeCloseTo(hard.top, 6);
    expect(hard.last).toBeGreaterThan(1348);
    const usual = dots('311');
    expect(usual.last).toBe(800);
    expect(usual.at[0]).toBeLessThan(usual.right / 2);
  });

  test('a dose is written above its dot, and inside the picture', () => {
    for (const dose of [0.05, 3, 14]) {
      const html = renderToString(h(DoseBar, { dose, usual: [1, 6], ceiling: 10, title: 'T' }));
      const dot = Number(/<circle[^>]* cx="([\d.]+)"/.exec(html)?.[1]);
      const [, x, y] =
        /class="strong" x="([\d.]+)" y="([\d.]+)" text-anchor="middle"/.exec(html) ?? [];
      const bar = Number(/class="band"[^>]* y="([\d.]+)"/.exec(html)?.[1]);
      expect(Number(y)).toBeLessThan(bar);
      expect(Math.abs(Number(x) - dot)).toBeLessThan(16);
      expect(Number(x)).toBeGreaterThanOrEqual(28);
      expect(Number(x)).toBeLessThanOrEqual(392);
    }
  });

  test('the dose scale reaches the dose', () => {
    for (const dose of [3, 14, 60]) {
      const html = renderToString(h(DoseBar, { dose, usual: [1, 6], ceiling: 10, title: 'T' }));
      const numbers = [...html.matchAll(/middle">(\d+)</g)].map(([, number]) => Number(number));
      expect(Math.max(...numbers)).toBeGreaterThan(0.8 * Math.max(dose, 10));
    }
  });

  test.each([
    ['one bucket', correct, benchKey(correct, 'tolerance')],
    ['several', several, benchKey(several, 'tolerance')],
  ] as const)('what is near enough, and its name, lie in the picture: %s', (_, sheet, key) => {
    for (const tolerance of ['5', '20', '50']) {
      const html = pictureOf(sheet, { [key]: { t: tolerance, u: '%' } });
      const [, x, width] = /class="band" x="([\d.-]+)" width="([\d.]+)"/.exec(html)!.map(Number);
      expect(x).toBeGreaterThanOrEqual(14);
      expect(x! + width!).toBeLessThanOrEqual(406.01);
      const [, at, anchor] = /class="soft" x="([\d.-]+)" y="\d+" text-anchor="(\w+)">near/.exec(
        html,
      )!;
      const left = Number(at) - (anchor === 'end' ? 95 : 0);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + 95).toBeLessThanOrEqual(420);
    }
  });

  test.each([
    ['one bucket', correct],
    ['several', several],
  ] as const)(
    'a base mix far beyond a correction is named at the end of its scale, one near by lies on it: %s',
    (_, sheet) => {
      const drawn = (target: string) => {
        const html = pictureOf(sheet, {
          [benchKey(sheet, 'target')]: { t: target, u: 'kg/m3' },
          [benchKey(sheet, 'baseDensity')]: { t: '1900', u: 'kg/m3' },
        });
        const numbers = [...html.matchAll(/text-anchor="middle">(\d+)</g)];
        return {
          html,
          circles: html.split('<circle').length - 1,
          last: Number(numbers.at(-1)![1]),
        };
      };
      const far = drawn('600');
      expect(far.html).toMatch(/aria-label="[^"]*base mix 1900\skg/);
      expect(far.html).toMatch(/text-anchor="end">base mix 1900\skg/);
      expect(far.last).toBeLessThan(800);
      expect(drawn('1750').circles).toBe(far.circles + 1);
    },
  );

  test('the limit of hot water is named above all marks', () => {
    const html = pictureOf(mixTemperature, {
      [benchKey(mixTemperature, 'waterAt')]: { t: '70', u: 'degC' },
    });
    const at = (name: string) => Number(new RegExp(`y="([\\d.]+)"[^>]*>${name}`).exec(html)![1]);
    const limit = at('no hotter water');
    const others = ['cement', 'water', 'foam', 'mix'].map((name) => at(`${name} \\d`));
    expect(Math.min(...others) - limit).toBeGreaterThanOrEqual(16);
  });

  test('a form’s picture has the pressure of its answer, and notes how a large bulge is drawn', () => {
    const deep = { [benchKey(formPressure, 'depth')]: { t: '2.4', u: 'm' } };
    expect(pictureOf(formPressure)).toContain('0.353\u00a0kPa');
    expect(pictureOf(formPressure)).toMatch(/drawn \d+ times as large/);
    expect(
      pictureOf(formPressure, { ...deep, [benchKey(formPressure, 'span')]: { t: '1.2', u: 'm' } }),
    ).toMatch(/drawn at \d\d\u00a0% of its size/);
  });

  test('the names of the curves of a wait do not overlap, for any foam', () => {
    const field = (name: string, t: string, u?: string) => ({
      [benchKey(timeInHand, name)]: { t, ...(u && { u }) },
    });
    for (const foam of [40, 80, 110, 140, 160, 200])
      for (const target of [350, 400, 600, 900])
        for (const lives of [60, 100])
          for (const drains of [undefined, '1', '3', '10']) {
            const html = pictureOf(timeInHand, {
              ...field('foamDensity', `${foam}`, 'g/L'),
              ...field('target', `${target}`, 'kg/m3'),
              ...field('plannedSurvival', `${lives}`, '%'),
              ...(drains && { ...field('how', 'line'), ...field('perMinute', drains, '%') }),
            });
            const names = [
              ...html.matchAll(
                /x="([\d.]+)" y="([\d.]+)" text-anchor="(start|end)">((?:all|by) [a-z ]+)</g,
              ),
            ].map(([, x, y, anchor, name]) => {
              const wide = name!.length * LETTER;
              const left = Number(x) - (anchor === 'end' ? wide : 0);
              return { left, right: left + wide, y: Number(y) };
            });
            expect(names.length).toBeGreaterThan(0);
            for (const [i, one] of names.entries())
              for (const other of names.slice(i + 1))
                expect(
                  Math.abs(one.y - other.y) >= 16 ||
                    one.left > other.right ||
                    one.right < other.left,
                  `${foam} g/L, ${target}, ${lives} %, ${drains}`,
                ).toBe(true);
          }
  });

  test('a negligible bulge is drawn straight', () => {
    const short = { [benchKey(formPressure, 'span')]: { t: '20', u: 'mm' } };
    const bent = (html: string) => /class="form" d="[^"]*Q/.test(html);
    expect(bent(pictureOf(formPressure))).toBe(true);
    const html = pictureOf(formPressure, short);
    expect(bent(html.replaceAll(/Q([\d.]+) ([\d.]+) [\d.]+ \2(?=[QvVZ])/g, ''))).toBe(false);
    expect(html).toContain('The panel does not bulge to speak of.');
  });

  test('the words below a core stay inside the picture, whatever its size', () => {
    const taper = {
      shape: 'cone-frustum',
      bottomDiameter: 0.9235,
      topDiameter: 1.1235,
      height: 1.0235,
    } as const;
    for (const system of ['metric', 'us'] as const) {
      const html = renderToString(
        h(ShapeDrawing, {
          shape: slab,
          cores: [{ shape: taper, count: 24 }],
          say: speaker(system),
        }),
      );
      const lines = [...html.matchAll(/<text x="12" y="[\d.]+">([^<]*)</g)].map(
        ([, line]) => line!,
      );
      expect(lines.join(' ')).toContain('less 24 × tapered cylinder, ');
      for (const line of lines) expect(12 + line.length * LETTER).toBeLessThan(420);
    }
  });

  test('the limit line of highly hazardous energy crosses no bar’s name', () => {
    const large = { [benchKey(storedEnergy, 'vessel')]: { t: '500', u: 'L' } };
    const html = pictureOf(storedEnergy, large);
    const names = [...html.matchAll(/translate\(0 (\d+)\)"><text x="\d+" y="(\d+)"/g)].map(
      ([, down, y]) => Number(down) + Number(y),
    );
    expect(names).toHaveLength(3);
    const line = /class="level" d="([^"]*)"/.exec(html)![1]!;
    const pieces = [...line.matchAll(/M[\d.]+ (\d+)([vV])(\d+)/g)].map(
      ([, from, how, to]) => [Number(from), Number(to) + (how === 'v' ? Number(from) : 0)] as const,
    );
    expect(pieces.length).toBeGreaterThan(0);
    // A capital of 14 px is about 10 px high.
    for (const foot of names)
      for (const [from, to] of pieces) expect(from >= foot + 3 || to <= foot - 10).toBe(true);
  });

  test('hardness is drawn in the unit of the text', () => {
    expect(pictureOf(waterHardness)).toContain('Yours: 311');
    // 311 mg/L are 18.2 grains to the US gallon of 17.118 mg/L; the soft water’s 12 are 0.7.
    const us = pictureOf(waterHardness, {}, 'us');
    expect(us).toContain('Yours: 18.2');
    expect(us).toContain('>0.7<');
    expect(us).not.toMatch(/mg\/L/);
  });

  test('a dose at the foot of the softening curve is named above the axis', () => {
    const hard = {
      [benchKey(softenSoda, 'calcium')]: { t: '590', u: 'mg/L' },
      [benchKey(softenSoda, 'magnesium')]: { t: '1', u: 'mg/L' },
      [benchKey(softenSoda, 'target')]: { t: '40', u: 'mg/L CaCO3' },
    };
    const html = pictureOf(softenSoda, hard, 'us').split('</figure>')[0]!;
    const foot = Number(/class="axis" d="M[\d.]+ [\d.]+V([\d.]+)H/.exec(html)![1]);
    const [, y] = /class="strong on-layer" x="[\d.]+" y="([\d.]+)"/.exec(html)!;
    expect(Number(y)).toBeLessThan(foot - 4);
  });

  test('the names of two dosing lines do not overlap, however steep one is', () => {
    for (const exponent of ['1.5', '4']) {
      const html = pictureOf(timeInHand, { [benchKey(timeInHand, 'exponent')]: { t: exponent } });
      const named = (name: string) =>
        /x="([\d.]+)" y="([\d.]+)" text-anchor="(\w+)"$/.exec(html.split(`>${name}<`)[0]!)!;
      const [, , volume] = named('by volume');
      const [, , weight] = named('by weight');
      expect(Math.abs(Number(volume) - Number(weight))).toBeGreaterThanOrEqual(16);
    }
  });

  test('the hardness wanted is named where the line of the blend is far from it', () => {
    const soft = { [benchKey(blendWaters, 'soft')]: { t: '119', u: 'mg/L CaCO3' } };
    expect(pictureOf(blendWaters, soft)).toMatch(/text-anchor="start">wanted 120/);
  });

  test('temperatures of the viscosity curves are whole degrees: 40 °C is 104 °F', () => {
    const html = renderToString(
      h(ViscosityChart, { glycerol: 0.02, temperature: 288.15, say: speaker('us') }),
    );
    expect(html).toContain('>104\u00a0°F<');
    expect(html).toContain('>32\u00a0°F<');
  });

  test('the grid ends before the names of the viscosity curves', () => {
    const html = renderToString(
      h(ViscosityChart, { glycerol: 0.02, temperature: 288.15, say: speaker('us') }),
    );
    const [, x, width] = /class="ground" x="([\d.]+)" width="([\d.]+)"/.exec(html) ?? [];
    const [, right] = /class="grid" d="M[\d.]+ 0H([\d.]+)"/.exec(html) ?? [];
    expect(Number(x)).toBeLessThan(
      Number(/class="soft" x="(3[\d.]+)" y="[\d.]+">32/.exec(html)?.[1]),
    );
    expect(Number(x) + Number(width)).toBeGreaterThanOrEqual(Number(right));
  });

  test('no line of the softening curves leaves its frame', () => {
    const hardness = pictureOf(softenSoda).split('</figure>')[0]!;
    const curves = [...begins(hardness, 'curve'), ...begins(hardness, 'curve dashed')];
    expect(curves).toHaveLength(2);
    for (const [, y] of curves) expect(y).toBeGreaterThanOrEqual(topLine(hardness));
  });

  test('the strength now is a span, and its band begins where strengths are given', () => {
    const html = pictureOf(strengthTime);
    expect(html).not.toContain('<circle');
    expect(html).toMatch(/class="arrow" d="M[\d.]+ [\d.]+h10m-5 0V/);
    // 16 h on an axis of 28 d that is 352 wide.
    expect(begins(html, 'band')[0]![0]).toBeCloseTo(50 + (352 * (16 / 24)) / 28, 1);
    const young = { 'strength-time.age': { t: '0.3', u: 'd' } };
    expect(pictureOf(strengthTime, young)).not.toContain('class="arrow"');
  });

  test('a shape is told with the article its name takes', () => {
    const told = (shape: Shape) =>
      /aria-label="([^:]*):/.exec(
        renderToString(h(ShapeDrawing, { shape, cores: [], say: speaker('metric') })),
      )?.[1];
    const corners = [[0, 0] as const, [0.3, 0] as const, [0.3, 0.2] as const];
    expect(told({ shape: 'prism', corners, height: 0.05 })).toBe('An outline from above');
    expect(told(slab)).toBe('A slab');
  });

  test('a whole ball has one dimension, beside it', () => {
    const ball = { shape: 'cap', baseDiameter: 0, height: 0.4 } as const;
    const html = renderToString(
      h(ShapeDrawing, { shape: ball, cores: [], say: speaker('metric') }),
    );
    expect(html).toMatch(/aria-label="A ball: diameter 400\u00a0mm\."/);
    const dimensions = [...html.matchAll(/class="dim" d="M([\d.]+) /g)];
    expect(dimensions).toHaveLength(1);
    // The ball is drawn round the middle, at 210, as high as it is wide.
    const points = begins(html, 'outline thin').map(([x]) => x!);
    expect(Number(dimensions[0]![1])).toBeLessThan(Math.min(...points) - 60);
  });

  test('dimensions have no added zeros', () => {
    const say = speaker('metric');
    const form = renderToString(h(ShapeDrawing, { shape: slab, cores: [], say }));
    expect(form).toContain('60\u00a0mm');
    expect(form).not.toContain('60.0\u00a0mm');
    const profile = [0, 0.03, 0.06].map((depth) => ({ depth, density: 600 + depth }));
    const lift = renderToString(h(LiftColumn, { profile, say }));
    expect(lift).toContain('30\u00a0mm');
    expect(lift).not.toContain('30.0\u00a0mm');
  });
});

describe('strength to use, against what handling asks', () => {
  const asks = { 'strip-window.stress': { t: '57.1', u: 'kPa' } };
  const bars = {
    'part.strengthFrom': { t: 'bars' },
    'part.barMean': { t: '2600', u: 'kPa' },
    'part.barLow': { t: '100', u: 'kPa' },
  };
  const drawn = (strength: Readonly<Record<string, object>>) => {
    const html = pictureOf(stripWindow, { ...asks, ...strength });
    const band = /class="band" d="M([^"]*)Z"/.exec(html)![1]!;
    const heights = band.split('L').map((corner) => Number(corner.split(' ')[1]));
    // What is asked without a jerk, then what is asked at worst.
    const level = Math.min(...begins(html, 'level').map(([, y]) => y));
    return { html, level, highest: Math.min(...heights), top: topLine(html) };
  };

  test('a strength far above is cut off at the top, with a note', () => {
    const [near, far] = [drawn({}), drawn(bars)];
    for (const { level, highest, top } of [near, far]) {
      // At least a fifth of the way up, with the axis rounded; the plot stands on 230.
      expect(230 - level).toBeGreaterThan((230 - top) / 5);
      expect(highest).toBeGreaterThanOrEqual(top);
    }
    expect(far.highest).toBeCloseTo(far.top, 1);
    expect(far.html).toContain('goes on above');
    expect(near.html).not.toContain('goes on above');
  });
});
