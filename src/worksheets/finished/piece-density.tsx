import { demand } from '../../core/domain-error.ts';
import {
  CONSTANT_MASS_SHARE,
  type ConstantMass,
  constantMass,
  moistureByMass,
} from '../../core/finished/drying.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../core/finished/piece-density.ts';
import { POSSIBLE_DENSITY } from '../../core/finished/possible-density.ts';
import { wholeOnes } from '../../core/mix/whole.ts';
import { ICE_POINT } from '../../core/quantity/constants.ts';
import { waterDensity } from '../../core/water/density.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { pieceFields } from './piece-fields.ts';

/** Readings without their ±: the worksheet carries that itself. */
const exact = (value: number) => ({ value, uncertainty: 0 });

/** Whether it is heavier than it was. */
const gained = (settled: ConstantMass | undefined) => (settled?.change ?? 0) < 0;

/**
 * Between these temperatures, K, an oven drives out the free water and leaves what the cement has
 * bound. Common practice, no source.
 */
const DRIES = { least: ICE_POINT + 100, most: ICE_POINT + 110 } as const;

/**
 * A tight film weighs a few hundredths of the piece at most; above this share it is probably a slip.
 * Common practice, no source.
 */
const FILM_MOST = 0.1;

/** What the scale leaves open of a dried density. */
const byScale = ({ dry }: { readonly dry: { readonly scale: number } | undefined }) =>
  dry && ([dry.scale, 'weighings'] as const);

