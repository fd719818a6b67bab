import { concentrateShare, DILUTIONS, type Dilution } from '../../core/foam/dilution.ts';
import { foamingSolution, MEASURED_WATER_DENSITY } from '../../core/foam/solution.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { curd, doseOf } from '../shared/foam/dose.ts';
import { foamFaultDoubt } from '../shared/foam/foam-doubt.ts';
import { littleConcentrate } from '../shared/foam/little-concentrate.ts';
import { solutionDoubt, strengthOf } from '../shared/foam/solution-doubt.ts';
import { solutionOrder } from '../shared/foam/solution-order.ts';
import { PERCENT, SMALL_MASS, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { solutionFields } from './solution-fields.ts';

export default worksheet({
  id: 'foaming-solution',
  question: 'What goes into the foaming solution?',
  fields: solutionFields,
  work: (v) => {
    const dose = doseOf(v);
    const { stated, convention } = dose.dilution;
    const mixed = (convention: Dilution, number: number) =>
      foamingSolution({
        foamVolume: v.foamVolume,
        foamDensity: v.foamDensity,
        ...dose,
        dilution: { convention, stated: number },
        glycerolShare: v.glycerol,
        lanceLoss: v.lanceLoss,
        priming: v.priming,
      });
    // The same figure, read in each of the ways that labels use: 1 : 40, 1 in 40, 2.5 %.
    const ratio = convention === 'parts-water' || convention === 'one-in';
    const figure = ratio ? stated : 1 / stated;
    const readings = DILUTIONS.filter((way) => way !== 'one-in' || figure > 1).map((way) => {
      const number = way === 'parts-water' || way === 'one-in' ? figure : 1 / figure;
      return { way, number, possible: number < 1 || way === 'parts-water' || way === 'one-in' };
    });
    const conventions = readings
      .filter(({ possible }) => possible)
      .map(({ way, number }) => ({
        way,
        number,
        share: concentrateShare({
          convention: way,
          stated: number,
          concentrateDensity: v.concentrateDensity,
          waterDensity: MEASURED_WATER_DENSITY,
        }),
        concentrate: mixed(way, number).concentrateVolume,
      }));
    const solution = mixed(convention, stated);
    return { solution, conventions, lost: curd(v) };
  },
  results: {
    solution: {
      label: 'Foaming solution',
      kind: 'volume',
      of: (r) => r.solution.solutionVolume,
    },
    water: {
      label: 'Water',
      kind: 'volume',
      of: (r) => r.solution.waterVolume,
      answer: true,
    },
    glycerol: {
      label: 'Glycerol',
      kind: 'mass',
      of: ({ solution }) => (solution.glycerolMass > 0 ? solution.glycerolMass : undefined),
      units: SMALL_MASS,
      answer: true,
    },
    concentrate: {
      label: 'Concentrate',
      kind: 'volume',
      of: (r) => r.solution.concentrateVolume,
      units: SMALL_VOLUME,
      answer: true,
    },
    makeUp: {
      label: 'Concentrate that only makes up for hardness',
      kind: 'mass',
      of: ({ lost, solution }) => lost && solution.soapMakeUp,
      units: SMALL_MASS,
      significant: 2,
    },
    share: {
      label: 'Concentrate in concentrate and water, by volume',
      kind: 'ratio',
      of: (r) => strengthOf(r.solution),
      units: PERCENT,
    },
  },
  judge: ({ solution }, v, say) => {
    return judgeBy([foamFaultDoubt(v.foamDensity, say), solutionDoubt(solution, v, say)], {
      verdict: 'good',
      say: `In this order: ${solutionOrder(solution)}. Stir the ${say(solution.concentrateVolume, 'volume', { units: SMALL_VOLUME })} of concentrate in gently: froth made in the tank is concentrate wasted.`,
    });
  },
  notes: ({ lost, solution }, _, say) => [
    ...littleConcentrate(solution, say),
    ...(lost
      ? [
          `Each litre of this water turns ${say(lost.stoichiometric * 1e-3, 'mass', { units: SMALL_MASS, significant: 2 })} of soap to curd by the chemistry. Old household figures come to ${say(lost.empirical * 1e-3, 'mass', { units: SMALL_MASS, significant: 2 })}: commercial soap holds water, and a lather needs an excess.`,
        ]
      : [
          'Protein and synthetic concentrates are not made up for hardness here: how much they bear, only their own sheets can say.',
        ]),
    'Volumes are as measured out. Water and glycerol draw together on mixing, by less than 1\u00a0% at these amounts.',
  ],
  folded: 'The concentrate',
  blames: { stated: ['partsWater', 'oneIn', 'percent'], glycerolShare: 'glycerol' },
  keeps: { solution: 'foam.solutionVolume' },
  working: [
    {
      tex: String.raw`S = F\,\rho_f\,(1 + x) + V_0\,\rho_s`,
      put: ({ solution }, v, say) =>
        `S = ${say(v.foamVolume, 'volume')} of foam, ${say(v.lanceLoss, 'ratio', { units: PERCENT, significant: 2 })} for waste, ${say(v.priming, 'volume', { significant: 2 })} for priming: ${say(solution.solutionMass, 'mass')}`,
    },
    {
      tex: String.raw`W = \frac{(1 - g)\,S}{1 + k + x_s} \qquad K = (k + x_s)\,W`,
      put: ({ solution }, _, say) =>
        `With ${say(solution.concentrateMass / (solution.concentrateMass + solution.waterMass), 'ratio', { units: PERCENT })} of concentrate in concentrate and water by mass: water ${say(solution.waterMass, 'mass')}, concentrate ${say(solution.concentrateMass, 'mass')}`,
    },
  ],
  tables: [
    {
      caption: 'The same figure, as each label would mean it',
      columns: [
        'Written as',
        'The dose by volume',
        'The dose by mass',
        'Concentrate here, make-up included',
      ],
      rows: ({ conventions }, { dose }, say) =>
        conventions.map(({ way, number, share, concentrate }) => [
          `${written(way, number, say)}${way === dose ? ' (yours)' : ''}`,
          say(share.byVolume, 'ratio', { units: PERCENT }),
          say(share.byMass, 'ratio', { units: PERCENT }),
          say(concentrate, 'volume', { units: SMALL_VOLUME }),
        ]),
    },
    {
      caption: 'Measure out',
      columns: ['', 'By volume', 'By mass'],
      rows: ({ solution }, _, say) => [
        ['Water', say(solution.waterVolume, 'volume'), say(solution.waterMass, 'mass')],
        ...(solution.glycerolMass > 0
          ? [
              [
                'Glycerol',
                say(solution.glycerolVolume, 'volume', { units: SMALL_VOLUME }),
                say(solution.glycerolMass, 'mass', { units: SMALL_MASS }),
              ],
            ]
          : []),
        [
          'Concentrate',
          say(solution.concentrateVolume, 'volume', { units: SMALL_VOLUME }),
          say(solution.concentrateMass, 'mass', { units: SMALL_MASS }),
        ],
        ['Together', say(solution.solutionVolume, 'volume'), say(solution.solutionMass, 'mass')],
      ],
    },
  ],
  cautions: ['glycerol-and-concentrate'],
  defers: ['The concentrate’s own sheet gives the dose, the water it needs and its density.'],
  sources: [
    'astm-c796',
    'crc-handbook',
    'foam-concentrate-density',
    'soap-stoichiometry',
    'frankland',
    'common-practice',
  ],
});

function written(way: Dilution, number: number, say: Say): string {
  if (way === 'parts-water') return `1 : ${say(number, 'count', { plain: true })}`;
  if (way === 'one-in') return `1 in ${say(number, 'count', { plain: true })}`;
  const percent = say(number, 'ratio', { units: PERCENT, plain: true, significant: 4 });
  return way === 'percent-volume' ? `${percent} by volume` : `${percent} by mass`;
}
