import {
  FRESH_WATER_LIFE,
  limeReserve,
  limeSaturatedPH,
  neutralise,
  pKwAt,
  STORMWATER_TARGET,
} from '../../core/safety/washout.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { PhScale } from './drawn/PhScale.tsx';

/** Taken for corrosive from here up by European law on labelling. From memory. */
const CORROSIVE = 11.5;

export default worksheet({
  id: 'washout',
  question: 'How caustic is my wash water?',
  fields: {
    volume: number('volume', {
      label: 'Wash water',
      example: '15 L',
      min: '0.1 L',
      max: '10000 L',
    }),
    pH: number('count', {
      label: 'pH, by strip or meter',
      help: 'Of the clear water, after the solids have settled.',
      example: '12.3',
      min: '7',
      max: '14',
    }),
    temperature: number('temperature', {
      label: 'Temperature of the water',
      help: 'One pH stands for less hydroxide in cold water.',
      example: '15 °C',
      min: '0 °C',
      max: '50 °C',
    }),
    cement: number('mass', {
      label: 'Cement that went into it',
      help: 'What stuck to tools and bucket, as a guess.',
      example: '0.5 kg',
      min: '0 kg',
      max: '1000 kg',
    }),
  },
  work: ({ volume, pH, temperature, cement }) => {
    const reserve = limeReserve(cement);
    const pKw = pKwAt(temperature);
    const clear = neutralise({ volume, pH, pKw, limeReserve: 0 });
    const muddy = neutralise({ volume, pH, pKw, limeReserve: reserve.high });
    return { clear, muddy, reserve, pKw, times: 10 ** (pH - FRESH_WATER_LIFE[1]) };
  },
  results: {
    times: {
      label: 'Times as much hydroxide as fresh-water life bears',
      kind: 'count',
      of: (r) => r.times,
      significant: 2,
      note: 'against pH\u00a09',
    },
    citric: {
      label: 'Citric acid that its clear water alone would take',
      kind: 'mass',
      of: (r) => r.clear.citricAcid.monohydrate,
      units: SMALL_MASS,
      significant: 2,
      note: 'monohydrate; an estimate, not a dose',
    },
    citricAll: {
      label: 'Citric acid, with all its solids stirred up',
      kind: 'mass',
      of: (r) => r.muddy.citricAcid.monohydrate,
      units: SMALL_MASS,
      significant: 2,
    },
    carbon: {
      label: 'Carbon dioxide for the clear water alone',
      kind: 'mass',
      of: (r) => r.clear.carbonDioxide,
      units: SMALL_MASS,
      significant: 2,
      note: 'to carbonate; much of what is blown in escapes',
    },
    carbonAll: {
      label: 'Carbon dioxide, with all its solids',
      kind: 'mass',
      of: (r) => r.muddy.carbonDioxide,
      units: SMALL_MASS,
      significant: 2,
    },
    reserve: {
      label: 'Lime still in the solids, up to',
      kind: 'mass',
      of: (r) => r.reserve.high,
      units: SMALL_MASS,
      significant: 2,
      note: 'from memory, Portland cement wholly reacted',
    },
  },
  judge: (_, { pH }, say) => {
    const read = saidApart(
      pH,
      'count',
      [STORMWATER_TARGET[1], FRESH_WATER_LIFE[1], CORROSIVE],
      say,
      { decimals: 1 },
    );
    if (pH <= STORMWATER_TARGET[1])
      return {
        verdict: 'look',
        say: `A pH of ${read} is within what one state asks of stormwater. That alone lets nothing go: metals, solids and dissolved salts count too, and your own rules decide.`,
      };
    if (pH <= FRESH_WATER_LIFE[1])
      return {
        verdict: 'look',
        say: `A pH of ${read} is above what one state asks of stormwater, ${STORMWATER_TARGET[1]}. Do not pour it away: use the clear water in the next base mix, and let the solids harden.`,
      };
    if (pH < CORROSIVE)
      return {
        verdict: 'stop',
        say: `A pH of ${read} harms life in water. Do not pour it away: let it settle, use the clear water in the next base mix, and let the solids harden.`,
      };
    return {
      verdict: 'stop',
      say: `A pH of ${read} burns skin and kills fish. Let it settle, use the clear water in the next base mix, and let the solids harden. Do not pour it away, and do not treat it by these figures: they show only that a pinch will not do.`,
    };
  },
  notes: ({ pKw }, { pH, temperature }, say) => [
    'Acid into strong lime water heats it and can spit, an acid overdone is as harmful as the lime, and near neutral a little more of it moves the pH a long way. Strong acids must never be used. Where treating it is allowed at all, local rules say how, and carbon dioxide is the gentler way.',
    'As lime is used up the solids give off more, so a pH brought down today climbs again overnight.',
    'A strip is good to half a unit at best: that is three times as much hydroxide, or a third.',
    ...(pH > limeSaturatedPH(pKw)
      ? [
          `At ${say(temperature, 'temperature')} lime alone cannot bring a pH above ${say(limeSaturatedPH(pKw), 'count', { decimals: 2 })} (from memory): alkalis of the cement are in it, or it is read too high.`,
        ]
      : []),
  ],
  blames: { limeReserve: 'cement' },
  working: [
    {
      tex: String.raw`[\mathrm{OH^-}] = 10^{\,\mathrm{pH}-\mathrm{p}K_w}\ \text{mol/L}`,
      put: ({ clear, pKw }, { volume, pH, temperature }, say) =>
        `pKw is ${pKw.toFixed(2)} at ${say(temperature, 'temperature')}. pH\u00a0${pH.toFixed(2)} in ${say(volume, 'volume')}: ${say(clear.hydroxide.dissolved, 'count', { significant: 3 })}\u00a0mol of hydroxide dissolved`,
    },
    {
      tex: String.raw`\begin{gathered}\mathrm{CO_2 + 2\,OH^- \to CO_3^{2-} + H_2O}\\ \mathrm{C_6H_8O_7 + 3\,OH^-}\\ \mathrm{\to C_6H_5O_7^{3-} + 3\,H_2O}\end{gathered}`,
      put: ({ clear, muddy }, _, say) =>
        `÷ 3\u00a0×\u00a0210\u00a0g/mol of citric acid monohydrate: ${say(clear.citricAcid.monohydrate, 'mass', { units: SMALL_MASS, significant: 2 })}; with ${say(muddy.hydroxide.reserve, 'count', { significant: 3 })}\u00a0mol from the solids, ${say(muddy.citricAcid.monohydrate, 'mass', { units: SMALL_MASS, significant: 2 })}. ÷ 2\u00a0×\u00a044\u00a0g/mol of carbon dioxide: ${say(clear.carbonDioxide, 'mass', { units: SMALL_MASS, significant: 2 })}; with those of the solids, ${say(muddy.carbonDioxide, 'mass', { units: SMALL_MASS, significant: 2 })}`,
    },
  ],
  figure: ({ values }) => <PhScale pH={values.pH} />,
  cautions: ['alkaline-washout', 'caustic-slurry'],
  defers: [
    'The water authority and the local waste rules. They also decide whether wash water may be treated and let go at all: never by guess.',
  ],
  sources: [
    'macomb-washout',
    'ecology-bmp-c252',
    'fish-ph',
    'washout-practice',
    'wateq4f',
    'washout-stoichiometry',
    'taylor-cement-chemistry',
    'lime-water-buffer',
    'iupac-atomic-weights',
  ],
});
