import { foamDensity, STANDARD_FOAM_BAND, vesselVolume } from '../../core/foam/density.ts';
import { choice, number } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';

/** Foam is spoken of in grams a litre, which is kg/m³. */
export const FOAM_UNITS = { metric: 'g/L', us: 'lb/ft3' } as const;
/** About one maker's working point of 80 g/L, wished denser. Common practice, no source. */
const PRACTICE = { from: 70, to: 120 } as const;

export default worksheet({
  id: 'foam-density',
  question: 'How heavy is my foam?',
  fields: {
    method: choice({
      label: 'How do you know it?',
      options: {
        weighed: 'I weigh a full vessel of it',
        assumed: 'I have not weighed it: assume a figure',
      },
      example: 'weighed',
      bench: 'foam.method',
    }),
    vesselKnown: choice({
      label: 'The vessel’s volume',
      options: {
        marked: 'I know it',
        weighed: 'I weigh it full of water',
      },
      example: 'marked',
      bench: 'foam.vesselKnown',
      when: { method: ['weighed'] },
    }),
    tare: number('mass', {
      label: 'Vessel, empty and dry',
      example: '0.85 kg',
      plusMinus: '0.01 kg',
      min: '0 kg',
      max: '200 kg',
      bench: 'bucket.tare',
      when: { method: ['weighed'] },
    }),
    full: number('mass', {
      label: 'Vessel, struck full of foam',
      help: 'Fill without gaps, strike off level with a straight edge, wipe the outside.',
      example: '2.45 kg',
      plusMinus: '0.01 kg',
      min: '0 kg',
      max: '200 kg',
      when: { method: ['weighed'] },
    }),
    vessel: number('volume', {
      label: 'Vessel’s volume to the brim',
      example: '20 L',
      plusMinus: '0.2 L',
      min: '0.1 L',
      max: '500 L',
      bench: 'bucket.volume',
      when: { method: ['weighed'], vesselKnown: ['marked'] },
    }),
    filled: number('mass', {
      label: 'Vessel, full of water to the brim',
      example: '20.83 kg',
      plusMinus: '0.02 kg',
      min: '0 kg',
      max: '700 kg',
      when: { method: ['weighed'], vesselKnown: ['weighed'] },
    }),
    temperature: number('temperature', {
      label: 'Temperature of that water',
      example: '15 °C',
      plusMinus: '1 °C',
      min: '0 °C',
      max: '40 °C',
      when: { method: ['weighed'], vesselKnown: ['weighed'] },
    }),
    assumed: number('density', {
      label: 'Foam density to assume',
      help: '80 g/L is one maker’s working point, and lighter than that maker would like. Common practice, no source.',
      example: '80 g/L',
      plusMinus: '15 g/L',
      min: '5 g/L',
      max: '500 g/L',
      units: FOAM_UNITS,
      when: { method: ['assumed'] },
    }),
  },
  work: (v) => {
    if (v.method === 'assumed')
      return { apparent: v.assumed, assumed: true, measured: undefined, volume: undefined };
    const volume =
      v.vesselKnown === 'weighed'
        ? vesselVolume({ empty: v.tare, filled: v.filled, temperature: v.temperature }).volume
        : v.vessel;
    const measured = foamDensity({ tare: v.tare, full: v.full, vessel: volume });
    return { apparent: measured.apparent, assumed: false, measured, volume };
  },
  results: {
    density: {
      label: 'Foam density',
      kind: 'density',
      of: (r) => r.apparent,
      units: FOAM_UNITS,
      sure: true,
    },
    expansion: {
      label: 'Expansion',
      kind: 'count',
      of: (r) => r.measured?.expansion,
      note: 'litres of foam from a litre of solution',
    },
    gas: {
      label: 'Gas in the foam',
      kind: 'ratio',
      of: (r) => r.measured?.gasFraction,
      units: { metric: '%', us: '%' },
    },
    volume: {
      label: 'Vessel’s volume',
      kind: 'volume',
      of: (r) => r.volume,
    },
  },
  judge: (r, _, say) => {
    const amount = say(r.apparent, 'density', { units: FOAM_UNITS });
    if (r.assumed)
      return {
        verdict: 'look',
        say: `${amount} is assumed, not weighed. Weigh a bucket of your foam before the base mix is made: every amount below rests on it.`,
      };
    if (r.apparent < STANDARD_FOAM_BAND.min)
      return {
        verdict: 'stop',
        say: `${amount} is lighter than the standards’ band. Foam this thin breaks in the mixer: close the air a little, or make the solution stronger.`,
      };
    if (r.apparent < PRACTICE.from)
      return {
        verdict: 'look',
        say: `${amount} lies in the standards’ band for machine-made foam; small-batch makers want it denser, so that it survives the drill.`,
      };
    if (r.apparent <= PRACTICE.to)
      return {
        verdict: 'good',
        say: `${amount} is where small-batch makers work. Use it now, before it drains.`,
      };
    return {
      verdict: 'look',
      say: `${amount} is a wet foam: it carries much solution, and what it carries goes into the mix as water. Open the air a little.`,
    };
  },
  notes: (r, _, say) =>
    r.measured
      ? [
          `Weighed in air, as everything at the bench is. The air inside the bubbles weighs nothing on your scale because the air outside bears it up; counted, the foam would be ${say(r.measured.inVacuum, 'density', { units: FOAM_UNITS })}.`,
        ]
      : [],
  refusals: {
    'no-gas': () =>
      'The full vessel is as heavy as if it held plain solution. Check that it was foam to the brim, and that the empty weight is of the same vessel.',
  },
  blames: { empty: 'tare', filled: 'filled' },
  keeps: { density: 'foam.density' },
  working: [
    {
      tex: String.raw`\rho_f = \frac{m_{\text{full}} - m_{\text{empty}}}{V}`,
      put: (v, r, say) =>
        r.volume === undefined
          ? 'Assumed; nothing was weighed.'
          : `ρf = (${say(v.full, 'mass', { decimals: 2 })} − ${say(v.tare, 'mass', { decimals: 2 })}) ÷ ${say(r.volume, 'volume')} = ${say(r.apparent, 'density', { units: FOAM_UNITS })}`,
    },
    {
      tex: String.raw`V = \frac{m_{\text{water}} - m_{\text{empty}}}{\rho_w(T)}`,
      put: (v, r, say) =>
        v.method === 'weighed' && v.vesselKnown === 'weighed'
          ? `V = (${say(v.filled, 'mass', { decimals: 2 })} − ${say(v.tare, 'mass', { decimals: 2 })}) ÷ water’s density at ${say(v.temperature, 'temperature')} = ${say(r.volume!, 'volume', { significant: 4 })}`
          : 'Only when the vessel is weighed full of water.',
    },
  ],
  figure: ({ result, say }) => (
    <DensityScale
      title="Foam, between gas and solution"
      from={0}
      to={160}
      units={FOAM_UNITS}
      bands={[
        {
          from: STANDARD_FOAM_BAND.min,
          to: STANDARD_FOAM_BAND.max,
          label: 'standards, from memory',
        },
        { from: PRACTICE.from, to: PRACTICE.to, label: 'small-batch practice' },
      ]}
      marks={[
        {
          at: result.apparent,
          label: result.assumed ? 'assumed' : 'yours',
          role: result.assumed ? 'plain' : 'measured',
        },
      ]}
      say={say}
    />
  ),
  cautions: ['pressurised-vessel', 'glycerol-and-concentrate'],
  defers: ["The concentrate's own sheet gives the density it is sold for."],
  sources: ['imo-foam-test', 'navedtra-14070', 'tanaka-2001', 'aci-523-1r', 'common-practice'],
});
