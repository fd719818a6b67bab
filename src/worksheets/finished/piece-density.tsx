import { constantMass, moistureByMass } from '../../core/finished/drying.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../core/finished/piece-density.ts';
import { waterDensity } from '../../core/water/density.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { DENSITY, LITRES, PERCENT } from '../shared/amounts.ts';
import { pieceFields } from '../shared/piece-fields.ts';

/** Readings without their ±: the worksheet carries that itself. */
const exact = (value: number) => ({ value, uncertainty: 0 });

export default worksheet({
  id: 'piece-density',
  question: 'How dense is this hardened piece?',
  fields: pieceFields,
  work: (v) => {
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
    if (v.dried === 'no') return { found, dry: undefined };
    const settled = constantMass(v.weighings);
    const driedMass = v.weighings.at(-1)!.mass;
    const moisture = moistureByMass({ moist: v.mass, dry: driedMass });
    return {
      found,
      dry: { mass: driedMass, density: driedMass / found.volume, moisture, settled },
    };
  },
  results: {
    density: {
      label: 'Density as it is',
      kind: 'density',
      of: (r) => r.found.density,
      units: DENSITY,
      sure: true,
    },
    dry: {
      label: 'Dry density',
      kind: 'density',
      of: (r) => r.dry?.density,
      units: DENSITY,
      sure: true,
      answer: true,
    },
    moisture: {
      label: 'Moisture it held',
      kind: 'ratio',
      of: (r) => r.dry?.moisture,
      units: PERCENT,
      note: 'of its dry mass',
    },
    byVolume: {
      label: 'Of its volume',
      kind: 'ratio',
      of: (r) => r.dry && (r.found.density - r.dry.density) / 1000,
      units: PERCENT,
      significant: 2,
      note: 'water at 1000\u00a0kg/m³',
    },
    change: {
      label: 'The last day took',
      kind: 'ratio',
      of: (r) => r.dry?.settled.change,
      units: PERCENT,
      significant: 2,
    },
    volume: { label: 'Volume', kind: 'volume', of: (r) => r.found.volume, units: LITRES },
  },
  judge: ({ found, dry }, { oven }, say) => {
    const density = say(found.density, 'density', { units: DENSITY });
    if (!dry)
      return {
        verdict: 'look',
        say: `${density} with whatever water it holds. For strength, heat and comparing batches, dry the piece to constant mass.`,
      };
    const words = `${say(dry.density, 'density', { units: DENSITY })}, dried at ${say(oven, 'temperature')}`;
    if (dry.settled.change === undefined)
      return {
        verdict: 'look',
        say: `${words}, but no two weighings lie a day apart: whether it is dry is not known. Give it another day.`,
      };
    if (!dry.settled.constant)
      return {
        verdict: 'look',
        say: `${words}, and still losing ${say(dry.settled.change, 'ratio', { units: PERCENT, significant: 2 })} a day: dry it on until a day takes less than 0.2\u00a0%.`,
      };
    return {
      verdict: 'good',
      say: `${words}: constant mass. Write the temperature down beside it.`,
    };
  },
  notes: ({ dry }, { oven, method }) => [
    ...(dry && Math.abs(oven - 378.15) > 5
      ? [
          'Standards dry at about 105\u00a0°C (221\u00a0°F; from memory). A cooler oven leaves some water in, a hotter one takes some that belongs to the cement: say which was used.',
        ]
      : []),
    ...(method === 'gain' || method === 'hanging'
      ? ['Dry the piece only after the film is off; film left on keeps the water in.']
      : ['Measure each side in three places and take the mean: sides rule the ±.']),
  ],
  refusals: {
    'no-volume': () =>
      'By these readings the water pushed aside is no more than the film takes up: the piece would have no volume. Check them.',
    'film-weighs-less-than-nought': () =>
      'The wrapped piece weighs less than the bare one. Check which is which.',
    'out-of-order': () => 'The times of the weighings run backwards. Put the lines in order.',
  },
  blames: {
    volume: 'mass',
    dry: 'weighings',
    moist: 'mass',
    time: 'weighings',
    mass: 'mass',
    weighings: 'weighings',
  },
  folded: 'The water and the film',
  keeps: { dry: 'part.dryDensity' },
  working: [
    {
      tex: String.raw`\rho = \frac{m}{V}`,
      put: ({ mass }, { found }, say) =>
        `${say(mass, 'mass', { decimals: 3 })} ÷ ${say(found.volume, 'volume', { units: LITRES })} = ${say(found.density, 'density', { units: DENSITY })}`,
    },
    {
      tex: String.raw`V_{\text{wrapped}} = \frac{\Delta m}{\rho_w} - \frac{m_{\text{wrapped}} - m}{\rho_{\text{film}}}`,
      put: ({ method }, { found }, say) =>
        method === 'gain' || method === 'hanging'
          ? `V = ${say(found.volume, 'volume', { units: LITRES })}, film taken off`
          : 'Only when the piece is weighed in water.',
    },
    {
      tex: String.raw`u = \frac{m - m_{\text{dry}}}{m_{\text{dry}}}`,
      put: ({ mass }, { dry }, say) =>
        dry
          ? `(${say(mass, 'mass', { decimals: 3 })} − ${say(dry.mass, 'mass', { decimals: 3 })}) ÷ ${say(dry.mass, 'mass', { decimals: 3 })} = ${say(dry.moisture, 'ratio', { units: PERCENT })}`
          : 'Not dried.',
    },
  ],
  figure: ({ result, say }) => (
    <DensityScale
      title="The piece, moist and dry"
      from={0}
      to={1200}
      units={DENSITY}
      bands={[]}
      marks={[
        { at: 1000, label: 'water', role: 'plain' },
        { at: result.found.density, label: 'as it is', role: 'target' },
        ...(result.dry
          ? [{ at: result.dry.density, label: 'dry', role: 'measured' as const }]
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
