import { airVolume, FREE_AIR } from '../../core/air/density.ts';
import { foamMaking, freeAirForFoam } from '../../core/air/foam-air.ts';
import { compressorBalance, receiverContents } from '../../core/air/receiver.ts';
import { foamDensity } from '../../core/foam/density.ts';
import { number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import {
  doubtedPressures,
  mindStored,
  STORED_SOURCES,
  storedAt,
  storedNotes,
  storedResults,
} from '../shared/foam/stored-air.ts';
import { foamDensityField } from '../shared/mix/recipe.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { AIR_FLOW, AIR_VOLUME, aroundFields, demandFuller, vesselFields } from './air-fields.ts';

/**
 * A compressor that runs more than this share of the time is doubted: small piston machines are
 * commonly built for half of it (from memory). A choice.
 */
const MOST_RUN = 0.7;

export default worksheet({
  id: 'air-supply',
  question: 'Is there air enough for the foam?',
  fields: {
    foamVolume: number('volume', {
      label: 'Foam wanted in one go',
      help: 'One load’s: each is foamed when its base mix is ready.',
      example: '25.3 L',
      min: '0.1 L',
      max: '100 m3',
      takes: 'mix.loadFoam',
    }),
    foamDensity: foamDensityField,
    airFlow: number('flow', {
      label: 'Free air through the lance',
      example: '33 L/min',
      min: '0.1 L/min',
      max: '1000 m3/h',
      units: AIR_FLOW,
      takes: 'air.flow',
    }),
    delivery: number('flow', {
      label: 'Free air the compressor delivers',
      help: 'Its free air delivery at working pressure, not the larger figure of displacement printed beside it. 0 for none. Where the air is thin it delivers as many litres of thinner air: that is counted.',
      example: '100 L/min',
      min: '0 L/min',
      max: '1000 m3/h',
      units: AIR_FLOW,
      bench: 'air.delivery',
    }),
    ...vesselFields,
    quarter: number('time', {
      label: 'A quarter of the foam’s liquid drains in',
      example: '10.6 min',
      min: '1 s',
      max: '30 d',
      takes: 'foam.quarter',
      folded: true,
    }),
    ...aroundFields,
  },
  work: (v) => {
    demandFuller(v);
    const { expansion } = foamDensity({ tare: 0, full: v.foamDensity, vessel: 1 });
    const around = { pressure: v.atmosphere, temperature: v.temperature };
    const freeAir = freeAirForFoam({ foamVolume: v.foamVolume, expansion, air: around });
    const making = foamMaking({ freeAir, airFlow: v.airFlow, foamVolume: v.foamVolume, expansion });
    const contents = receiverContents({
      vessel: v.vessel,
      high: v.full + v.atmosphere,
      low: v.low + v.atmosphere,
      temperature: v.temperature,
      free: FREE_AIR,
    });
    // The careful figure: a draw so fast that the air left behind is cold.
    const held = contents.fast;
    // A machine is rated by what it takes in of the air around it.
    const delivery = airVolume({ volume: v.delivery, from: around, to: FREE_AIR });
    const balance =
      delivery > 0 ? compressorBalance({ demand: v.airFlow, delivery, contents: held }) : undefined;
    const short = v.airFlow - delivery;
    const lasts = short > 0 ? held / short : undefined;
    const share = lasts === undefined ? Number.POSITIVE_INFINITY : lasts / making.time;
    return {
      // What can be made in one go, of the foam wanted.
      inOneGo: v.foamVolume * Math.min(1, share),
      freeAir,
      perVolume: freeAir / v.foamVolume,
      making,
      contents,
      balance,
      lasts,
      enough: lasts === undefined || lasts >= making.time,
      stored: storedAt({ vessel: v.vessel, gauge: v.full }),
    };
  },
  results: {
    inOneGo: {
      label: 'Foam the air makes in one go',
      kind: 'volume',
      of: (r) => r.inOneGo,
    },
    freeAir: {
      label: 'Free air the foam takes',
      kind: 'volume',
      of: (r) => r.freeAir,
      units: AIR_VOLUME,
    },
    perVolume: {
      label: 'Free air in the foam, volume for volume',
      kind: 'count',
      of: (r) => r.perVolume,
    },
    time: {
      label: 'Time to make it',
      kind: 'time',
      of: (r) => r.making.time,
      significant: 2,
      answer: true,
    },
    solution: {
      label: 'Solution the lance must get',
      kind: 'flow',
      of: (r) => r.making.solutionFlow,
    },
    duty: {
      label: 'Share of the time the compressor runs',
      kind: 'ratio',
      of: ({ balance }) => balance && Math.min(1, balance.duty),
      units: PERCENT,
      significant: 2,
    },
    held: {
      label: 'Free air in the receiver, drawn fast',
      kind: 'volume',
      of: ({ contents }) => contents.fast,
      units: AIR_VOLUME,
    },
    heldSlow: {
      label: 'Free air in the receiver, drawn slowly',
      kind: 'volume',
      of: ({ contents }) => contents.slow,
      units: AIR_VOLUME,
    },
    lasts: {
      label: 'Receiver covers the shortage for',
      kind: 'time',
      of: (r) => r.lasts,
      significant: 2,
    },
    refill: {
      label: 'Compressor fills it again in',
      kind: 'time',
      of: ({ balance }) => balance?.recovers,
      significant: 2,
    },
    ...storedResults,
  },
  doubts: (_, v, say) => doubtedPressures(v, say),
  judge: (r, v, say) => {
    const { making, lasts, enough, balance } = r;
    const judged = (): Judgement => {
      const unfit = unfitFoam(v.foamDensity, say);
      if (unfit) return unfit;
      const time = say(making.time, 'time', { significant: 2 });
      if (!enough)
        return {
          verdict: 'stop',
          say: `The foam takes ${time} to make and the air lasts ${say(lasts ?? 0, 'time', { significant: 2 })}. Foam made while the pressure falls changes as it comes: make it in parts, with the pressure back up each time, or give less air and wait longer.`,
        };
      if (making.time > v.quarter)
        return {
          verdict: 'look',
          say: `${time} to make, and after ${say(v.quarter, 'time', { significant: 2 })} the first of it has lost a quarter of its liquid. Make it in parts, each blended before that, or give the lance more air.`,
        };
      if (lasts !== undefined)
        return {
          verdict: 'look',
          say: `The receiver covers it: ${time} to make, ${say(lasts, 'time', { significant: 2 })} of air. Put a regulator between, or the foam grows wetter as the pressure falls.`,
        };
      const duty = balance?.duty ?? 0;
      const runs = `${time} to make, and the compressor keeps up, running ${say(duty, 'ratio', { units: PERCENT, significant: 2 })} of the time for ${say(v.airFlow, 'flow', { units: AIR_FLOW })}.`;
      return duty > MOST_RUN
        ? {
            verdict: 'look',
            say: `${runs} Little is to spare, and small piston machines are commonly built to run half of the time (from memory): read its sheet, and let it cool between batches or give the lance less air.`,
          }
        : { verdict: 'good', say: runs };
    };
    return mindStored(judged(), r, v, say);
  },
  notes: (r, v, say) => [
    ...storedNotes(r, v, say),
    'Free air is air at 20\u00a0°C (68\u00a0°F) and 1\u00a0bar (14.5\u00a0psi) absolute, as compressors are rated.',
  ],
  folded: 'The vessel’s marking, how the foam drains, and the air around',
  blames: { demand: 'airFlow' },
  working: [
    {
      tex: String.raw`V_{\text{air}} = F\left(1 - \frac{1}{E}\right)\frac{p\,T_0}{p_0\,T}`,
      put: ({ freeAir }, v, say) =>
        `${say(v.foamVolume, 'volume')} of foam hold ${say(freeAir, 'volume', { units: AIR_VOLUME })} of free air: ${say(freeAir / v.foamVolume, 'count')} of the foam’s own volume`,
    },
    {
      tex: String.raw`t = \frac{V_{\text{air}}}{Q} \qquad V_{\text{held}} = \frac{V\,p_1}{p_0}\left[1 - \left(\frac{p_2}{p_1}\right)^{1/\gamma}\right]`,
      put: ({ making, contents }, v, say) =>
        `t = ${say(making.time, 'time')} at ${say(v.airFlow, 'flow', { units: AIR_FLOW })}; the receiver gives ${say(contents.fast, 'volume', { units: AIR_VOLUME })} drawn fast and ${say(contents.slow, 'volume', { units: AIR_VOLUME })} drawn slowly`,
    },
  ],
  cautions: ['pressurised-vessel', 'compressed-air-jet'],
  defers: [
    'The vessel’s marking and the pressure-equipment law of the place outrank every figure here.',
  ],
  sources: ['compressed-air-states', 'iso-1217', ...STORED_SOURCES, 'common-practice'],
});
