import { compareWaters } from '~/core/water/comparison-test.ts';
import { alkaliesOf, judgeMixingWater } from '~/core/water/fitness.ts';
import { type Constituent, LIMITS, type Limit } from '~/core/water/mixing-water-limits.ts';
import { demo } from '~/worksheets/demo.ts';

/** The most a standard allows in water for plain concrete, kg/m³. */
function mostBy(standard: Limit['standard'], constituent: Constituent) {
  const limit = LIMITS.find(
    (line) => line.standard === standard && line.of === constituent && line.uses.includes('plain'),
  );
  if (limit?.most === undefined) throw new Error(`${standard} has no limit for ${constituent}.`);
  return limit.most;
}
export const en1008 = {
  sulfate: mostBy('EN 1008', 'sulfate'),
  alkalies: mostBy('EN 1008', 'alkalies'),
};
export const astmC1602 = {
  sulfate: mostBy('ASTM C1602', 'sulfate'),
  alkalies: mostBy('ASTM C1602', 'alkalies'),
};

/** Of the mains, as sodium oxide, kg/m³. */
export const alkalies = alkaliesOf(demo.mains);
const { chloride, sulfate, dissolved, nitrate, pH } = demo.mains;
export const judged = judgeMixingWater(
  { chloride, sulfate, dissolvedSolids: dissolved, nitrate, pH, alkalies },
  'plain',
);
export const known = judged.filter(({ verdict }) => verdict !== 'unknown');
export const exceeded = known.filter(({ verdict }) => verdict === 'beyond').length;

const { control, test } = demo.trial;
/** The well beside distilled water: how much later it sets, s and as a share; and what is left of the strength. */
export const trial = {
  later: test.initialSet - control.initialSet,
  laterShare: test.initialSet / control.initialSet - 1,
  strength: test.strength / control.strength,
};
const verdicts = compareWaters(demo.trial);
export const passesAll = [verdicts.en1008, verdicts.astmC1602].every((standard) =>
  Object.values(standard).every((verdict) => verdict === 'passes'),
);
