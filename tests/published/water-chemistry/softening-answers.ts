import { blendOf, blendToTarget } from '../../../src/core/water/blend.ts';
import * as MOLAR_MASS from '../../../src/core/water/molar-masses.ts';
import {
  hardnessFromRegeneration,
  heldBack,
  ionExchange,
  resinCapacity,
} from '../../../src/core/water/soften/ion-exchange.ts';
import {
  limeSodaForIons,
  limeSodaForSalts,
  limeSodaResidual,
  limeSodaToTarget,
  quicklimeMass,
  type Salt,
} from '../../../src/core/water/soften/lime-soda.ts';
import {
  DECAHYDRATE_FACTOR,
  sodaMass,
  sodaMoles,
} from '../../../src/core/water/soften/washing-soda.ts';
import { type Answers, answer } from '../answer.ts';

const concentration = 'concentration' as const;
const SALTS = {
  carbonDioxide: concentration,
  calciumBicarbonate: concentration,
  magnesiumBicarbonate: concentration,
  calciumCarbonate: concentration,
  magnesiumCarbonate: concentration,
  calciumChloride: concentration,
  calciumSulfate: concentration,
  magnesiumChloride: concentration,
  magnesiumSulfate: concentration,
  hydrochloricAcid: concentration,
  sulfuricAcid: concentration,
  limePurity: 'ratio' as const,
  sodaPurity: 'ratio' as const,
  volume: 'volume' as const,
};

type SaltRow = Partial<Record<Salt, number>> & {
  readonly limePurity: number;
  readonly sodaPurity: number;
  readonly volume: number;
};

function bySalts({ limePurity, sodaPurity, volume, ...salts }: SaltRow) {
  const dose = limeSodaForSalts({ salts, limePurity, sodaPurity });
  return { lime: dose.lime * volume, soda: dose.soda * volume };
}

const IONS = {
  calcium: concentration,
  magnesium: concentration,
  bicarbonate: concentration,
  carbonDioxide: concentration,
  limePurity: 'ratio' as const,
  sodaPurity: 'ratio' as const,
  volume: 'volume' as const,
};

function byIons(row: { [K in keyof typeof IONS]: number }) {
  const dose = limeSodaForIons({
    calcium: row.calcium / 0.040078,
    magnesium: row.magnesium / 0.024305,
    bicarbonate: row.bicarbonate / MOLAR_MASS.bicarbonate,
    carbonDioxide: row.carbonDioxide / MOLAR_MASS.carbonDioxide,
    limePurity: row.limePurity,
    sodaPurity: row.sodaPurity,
  });
  return { lime: dose.lime * row.volume, soda: dose.soda * row.volume };
}

const TARGET = {
  calcium: 'hardness',
  magnesium: 'hardness',
  bicarbonate: 'hardness',
  carbonDioxide: 'hardness',
  target: 'hardness',
} as const;

const toTarget = (row: { [K in keyof typeof TARGET]: number }) =>
  limeSodaToTarget({ ...row, bicarbonate: 2 * row.bicarbonate });