export default worksheet({
  id: 'piece-density',
  question: 'How dense is this hardened piece?',
  fields: pieceFields,
  work: (v, pm) => {
    const baths = { waterDensity: waterDensity(v.water), filmDensity: v.film };
    const mass = exact(v.mass);
    const wrapped = exact(v.wrapped);
    const found = {
      block: () =>
        blockDensity({
          mass,
          length: exact(v.length),
          width: exact(v.width),
          height: exact(v.height),
        }),
      cylinder: () =>
        cylinderDensity({ mass, diameter: exact(v.diameter), height: exact(v.height) }),
      gain: () => densityByGain({ mass, wrapped, gain: exact(v.gain) }, baths),
      hanging: () =>
        densityByHanging({ mass, wrapped, sinker: exact(v.sinker), both: exact(v.both) }, baths),
    }[v.method]();
    demand('density', found.density, 'density', POSSIBLE_DENSITY, 'no-such-piece');
    const inWater = v.method === 'gain' || v.method === 'hanging';
    const film = inWater ? v.wrapped / v.mass - 1 : 0;
    if (v.dried === 'no') return { found, film, dry: undefined };
    // Weighed on the scale that weighed the piece.
    const settled = constantMass(v.weighings, pm.mass);
    const driedMass = v.weighings.at(-1)!.mass;
    const moisture = moistureByMass({ moist: v.mass, dry: driedMass });
    const density = driedMass / found.volume;
    demand('dryDensity', density, 'density', POSSIBLE_DENSITY, 'no-such-piece');
    const hot = v.oven > DRIES.most;
    const done = settled.constant && !hot;
    const scale = pm.mass / found.volume;
    return { found, film, dry: { mass: driedMass, density, scale, moisture, settled, hot, done } };
  },
  results: {
    density: {
      label: 'Density as it is',
      kind: 'density',
      of: (r) => r.found.density,
      sure: true,
    },
    dry: {
      label: 'Dry density',
      kind: 'density',
      of: (r) => (r.dry?.done ? r.dry.density : undefined),
      sure: true,
      listed: byScale,
      answer: true,
    },
    last: {
      label: 'Density at the last weighing',
      kind: 'density',
      of: (r) => (r.dry?.done ? undefined : r.dry?.density),
      sure: true,
      listed: byScale,
      note: 'not its dry density, and not kept as such',
    },
    moisture: {
      label: 'Moisture it held',
      kind: 'ratio',
      of: (r) => (r.dry?.done ? r.dry.moisture : undefined),
      units: PERCENT,
      note: 'of its dry mass',
    },
    byVolume: {
      label: 'Of its volume',
      kind: 'ratio',
      of: (r) => (r.dry?.done ? (r.found.density - r.dry.density) / 1000 : undefined),
      units: PERCENT,
      significant: 2,
      note: 'water at 1000\u00a0kg/m³',
    },
    change: {
      label: 'A day took',
      kind: 'ratio',
      of: ({ dry }) => (gained(dry?.settled) ? undefined : dry?.settled.perDay),
      units: PERCENT,
      significant: 2,
      note: 'on the mean, since the last weighing at least a day before',
    },
    gain: {
      label: 'Gained since the last weighing at least a day before',
      kind: 'ratio',
      of: ({ dry }) => (gained(dry?.settled) ? -dry!.settled.change! : undefined),
      units: PERCENT,
      significant: 2,
    },
    volume: { label: 'Volume', kind: 'volume', of: (r) => r.found.volume },
  },
  doubts: ({ film }, { mass, wrapped }, say) =>
    film > FILM_MOST
      ? `Weigh it in its film again: by ${say(wrapped, 'mass', { plain: true })} wrapped and ${say(mass, 'mass', { plain: true })} bare the film would be ${say(film, 'ratio', { units: PERCENT, significant: 2 })} of the piece. Film taken for so heavy puts the density wrong.`
      : undefined,
  judge: ({ found, dry }, { oven }, say) => {
    const density = say(found.density, 'density');
    if (!dry)
      return {
        verdict: 'look',
        say: `${density} with whatever water it holds. For strength, heat and comparing batches, dry the piece to constant mass.`,
      };
    if (dry.hot)
      return {
        verdict: 'stop',
        say: `Turn the oven down to 105\u00a0°C (221\u00a0°F). At ${say(oven, 'temperature')} a moist piece may burst, and water is driven out that belongs to the cement: this is not its dry density.`,
      };
    const words = `${say(dry.density, 'density')}, dried at ${say(oven, 'temperature')}`;
    if (dry.settled.change === undefined)
      return {
        verdict: 'look',
        say: `${words}, but no two weighings lie a day apart: whether it is dry is not known. Give it another day.`,
      };
    const percent = (share: number) => say(share, 'ratio', { units: PERCENT, significant: 2 });
    if (!dry.settled.constant && gained(dry.settled))
      return {
        verdict: 'look',
        say: `${words}, but ${percent(-dry.settled.change)} heavier than at the weighing before: it took up water as it cooled, or a weighing is off. Dry it on, let it cool covered, and weigh it again.`,
      };
    if (!dry.settled.constant)
      return {
        verdict: 'look',
        say: `${words}, and still losing ${percent(dry.settled.perDay!)} a day: dry it on until a day takes less than 0.2\u00a0%.`,
      };
    const cool = oven < DRIES.least;
    if (!dry.settled.shown) {
      const aDay = CONSTANT_MASS_SHARE * dry.mass;
      const off = dry.scale * found.volume;
      const grams = (mass: number) => say(mass, 'mass', { units: SMALL_MASS, significant: 2 });
      return {
        verdict: 'look',
        say: `Weigh it on a finer scale, or ${wholeOnes(off / aDay)} days apart: ±${grams(off)} is more than the ${grams(aDay)} that a day may take, so it may be losing still.${cool ? ' So cool an oven leaves water in besides: dry it at 105\u00a0°C (221\u00a0°F).' : ''} ${words}.`,
      };
    }
    if (cool)
      return {
        verdict: 'look',
        say: `${words}: constant mass, but so cool an oven leaves water in, so it reads high. Dry it at 105\u00a0°C (221\u00a0°F), or give the temperature wherever you give the density.`,
      };
    return {
      verdict: 'good',
      say: `${words}: constant mass. Write the temperature down beside it.`,
    };
  },
  notes: ({ dry }, { oven, method }) => [
    ...(dry && (dry.hot || oven < DRIES.least)
      ? ['Standards dry at about 105\u00a0°C (221\u00a0°F; from memory).']
      : []),
    ...(method === 'gain' || method === 'hanging'
      ? ['Dry the piece only after the film is off; film left on keeps the water in.']
      : ['Measure each side in three places and take the mean: sides rule the ±.']),
  ],
  refusals: {
    'no-such-piece': ({ value }, say) =>
      `By these readings it would weigh ${say(value, 'density')}, as no concrete does. Check them and their units.`,
    'no-volume': () =>
      'By these readings the water pushed aside is no more than the film takes up: the piece would have no volume. Check them.',
    'film-weighs-less-than-nought': () =>
      'The wrapped piece weighs less than the bare one. Check which is which.',
    'heavier-dried': ({ value, allowed }, say) => {
      const mass = (kilograms: number) => say(kilograms, 'mass', { plain: true });
      return `The last weighing, ${mass(allowed.min!)}, is more than the piece weighed before it went into the oven, ${mass(value)}. Check both.`;
    },
    'out-of-order': () => 'The times of the weighings run backwards. Put the lines in order.',
  },
  blames: {
    density: 'mass',
    dryDensity: 'weighings',
    volume: 'mass',
    dry: 'weighings',
    moist: 'weighings',
    time: 'weighings',
  },
  folded: 'The water and the film',
  keeps: { dry: 'part.dryDensity' },
  working: [
    {
      tex: String.raw`\rho = \frac{m}{V}`,
      put: ({ found }, { mass }, say) =>
        `${say(mass, 'mass', { decimals: 3 })} ÷ ${say(found.volume, 'volume')} = ${say(found.density, 'density')}`,
    },
    {
      tex: String.raw`V_{\text{wrapped}} = \frac{\Delta m}{\rho_w} - \frac{m_{\text{wrapped}} - m}{\rho_{\text{film}}}`,
      put: ({ found }, { method }, say) =>
        method === 'gain' || method === 'hanging'
          ? `V = ${say(found.volume, 'volume')}, film taken off`
          : 'Only when the piece is weighed in water.',
    },
    {
      tex: String.raw`u = \frac{m - m_{\text{dry}}}{m_{\text{dry}}}`,
      put: ({ dry }, { mass }, say) =>
        dry?.done
          ? `(${say(mass, 'mass', { decimals: 3 })} − ${say(dry.mass, 'mass', { decimals: 3 })}) ÷ ${say(dry.mass, 'mass', { decimals: 3 })} = ${say(dry.moisture, 'ratio', { units: PERCENT })}`
          : 'Not dry, or not known to be.',
    },
  ],
  figure: ({ result, say }) => (
    <DensityScale
      title="The piece, moist and dry"
      from={0}
      to={1200}
      bands={[]}
      marks={[
        { at: 1000, label: 'water', role: 'plain' },
        { at: result.found.density, label: 'as it is', role: 'measured' },
        ...(result.dry
          ? [
              {
                at: result.dry.density,
                label: result.dry.done ? 'dry' : 'last weighed',
                role: 'measured' as const,
              },
            ]
          : []),
      ]}
      say={say}
    />
  ),
  cautions: ['hot-oven', 'cement-dust'],
  defers: [
    'The oven’s own instructions; where a density must be proved, the named standard and a laboratory.',
  ],
  sources: ['en-12390-7', 'archimedes', 'polyethylene-density', 'tanaka-2001', 'common-practice'],
});
