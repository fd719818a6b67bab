import { pressureAfter, timeToFall } from '../../core/air/blow-down.ts';
import { FREE_AIR } from '../../core/air/density.ts';
import { criticalRatio } from '../../core/air/orifice.ts';
import { receiverContents } from '../../core/air/receiver.ts';
import { number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import {
  doubtedPressures,
  mindStored,
  STORED_SOURCES,
  storedAt,
  storedNotes,
  storedResults,
} from '../shared/foam/stored-air.ts';
import { AIR_VOLUME, aroundFields, demandFuller, GAUGE, vesselFields } from './air-fields.ts';
import { BlowDownPlot } from './drawn/BlowDownPlot.tsx';

const HOLE = { metric: 'mm2', us: 'in2' } as const;

/** The gauge pressure, Pa, below which the flow through a hole into the open is not choked, and so not steady. */
const chokingAt = ({ atmosphere }: { readonly atmosphere: number }) =>
  atmosphere / criticalRatio() - atmosphere;

export default worksheet({
  id: 'receiver',
  question: 'How long does a full receiver last?',
  fields: {
    ...vesselFields,
    area: number('area', {
      label: 'Opening it empties through, Cd A',
      help: 'From the worksheet above, or the discharge coefficient times the area of the hole.',
      example: '0.69 mm2',
      min: '0.001 mm2',
      max: '1000 mm2',
      units: HOLE,
      takes: 'air.effectiveArea',
    }),
    ...aroundFields,
  },
  work: (v) => {
    demandFuller(v);
    const start = v.full + v.atmosphere;
    const low = v.low + v.atmosphere;
    const contents = receiverContents({
      vessel: v.vessel,
      high: start,
      low,
      temperature: v.temperature,
      free: FREE_AIR,
    });
    const blow = {
      vessel: v.vessel,
      start,
      ambient: v.atmosphere,
      temperature: v.temperature,
      effectiveArea: v.area,
    };
    const fall = (walls: 'isothermal' | 'adiabatic', to: number) =>
      timeToFall({ ...blow, walls, to });
    const stored = storedAt({ vessel: v.vessel, gauge: v.full });
    return {
      contents,
      slow: fall('isothermal', low),
      fast: fall('adiabatic', low),
      empty: Math.max(fall('isothermal', v.atmosphere), fall('adiabatic', v.atmosphere)),
      pressure: (walls: 'isothermal' | 'adiabatic', time: number) =>
        pressureAfter({ ...blow, walls, time }) - v.atmosphere,
      stored,
    };
  },
  results: {
    fast: {
      label: 'Serves for at least',
      kind: 'time',
      of: (r) => Math.min(r.slow, r.fast),
      significant: 2,
      note: 'if the air in it cools as it leaves',
    },
    slow: {
      label: 'Serves for at most',
      kind: 'time',
      of: (r) => Math.max(r.slow, r.fast),
      significant: 2,
      note: 'if its walls keep it warm',
    },
    given: {
      label: 'Free air given meanwhile, drawn fast',
      kind: 'volume',
      of: ({ contents }) => contents.fast,
      units: AIR_VOLUME,
    },
    givenSlow: {
      label: 'Free air given meanwhile, drawn slowly',
      kind: 'volume',
      of: ({ contents }) => contents.slow,
      units: AIR_VOLUME,
    },
    empty: {
      label: 'Empty after',
      kind: 'time',
      of: (r) => r.empty,
      significant: 2,
    },
    ...storedResults,
  },
  doubts: (_, v, say) => doubtedPressures(v, say),
  judge: (r, v, say) => {
    const { fast, slow } = r;
    const least = say(Math.min(fast, slow), 'time', { significant: 2 });
    const low = say(v.low, 'pressure', { units: GAUGE, significant: 2 });
    const choking = chokingAt(v);
    const judged: Judgement =
      Math.min(fast, slow) < 60
        ? {
            verdict: 'look',
            say: `${least} to ${low}. That is too short for a steady foam without a compressor behind it and a regulator after it.`,
          }
        : v.low < choking
          ? {
              verdict: 'look',
              say: `${least} or more before it falls to ${low}, and not steady for so long: below ${say(choking, 'pressure', { units: GAUGE, significant: 2 })} even a hole into the open is no longer choked, and the air weakens with the pressure. Count no further down than that.`,
            }
          : {
              verdict: 'good',
              say: `${least} or more before it falls to ${low}. A regulator after it keeps the air to the lance steady all that time.`,
            };
    return mindStored(judged, r, v, say);
  },
  notes: (r, v, say) => [
    ...storedNotes(r, v, say),
    'Worked out for a hole straight into the open, with no compressor running. Behind a regulator the flow is steady, and the time is the free air over that flow.',
  ],
  folded: 'The vessel’s marking, and the air around',
  blames: { start: 'full', effectiveArea: 'area', ambient: 'atmosphere' },
  working: [
    {
      tex: String.raw`t_{\text{warm}} = \tau \ln\frac{p_0}{p} \qquad t_{\text{cold}} = \frac{2\tau}{\gamma-1}\left[\left(\frac{p_0}{p}\right)^{\frac{\gamma-1}{2\gamma}} - 1\right]`,
      put: ({ slow, fast }, v, say) =>
        `In all ${say(slow, 'time')} kept warm, ${say(fast, 'time')} cooling${v.low < chokingAt(v) ? `; by these formulas down to ${say(chokingAt(v), 'pressure', { units: GAUGE, significant: 2 })}, below which it is no longer choked, and the rest summed` : ''}`,
    },
    {
      tex: String.raw`E = 2.5\,p\,V\left[1 - \left(\frac{p_a}{p}\right)^{0.286}\right]`,
      put: ({ stored }, v, say) =>
        `${say(v.vessel, 'volume')} at ${say(v.full, 'pressure', { units: GAUGE })} by the gauge hold ${say(stored.isentropic, 'energy')}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <BlowDownPlot
      pressure={result.pressure}
      end={Math.min(result.empty, 1.6 * Math.max(result.slow, result.fast))}
      full={values.full}
      low={values.low}
      say={say}
    />
  ),
  cautions: ['pressurised-vessel', 'compressed-air-jet'],
  defers: [
    'The vessel’s marking and the pressure-equipment law of the place outrank every figure here; a pressure test is a matter for a competent inspector.',
  ],
  sources: [
    'compressible-flow-wiki',
    'compressed-air-states',
    ...STORED_SOURCES,
    'common-practice',
  ],
});
