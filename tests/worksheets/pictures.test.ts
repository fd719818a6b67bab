import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Shape } from '../../src/core/placing/shapes.ts';
import { judgeMixingWater } from '../../src/core/water/fitness.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { DoseBar } from '../../src/worksheets/shared/DoseBar.tsx';
import { LiftColumn } from '../../src/worksheets/shared/LiftColumn.tsx';
import { LimitBars } from '../../src/worksheets/shared/LimitBars.tsx';
import { ShapeDrawing } from '../../src/worksheets/shared/ShapeDrawing.tsx';
import { ViscosityChart } from '../../src/worksheets/shared/ViscosityChart.tsx';

const slab = { shape: 'slab', length: 0.45, width: 0.3, thickness: 0.06 } as const;

describe('what stands in a picture', () => {
  test('a limit of one standard alone stands level with its name, whichever standard it is', () => {
    const judged = judgeMixingWater(
      { nitrate: 0.02, dissolvedSolids: 0.5, sulfate: 0.05 },
      'plain',
    );
    const html = renderToString(
      h(LimitBars, {
        judged,
        names: { nitrate: 'Nitrate', dissolvedSolids: 'Solids', sulfate: 'Sulfate' },
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

  test('temperatures of the viscosity curves are whole degrees: 40 °C is 104 °F', () => {
    const html = renderToString(
      h(ViscosityChart, { glycerol: 0.02, temperature: 288.15, say: speaker('us') }),
    );
    expect(html).toContain('>104\u00a0°F<');
    expect(html).toContain('>32\u00a0°F<');
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

  test('measures have no zeros that nobody gave', () => {
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
