import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RUN_STEPS } from '../../src/worksheets/shared/RunSteps.tsx';

describe('the cautions of a step', () => {
  const of = (name: string): readonly string[] =>
    RUN_STEPS.find((step) => step.name === name)!.cautions;

  test('are those of what is done in it', () => {
    expect(of('Base mix')).toEqual(['cement-dust', 'drill-mixer']);
    expect(of('Foam')).toContain('pressurised-vessel');
    expect(of('Weigh the blend')).toContain('drill-mixer');
    expect(of('Place')).toContain('heavy-lift');
    expect(of('Cover and wash')).toEqual(['pressurised-vessel', 'alkaline-washout']);
  });

  test('are cautions there are', () => {
    const file = (id: string) => new URL(`../../content/cautions/${id}.json`, import.meta.url);
    for (const { cautions } of RUN_STEPS)
      for (const id of cautions) expect(existsSync(file(id)), id).toBe(true);
  });
});
