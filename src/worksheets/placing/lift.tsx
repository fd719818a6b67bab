import { deepestLift, LIGHT_LIFT, liftProfile, PRACTICE_LIFT } from '../../core/placing/lift.ts';
import { headPressure } from '../../core/placing/pressure.ts';
import { FOOT } from '../../core/quantity/constants.ts';
import { number } from '../../islands/fields.ts';
import { offers } from '../../islands/parts/Offers.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { LiftColumn } from './drawn/LiftColumn.tsx';
import { METRES, practiceLift } from './practice-lift.ts';

/** Heights to compare, m: round ones in the unit they are read in. */
const HEIGHTS = {
  metric: [0.1, 0.3, 0.6, 1.2, 2.4],
  us: [0.5, 1, 2, 4, 8].map((feet) => feet * FOOT),
} as const;

export default worksheet({
  id: 'lift',
  question: 'How high may one lift be?',
  fields: {
    depth: number('length', {
      label: 'Height of the lift',
      example: '0.06 m',
      min: '0 m',
      aboveMin: true,
      max: '20 m',
      // A slab is thin beside a wall.
      units: { metric: 'm', us: 'in' },
      takes: 'piece.deep',
      offers: offers([
        ['0.3\u00a0m (12\u00a0in)', '0.3 m'],
        ['0.6\u00a0m (24\u00a0in)', '0.6 m'],
        ['1.2\u00a0m (47\u00a0in)', '1.2 m'],
      ]),
    }),
    density: number('density', {
      label: 'Wet density, as the bucket weighs it',
      example: '600 kg/m3',
      min: '100 kg/m3',
      max: '2500 kg/m3',
      takes: 'mix.planned',
    }),
    gain: number('ratio', {
      label: 'The bottom may be denser by',
      example: '5 %',
      min: '0 %',
      aboveMin: true,
      max: '100 %',
      units: PERCENT,
    }),
    foamDensity: { ...foamDensityField, folded: true },
    plannedSurvival: foamShare,
    waterCement: { ...waterCement, folded: true },
    counts,
    sandCement: { ...sandCement, folded: true },
    cementDensity,
    atmosphere: number('pressure', {
      label: 'Pressure of the air',
      help: 'Where you stand: a weather report gives it for sea level. About 11\u00a0% less for the first 1000\u00a0m (3300\u00a0ft) above that.',
      example: '101.3 kPa',
      min: '40 kPa',
      max: '120 kPa',
      borrows: {
        bench: 'air.atmosphere',
        from: 'Is there air enough for the foam?',
        by: 'air-supply',
      },
      folded: true,
    }),
  },
  work: (v) => {
    const mix = cubicMetre(v, v.density);
    const common = { density: v.density, gas: mix.airShare, atmosphere: v.atmosphere };
    const profile = liftProfile({ ...common, depth: v.depth });
    return {
      gas: mix.airShare,
      profile,
      // Without gas there is nothing to press together, and no limit.
      deepest: Math.min(1000, deepestLift({ ...common, gain: v.gain })),
      plain: headPressure({ density: v.density, depth: v.depth }),
    };
  },
  results: {
    gain: {
      label: 'The bottom is denser by',
      kind: 'ratio',
      of: (r) => r.profile.gain,
      units: PERCENT,
      significant: 2,
    },
    bottom: {
      label: 'Density at the bottom',
      kind: 'density',
      of: (r) => r.profile.bottom,
      significant: 4,
    },
    deepest: {
      label: 'Lift that reaches what you allow',
      kind: 'length',
      of: (r) => (r.deepest < 1000 ? r.deepest : undefined),
      units: METRES,
      note: 'by pressure on the bubbles alone; practice stops at 0.6 to 1.2\u00a0m (2 to 4\u00a0ft)',
    },
    sinks: {
      label: 'More mix to pour for it',
      kind: 'ratio',
      of: (r) => r.profile.sinks,
      units: PERCENT,
      significant: 2,
    },
    pressure: {
      label: 'Pressure at the bottom',
      kind: 'pressure',
      of: (r) => r.profile.pressure,
    },
    gas: { label: 'Gas in the mix, by volume', kind: 'ratio', of: (r) => r.gas, units: PERCENT },
  },
  judge: ({ profile, gas }, { depth, density, gain, foamDensity }, say) => {
    const unfit = unfitFoam(foamDensity, say);
    if (unfit) return unfit;
    const usual = `${practiceLift('min', say)} to ${practiceLift('max', say)}`;
    if (profile.gain > gain)
      return {
        verdict: 'stop',
        say: `The bottom would be ${say(profile.gain, 'ratio', { units: PERCENT, significant: 2 })} denser before a single bubble has broken. Place it in lower lifts.`,
      };
    if (depth > PRACTICE_LIFT.max)
      return {
        verdict: 'stop',
        say: `Pressure on the bubbles would allow it; practice does not. Lifts are ${usual}, since bubbles also break, drain and rise. Wait until the first is firm before the next.`,
      };
    if (density < LIGHT_LIFT.below && depth > LIGHT_LIFT.depth)
      return {
        verdict: 'look',
        say: `Below ${say(LIGHT_LIFT.below, 'density', { significant: 2 })} stay at ${say(LIGHT_LIFT.depth, 'length', { units: METRES, plain: true, significant: 1 })} until you have seen your mix stand (common practice, no source).`,
      };
    // All of it gone, a little gas leaves the mix no denser than is allowed.
    if (depth > PRACTICE_LIFT.min && gas > gain / (1 + gain))
      return {
        verdict: 'look',
        say: `Within what is placed in one lift, ${usual}. With a foam you have not tried, place the lower half, wait, then the rest.`,
      };
    return {
      verdict: 'good',
      say: 'Low enough for one lift. Leave it proud for the settling all the same.',
    };
  },
  notes: () => [
    'Only what pressure does to bubbles that stay whole. Foam that breaks, drains or rises settles a lift far more, and only a trial of your mix says by how much.',
  ],
  refusals: mixRefusals,
  folded: 'What the mix is made of, and the air',
  blames: { wetDensity: 'density' },
  working: [
    {
      tex: String.raw`\rho(p) = \frac{\rho_0}{1 - \varphi + \varphi\,p_0/p} \qquad \frac{dp}{dz} = \rho\,g`,
      put: ({ gas, profile }, _, say) =>
        `φ = ${say(gas, 'ratio', { units: PERCENT })} gas; ${say(profile.pressure, 'pressure')} at the bottom makes it ${say(profile.bottom, 'density', { significant: 4 })}`,
    },
    {
      tex: String.raw`(1-\varphi)\left(\frac{p}{p_0} - 1\right) + \varphi \ln\frac{p}{p_0} = \frac{\rho_0\,g\,z}{p_0}`,
      put: ({ plain, profile }, v, say) =>
        `right side ${say(plain / v.atmosphere, 'count', { significant: 3 })}; a liquid that does not give would press ${say(plain, 'pressure')}, this one ${say(profile.pressure, 'pressure')}`,
    },
  ],
  figure: ({ result, say }) => <LiftColumn profile={result.profile.profile} say={say} />,
  tables: [
    {
      caption: 'Lift by lift',
      columns: ['Height', 'At the bottom', 'Denser by'],
      rows: ({ gas }, v, say) =>
        HEIGHTS[say.system].map((depth) => {
          const { bottom, gain } = liftProfile({
            density: v.density,
            gas,
            depth,
            atmosphere: v.atmosphere,
          });
          return [
            say(depth, 'length', { units: METRES, significant: 2 }),
            say(bottom, 'density', { significant: 4 }),
            say(gain, 'ratio', { units: PERCENT, significant: 2 }),
          ];
        }),
    },
  ],
  cautions: ['caustic-slurry', 'not-load-bearing'],
  defers: ['Where a specification gives a lift height, that holds.'],
  sources: ['gas-in-paste', 'lift-height-practice', 'common-practice'],
});