export const softeningAnswers: Answers = {
  'lime-soda/lime': answer({
    asks: 'How much lime (as bought) softens a volume of water with these salts in it?',
    input: SALTS,
    gives: 'mass',
    beside: true,
    work: (row) => bySalts(row).lime,
  }),
  'lime-soda/soda': answer({
    asks: 'How much soda ash (as bought) softens a volume of water with these salts in it?',
    input: SALTS,
    gives: 'mass',
    beside: true,
    work: (row) => bySalts(row).soda,
  }),
  'lime-soda/lime-for-ions': answer({
    asks: 'How much lime (as bought) softens a volume of water with these ions in it?',
    input: IONS,
    gives: 'mass',
    beside: true,
    work: (row) => byIons(row).lime,
  }),
  'lime-soda/soda-for-ions': answer({
    asks: 'How much soda ash (as bought) softens a volume of water with these ions in it?',
    input: IONS,
    gives: 'mass',
    beside: true,
    work: (row) => byIons(row).soda,
  }),
  'lime-soda/lime-to-target': answer({
    asks: 'How much lime, as CaCO₃, does a works dose to reach a target hardness?',
    input: TARGET,
    gives: 'hardness',
    beside: true,
    work: (row) => toTarget(row).lime,
  }),
  'lime-soda/soda-to-target': answer({
    asks: 'How much soda ash, as CaCO₃, does a works dose to reach a target hardness?',
    input: TARGET,
    gives: 'hardness',
    beside: true,
    work: (row) => toTarget(row).soda,
  }),
  'lime-soda/residual': answer({
    asks: 'What hardness is left after lime, and soda that takes part of the rest?',
    input: { nonCarbonate: 'hardness', excessLime: 'number', sodaRemoves: 'hardness' },
    gives: 'hardness',
    beside: true,
    work: ({ nonCarbonate, excessLime, sodaRemoves = 0 }) =>
      limeSodaResidual({ nonCarbonate, excessLime: excessLime === 1, sodaRemoves }),
  }),
  'lime-soda/quicklime': answer({
    asks: 'How much quicklime, CaO of a purity, is a lime dose given as CaCO₃?',
    input: { dose: 'hardness', purity: 'ratio' },
    gives: 'concentration',
    beside: true,
    work: quicklimeMass,
  }),
  'lime-soda/soda-mass': answer({
    asks: 'How much soda ash takes out this non-carbonate hardness?',
    input: { removed: 'hardness' },
    gives: 'concentration',
    work: ({ removed }) => sodaMass(removed, 'anhydrous'),
  }),
  'washing-soda/crystals-for-ash': answer({
    asks: 'How many times as much washing-soda crystal as soda ash carries the same soda?',
    input: {},
    gives: 'number',
    work: () => DECAHYDRATE_FACTOR,
  }),
  'washing-soda/moles': answer({
    asks: 'How many moles of sodium carbonate are in this mass of a form of it?',
    input: { mass: 'mass', form: 'text' },
    gives: 'number',
    beside: true,
    work: ({ mass, form }) => sodaMoles(mass, form === 'crystals' ? 'decahydrate' : 'anhydrous'),
  }),
  'ion-exchange/resin-calcium': answer({
    asks: 'How much calcium (meq per litre of resin) does a sodium resin hold against sodium?',
    input: { total: 'number', calcium: 'number', sodium: 'number', separation: 'number' },
    gives: 'number',
    beside: true,
    work: (resin) => resinCapacity({ ...resin, total: resin.total * 1e3 }).calcium,
  }),
  'ion-exchange/resin-treated': answer({
    asks: 'How many litres of water does a litre of that resin treat?',
    input: { total: 'number', calcium: 'number', sodium: 'number', separation: 'number' },
    gives: 'number',
    beside: true,
    work: (resin) => resinCapacity({ ...resin, total: resin.total * 1e3 }).treated,
  }),
  'ion-exchange/hardness-from-salt': answer({
    asks: 'What hardness was taken out, if regeneration used up this much salt?',
    input: { volume: 'volume', salt: 'mass' },
    gives: 'hardness',
    beside: true,
    work: hardnessFromRegeneration,
  }),
  'ion-exchange/held-back': answer({
    asks: 'How many equivalents did a bed hold back (m³; meq/L)?',
    input: { volumes: 'numbers', effluent: 'numbers', feed: 'number' },
    gives: 'number',
    beside: true,
    work: heldBack,
  }),
  'ion-exchange/volume': answer({
    asks: 'How much water does a softener of this capacity (grains as CaCO₃) soften?',
    input: { grains: 'number', hardness: 'hardness' },
    gives: 'volume',
    work: ({ grains, hardness }) =>
      ionExchange({ capacity: (2 * grains * 64.79891e-6) / 0.1000869, hardness }).volume,
  }),
  'blend/conserved': answer({
    asks: 'What does a blend carry of a conserved quantity?',
    input: { amounts: 'numbers', values: 'numbers' },
    gives: 'number',
    work: ({ amounts, values }) =>
      blendOf(amounts.map((amount, i) => ({ amount, value: values[i]! }))),
  }),
  'blend/share-of-first': answer({
    asks: 'What share of the first water brings a blend of two to a target?',
    input: { values: 'numbers', target: 'number' },
    gives: 'number',
    work: ({ values, target }) => {
      const blend = blendToTarget({ values, target, volume: 1 });
      if (!blend.reached) throw new Error('out of reach');
      return blend.fractions[0]!;
    },
  }),
};
