import {
  SEQUESTRANTS,
  type Sequestrant,
  SUGAR_RETARDS,
  sequester,
} from '../../core/water/soften/sequester.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { baseWaterCement } from '../shared/mix/paste-water.ts';
import { waterCement } from '../shared/mix/recipe.ts';
import { countsElsewhere } from '../shared/mix/recipe-details.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { softWater } from './soft-water.ts';
import { hardness, IN_SOLUTION } from './water-fields.ts';

const NAMES: Readonly<Record<Sequestrant, string>> = {
  citricAcid: 'Citric acid, dry',
  citricAcidMonohydrate: 'Citric acid, crystals with water',
  trisodiumCitrateDihydrate: 'Trisodium citrate dihydrate',
  disodiumEdtaDihydrate: 'Disodium EDTA dihydrate',
  tetrasodiumEdta: 'Tetrasodium EDTA',
  sodiumTripolyphosphate: 'Sodium tripolyphosphate',
};
const ALL = Object.keys(NAMES) as Sequestrant[];
/** Near enough to the share that retards to be looked at. */
const NEAR = 0.3;

export default worksheet({
  id: 'sequestrants',
  question: 'May I tie the hardness up instead of taking it out?',
  fields: {
    hardness,
    agent: choice({
      label: 'With',
      options: NAMES,
      example: 'trisodiumCitrateDihydrate',
      bench: 'water.sequestrant',
    }),
    where: choice({
      label: 'In which water?',
      options: { foam: 'Only the foam’s', all: 'The base mix’s too' },
      example: 'foam',
      bench: 'water.sequesterWhere',
    }),
    solutionCement: number('ratio', {
      label: 'Foam’s liquid to cement, by mass',
      example: '0.149',
      min: '0',
      aboveMin: true,
      max: '10',
      takes: 'mix.solutionCement',
      bench: 'water.solutionCement',
    }),
    waterCement: { ...waterCement, when: { where: ['all'] } },
    counts: countsElsewhere,
    volume: number('volume', {
      label: 'Water to treat',
      ...softWater,
      bench: 'water.toSequester',
      when: { where: ['foam'] },
    }),
    all: number('volume', {
      label: 'Water to treat, the base mix’s too',
      ...softWater,
      example: '23.14 L',
      takes: 'mix.allWater',
      bench: 'water.allToSequester',
      when: { where: ['all'] },
    }),
  },
  work: (v) => {
    demandFresh(v.hardness);
    const all = v.where === 'all';
    const ratio = v.solutionCement + (all ? baseWaterCement(v) : 0);
    const volume = all ? v.all : v.volume;
    const of = (sequestrant: Sequestrant) =>
      sequester({ hardness: v.hardness, sequestrant, waterCement: ratio });
    const chosen = of(v.agent);
    return {
      ...chosen,
      ratio,
      volume,
      mass: chosen.dose * volume,
      all: ALL.map((name) => ({ name, ...of(name) })),
    };
  },
  results: {
    mass: {
      label: 'Needed, mole for mole',
      kind: 'mass',
      of: (r) => r.mass,
      units: SMALL_MASS,
      sure: true,
      aboutZero: 'any',
    },
    dose: {
      label: 'Needed, as a concentration',
      kind: 'concentration',
      of: (r) => r.dose,
      units: IN_SOLUTION,
    },
    share: {
      label: 'Of the cement’s mass',
      kind: 'ratio',
      of: (r) => r.shareOfCement,
      units: PERCENT,
      significant: 2,
    },
    times: {
      label: 'Times what begins to retard',
      kind: 'count',
      of: (r) => r.timesRetarding,
      significant: 2,
    },
  },
  judge: (r, v, say) => {
    const share = say(r.shareOfCement, 'ratio', { units: PERCENT, significant: 2 });
    if (v.hardness === 0)
      return { verdict: 'good', say: 'There is no hardness to tie up: add nothing.' };
    if (r.timesRetarding === undefined)
      return {
        verdict: 'look',
        say: `EDTA would come to ${share} of the cement. From what share it retards is not known here: make a small trial with your cement before a batch, or soften the water another way.`,
      };
    if (r.timesRetarding >= 1)
      return {
        verdict: 'stop',
        say: `${share} of the cement is ${say(r.timesRetarding, 'count', { significant: 2 })} times what is known to hold back the set. Do not: use rain, a softener or washing soda for the foam’s water.`,
      };
    if (r.timesRetarding >= NEAR)
      return {
        verdict: 'look',
        say: `${share} of the cement comes near what holds back the set. Soften the water another way, or set a test cup aside first and wait for it.`,
      };
    return {
      verdict: 'look',
      say: `${share} of the cement is below what is known to retard, yet cements differ. Try it in one cup of mix before the batch.`,
    };
  },
  notes: (_, __, say) => [
    `Citrate, phosphate and sugar hold back cement at fractions of a per cent of its mass: about 0.1\u00a0% for citrate and phosphate, ${say(SUGAR_RETARDS, 'ratio', { units: PERCENT, significant: 1 })} for sugar (from memory; cements differ widely).`,
    'Nothing is removed: in the mix the cement’s own calcium competes for it, and the foam’s own molecules may be left as they were.',
  ],
  blames: {},
  refusals: BRINE_REFUSAL,
  working: [
    {
      tex: String.raw`m = H\,V\,M`,
      put: (r, v, say) =>
        `${say(v.hardness, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })} × ${say(SEQUESTRANTS[v.agent].molarMass, 'mass', { units: { metric: 'g', us: 'g' }, significant: 4 })} a mole × ${say(r.volume, 'volume')} = ${say(r.mass, 'mass', { units: SMALL_MASS })}`,
    },
    {
      tex: String.raw`s = \frac{H\,M\,(w/c)}{\rho_w}`,
      put: (r, _, say) =>
        `Water to cement ${say(r.ratio, 'count', { significant: 3 })}: ${say(r.shareOfCement, 'ratio', { units: PERCENT, significant: 2 })} of the cement.`,
    },
  ],
  tables: [
    {
      caption: 'The same hardness tied up with each',
      columns: ['', 'For this water', 'Of the cement', 'Times what retards'],
      rows: (r, _, say) =>
        r.all.map((it) => [
          NAMES[it.name],
          say(it.dose * r.volume, 'mass', { units: SMALL_MASS }),
          say(it.shareOfCement, 'ratio', { units: PERCENT, significant: 2 }),
          it.timesRetarding === undefined
            ? 'not known'
            : say(it.timesRetarding, 'count', { significant: 2 }),
        ]),
    },
  ],
  cautions: ['sequestrant-powder'],
  defers: [
    'The sequestrant’s own safety data sheet and the concentrate’s product sheet; the cement’s maker, for what its cement bears.',
  ],
  sources: ['iupac-atomic-weights', 'retarders', 'common-practice'],
});
