import { fromUnit } from '../../core/quantity/convert.ts';
import type { Say } from '../../islands/engine/say.ts';
import { atSteps, decimalsIn, SCALE, STEPS } from './bench-rows.ts';

/**
 * Densities around a target, kg/m³, at which the scale reads a round number in the reader's unit:
 * `lines` of them on each side, about `step` apart, kg/m³; and the unit and decimals of a reading.
 */
export function roundReadings(
  sheet: Readonly<Record<'tare' | 'vessel' | 'target' | 'step' | 'lines', number>>,
  say: Say,
) {
  const { tare, vessel, target, step: wanted, lines } = sheet;
  const unit = SCALE[say.system];
  const off = (size: number) =>
    Math.abs(Math.log((fromUnit(1, 'mass', unit) * size) / (wanted * vessel)));
  const round = STEPS.reduce((best, size) => (off(size) < off(best) ? size : best));
  const step = fromUnit(round, 'mass', unit);
  const nearest = Math.round((tare + target * vessel) / step);
  // A bucket that weighs no more than its tare is empty.
  const middle = Math.max(nearest, Math.floor(tare / step) + 1);
  return {
    step: { units: SCALE, decimals: decimalsIn(round) },
    densities: atSteps(
      { tare, vessel, step: round, first: middle - lines, last: middle + lines },
      say,
    ),
  };
}
