import { dryAirDensity, FREE_AIR } from '../../core/air/density.ts';
import {
  effectiveArea,
  orificeFlow,
  ROUNDED,
  SHARP_CHOKED,
  SHARP_EDGED,
} from '../../core/air/orifice.ts';
import { demand } from '../../core/domain-error.ts';
import { ICE_POINT } from '../../core/quantity/constants.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { muchPressure } from '../shared/foam/stored-air.ts';
import { AIR_FLOW, aroundFields, GAUGE } from './air-fields.ts';
import { OrificePlot } from './drawn/OrificePlot.tsx';

const HOLE = { metric: 'mm2', us: 'in2' } as const;
const DISCHARGE = { sharp: SHARP_EDGED, rounded: ROUNDED } as const;

export default worksheet({
  id: 'air-orifice',
  question: 'How much air passes the hole or the valve?',
  fields: {
    way: choice({
      label: 'What do you know?',
      options: {
        size: 'The hole’s diameter',
        measured: 'A flow I measured through it',
      },
      example: 'size',
      bench: 'air.orificeKnown',
    }),
    diameter: number('length', {
      label: 'Diameter of the hole',
      example: '1.2 mm',
      min: '0.05 mm',
      max: '50 mm',
      bench: 'air.diameter',
      when: { way: ['size'] },
    }),
    edge: choice({
      label: 'Its entry',
      options: { sharp: 'sharp-edged', rounded: 'well rounded', own: 'I know its coefficient' },
      example: 'sharp',
      bench: 'air.edge',
      when: { way: ['size'] },
    }),
    coefficient: number('ratio', {
      label: 'Discharge coefficient',
      example: '0.8',
      min: '0.01',
      max: '1',
      bench: 'air.coefficient',
      when: { way: ['size'], edge: ['own'] },
    }),
    measured: number('flow', {
      label: 'Air measured, at the pressure of the air around',
      help: 'With the gauges as below: the volume of a bag or an upturned bucket, over the time it takes to fill.',
      example: '33 L/min',
      min: '0 L/min',
      max: '1000 m3/h',
      units: AIR_FLOW,
      bench: 'air.measured',
      when: { way: ['measured'] },
    }),
    before: number('pressure', {
      label: 'Gauge pressure before it',
      example: '3 bar',
      min: '0 bar',
      max: '40 bar',
      units: GAUGE,
      bench: 'air.before',
    }),
    after: number('pressure', {
      label: 'Gauge pressure after it',
      help: 'What the lance holds up; 0 for a hole into the open.',
      example: '1 bar',
      min: '0 bar',
      max: '40 bar',
      units: GAUGE,
      bench: 'air.after',
    }),
    ...aroundFields,
  },
  work: (v) => {
    // Refused as the gauges read: core has the air around in it.
    demand('after', v.after, 'pressure', { max: v.before, belowMax: v.way === 'measured' });
    const upstream = v.before + v.atmosphere;
    const downstream = v.after + v.atmosphere;
    const passage = { upstream, downstream, temperature: v.temperature };
    const freeDensity = dryAirDensity(FREE_AIR);
    const geometric = (Math.PI / 4) * v.diameter ** 2;
    const coefficient = v.edge === 'own' ? v.coefficient : DISCHARGE[v.edge];
    const area =
      v.way === 'size'
        ? coefficient * geometric
        : effectiveArea({
            ...passage,
            // A bag holds it as it is in the room.
            massFlow:
              v.measured * dryAirDensity({ pressure: v.atmosphere, temperature: v.temperature }),
          });
    const at = (outlet: number) =>
      area > 0
        ? orificeFlow({ ...passage, downstream: outlet, area, dischargeCoefficient: 1 })
        : undefined;
    const flow = at(downstream);
    const freeAir = (flow?.massFlow ?? 0) / freeDensity;
    const choked = flow?.choked ?? false;
    const entry = v.way === 'size' ? v.edge : undefined;
    return {
      area,
      coefficient,
      freeAir,
      most: choked && entry === 'sharp' ? (freeAir * SHARP_CHOKED) / SHARP_EDGED : undefined,
      choked,
      /** Whether nothing behind it is felt once it is choked. */
      steady: entry === 'rounded',
      throat: flow?.throat.temperature ?? v.temperature,
      upstream,
      at: (outlet: number) => (at(outlet)?.massFlow ?? 0) / freeDensity,
    };
  },
  results: {
    freeAir: { label: 'Free air', kind: 'flow', of: (r) => r.freeAir, units: AIR_FLOW },
    most: { label: 'Free air, up to', kind: 'flow', of: (r) => r.most, units: AIR_FLOW },
    area: {
      label: 'Area that counts, Cd A',
      kind: 'area',
      of: (r) => r.area,
      units: HOLE,
      note: 'much the same at every pressure, while the valve is not touched',
    },
    throat: {
      label: 'Air in the narrowest place',
      kind: 'temperature',
      of: (r) => r.throat,
    },
  },
  doubts: (_, { before }, say) => muchPressure(before, say),
  judge: ({ choked, freeAir, most, steady, throat }, { before, after }, say) => {
    const air = (flow: number) => say(flow, 'flow', { units: AIR_FLOW });
    const flow = air(freeAir);
    if (freeAir === 0)
      return {
        verdict: 'look',
        say:
          before > after
            ? 'Open the valve, or measure again: air flows wherever the pressure before is more than after.'
            : 'No air flows: the pressure is the same on both sides.',
      };
    const ice =
      throat < ICE_POINT
        ? ` Drain the receiver first: at ${say(throat, 'temperature', { significant: 2 })} in the narrowest place moisture may freeze.`
        : '';
    if (most !== undefined)
      return {
        verdict: 'look',
        say: `${flow} to ${air(most)}, choked and nearly steady. Round or taper the entry of the hole, or measure the flow and choose that above.${ice}`,
      };
    return choked
      ? {
          verdict: 'good',
          say: `${flow}, choked: the pressure before the hole sets the flow; what the lance does behind it changes ${steady ? 'nothing' : 'little'}. A steady foam needs that.${ice}`,
        }
      : {
          verdict: 'look',
          say: `${flow}, not choked: every change of pressure in the lance changes the air. For a steady foam use a smaller hole and more pressure before it.${ice}`,
        };
  },
  notes: (_, { way, edge }) => [
    way === 'measured'
      ? 'A needle valve is a hole whose size nobody knows: one measured flow finds its Cd A at that setting of the needle.'
      : edge === 'own'
        ? 'The coefficient is yours.'
        : `Taken: Cd ${edge === 'sharp' ? '0.61, sharp-edged, which rises to 0.85 as the pressure behind falls' : '0.97, well rounded'} (from memory). A measured flow is better.`,
  ],
  folded: 'The air around',
  blames: { upstream: 'before', area: 'diameter', massFlow: 'measured' },
  keeps: { freeAir: 'air.flow', area: 'air.effectiveArea' },
  working: [
    {
      tex: String.raw`\frac{p_2}{p_1} \le \left(\frac{2}{\gamma+1}\right)^{\gamma/(\gamma-1)} = 0.528`,
      put: ({ choked, upstream }, v) =>
        `p₂ ÷ p₁ = ${((v.after + v.atmosphere) / upstream).toFixed(3)}, absolute: ${choked ? 'choked' : 'not choked'}`,
    },
    {
      tex: String.raw`\dot m = C_d A\,\frac{p_1}{\sqrt{R\,T_1}}\sqrt{\gamma}\left(\frac{2}{\gamma+1}\right)^{\frac{\gamma+1}{2(\gamma-1)}}`,
      put: ({ choked, area, freeAir }, _, say) =>
        choked
          ? `Cd A = ${say(area, 'area', { units: HOLE })}, so ${say(freeAir, 'flow', { units: AIR_FLOW })} of free air`
          : `Not choked, so the next line holds: ${say(freeAir, 'flow', { units: AIR_FLOW })}`,
    },
    {
      tex: String.raw`\dot m = C_d A\,\frac{p_1}{\sqrt{R\,T_1}}\sqrt{\frac{2\gamma}{\gamma-1}\left(r^{2/\gamma} - r^{(\gamma+1)/\gamma}\right)},\quad r = \frac{p_2}{p_1}`,
      put: ({ choked, freeAir }, _, say) =>
        choked
          ? 'For flows that are not choked.'
          : `${say(freeAir, 'flow', { units: AIR_FLOW })} of free air, 20\u00a0°C (68\u00a0°F) and 1\u00a0bar (14.5\u00a0psi) absolute`,
    },
  ],
  figure: ({ values, result, say }) => (
    <OrificePlot
      at={result.at}
      upstream={result.upstream}
      atmosphere={values.atmosphere}
      after={values.after}
      upTo={result.most && result.most / result.freeAir}
      steady={result.steady}
      say={say}
    />
  ),
  cautions: ['compressed-air-jet', 'pressurised-vessel'],
  defers: ['The makers of valve, hose and lance say what pressure each may bear.'],
  sources: [
    'compressible-flow-wiki',
    'orifice-tutorial',
    'api-520',
    'iso-1217',
    'perry-1949',
    'cunningham-1951',
    'common-practice',
  ],
});
