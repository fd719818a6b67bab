import { FLEXURAL_RATIO } from '../../core/finished/flexural.ts';
import { mostPublished } from '../../core/finished/strength-band.ts';
import type { Say } from '../../islands/engine/say.ts';
import { CHECK } from '../shared/part/strong-cubes.ts';
import { KPA } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';

/**
 * The doubt about bars whose bending strength, Pa, is above all that is published for their density,
 * kg/m³; undefined for others. How dry they are is not known, so figures for lighter ones count too,
 * at the highest published ratio of bending to compressive strength.
 */
export function strongBars(flexural: number, density: number, say: Say): string | undefined {
  const most = FLEXURAL_RATIO.foamed.high * (mostPublished(density) ?? Number.POSITIVE_INFINITY);
  if (flexural <= most) return undefined;
  const kpa = (pa: number, apart: number) =>
    saidApart(pa, 'stress', [apart], say, { units: KPA, significant: 3 });
  return `${CHECK} these bars: ${kpa(flexural, most)} is above ${kpa(most, flexural)}, the most that goes with what is published for ${say(density, 'density', { significant: 3 })} or lighter (0.35 of that, from memory).`;
}
