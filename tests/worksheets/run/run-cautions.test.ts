import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isFor, RUN_STEPS } from '../../../src/worksheets/live/run/RunSteps.tsx';
import { plan } from './run-batch.ts';

describe('the cautions of a step', () => {
  const of = (name: string, planned = plan): readonly string[] =>
    RUN_STEPS.find((step) => step.name === name)!.cautions.filter((id) => isFor(planned, id));

  test('are those of the work in it', () => {
    expect(of('Base mix')).toEqual(['cement-dust', 'drill-mixer']);
    expect(of('Foam')).toContain('pressurised-vessel');
    expect(of('Weigh the blend')).toEqual(['drill-mixer']);
    expect(of('Place')).toContain('heavy-lift');
    expect(of('Cover and wash')).toEqual(['pressurised-vessel', 'alkaline-washout']);
  });

  test('include those of other ingredients in the plan', () => {
    const base = (...names: string[]) => {
      const other = names.map((name) => ({ name, mass: 0.3 }));
      return of('Base mix', { ...plan, other });
    };
    expect(base('Fibre')).toEqual(['cement-dust', 'glass-fibre', 'drill-mixer']);
    expect(base('Pigment', 'Fly ash')).toEqual(['cement-dust', 'pigment-dust', 'drill-mixer']);
  });

  test('all exist', () => {
    const file = (id: string) => new URL(`../../../content/cautions/${id}.json`, import.meta.url);
    for (const { cautions } of RUN_STEPS)
      for (const id of cautions) expect(existsSync(file(id)), id).toBe(true);
  });
});
