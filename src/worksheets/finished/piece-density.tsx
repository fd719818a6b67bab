import { constantMass, moistureByMass } from '../../core/finished/drying.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../core/finished/piece-density.ts';
import { waterDensity } from '../../core/water/density.ts';
import { choice, lines, number } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { DENSITY, LITRES, PERCENT } from '../shared/amounts.ts';
import { HOURS, MM } from '../shared/part-fields.ts';

const KG = { metric: 'kg', us: 'lb' } as const;
const inWater = { method: ['gain', 'hanging'] } as const;
const side = (label: string, example: string, methods: readonly string[]) =>
  number('length', {
    label,
    example,
    plusMinus: '0.5 mm',
    min: '5 mm',
    max: '5 m',
    units: MM,
    when: { method: methods },
  });
const weighed = (
  label: string,
  example: string,
  when: Record<string, readonly string[]>,
  help = '',
) =>
  number('mass', {
    label,
    ...(help && { help }),
    example,
    plusMinus: '0.001 kg',
    min: '0 kg',
    max: '500 kg',
    units: KG,
    when,
  });

/** Readings without their ±: the worksheet carries that itself. */
const exact = (value: number) => ({ value, uncertainty: 0 });

export default worksheet({
  id: 'piece-density',
  question: 'How dense is this hardened piece?',
  fields: {
    method: choice({
      label: 'Its volume',
      options: {
        block: 'from its sides: a block',
        cylinder: 'from its sides: a cylinder',
        gain: 'pushed under in water that stands on the scale',
        hanging: 'hung under water below the scale, with a sinker',
      },
      example: 'block',
    }),
    mass: number('mass', {
      label: 'The piece, as it is',
      example: '0.705 kg',
      plusMinus: '0.001 kg',
      min: '0.001 kg',
      max: '500 kg',
      units: KG,
    }),
    length: side('Length', '150 mm', ['block']),
    width: side('Width', '150 mm', ['block']),
    diameter: side('Diameter', '150 mm', ['cylinder']),
    height: side('Height or thickness', '60 mm', ['block', 'cylinder']),
    wrapped: weighed(
      'Wrapped in film, in air',
      '0.712 kg',
      inWater,
      'Tight, so that no air is caught.',
    ),
    gain: weighed(
      'The scale gains',
      '1.358 kg',
      { method: ['gain'] },
      'With the piece held just under by a thin rod, less the reading before.',
    ),
    sinker: weighed('Sinker alone, under water', '1.5 kg', { method: ['hanging'] }),
    both: weighed('Piece and sinker, under water', '0.854 kg', { method: ['hanging'] }),
    dried: choice({
      label: 'Has it been dried?',
      options: { yes: 'Yes, in an oven', no: 'No' },
      example: 'yes',
    }),
    oven: number('temperature', {
      label: 'Oven',
      example: '105 °C',
      min: '30 °C',
      max: '250 °C',
      when: { dried: ['yes'] },
    }),
    weighings: lines({
      label: 'Weighings while it dried',
      help: 'Cooled, without its film. It is dry when a day more takes less than 0.2 % of its mass.',
      of: {
        time: number('time', {
          label: 'Time',
          example: '24 h',
          min: '0 h',
          max: '5000 h',
          units: HOURS,
        }),
        mass: number('mass', {
          label: 'Mass',
          example: '0.63 kg',
          min: '0.001 kg',
          max: '500 kg',
          units: KG,
        }),
      },
      example: '0  0.705\n24  0.641\n48  0.629\n72  0.628',
      most: 40,
      when: { dried: ['yes'] },
    }),
    water: number('temperature', {
      label: 'Temperature of the water',
      example: '15 °C',
      min: '0 °C',
      max: '40 °C',
      when: inWater,
      folded: true,
    }),
    film: number('density', {
      label: 'Density of the film',
      help: 'Polyethylene, from memory.',
      example: '920 kg/m3',
      min: '500 kg/m3',
      max: '2000 kg/m3',
      units: DENSITY,
      when: inWater,
      folded: true,
    }),
  },
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
      note: 'water at 1,000 kg/m³',
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
        say: `${words}, and still losing ${say(dry.settled.change, 'ratio', { units: PERCENT, significant: 2 })} a day: dry it on until a day takes less than 0.2 %.`,
      };
    return {
      verdict: 'good',
      say: `${words}: constant mass. Write the temperature down beside it.`,
    };
  },
  notes: ({ dry }, { oven, method }) => [
    ...(dry && Math.abs(oven - 378.15) > 5
      ? [
          'Standards dry at about 105 °C (221 °F; from memory). A cooler oven leaves some water in, a hotter one takes some that belongs to the cement: say which was used.',
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
