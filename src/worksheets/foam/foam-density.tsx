import { demand } from '../../core/domain-error.ts';
import { AIR_DENSITY, foamDensity, SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { partDrained } from '../../core/foam/part-drained.ts';
import { STANDARD_FOAM_BAND } from '../../core/foam/standard-band.ts';
import { vesselVolume } from '../../core/foam/vessel.ts';
import { WET_FOAM } from '../../core/foam/wet-foam.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import { repeated } from '../../core/uncertainty/repeated.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { ASSUMED_FOAM } from '../shared/foam/assumed-foam.ts';
import { DRAINED } from '../shared/foam/drained-foam.ts';
import { unsureFoam } from '../shared/foam/foam-doubt.ts';
import { foamFault, isFoam, LIGHT_FOAM } from '../shared/foam/is-foam.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import { FOAM, PERCENT, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { netWords } from '../shared/words/as-said.ts';
import { FoamScale } from './drawn/FoamScale.tsx';
import { weighingFields } from './weighing-fields.ts';

/** About one maker's working point of 80 g/L, wished denser. Common practice, no source. */
const PRACTICE = { from: LIGHT_FOAM, to: WET_FOAM } as const;
/** Weighings further apart than this show a foam that varies. Common practice, no source. */
const MOST_RANGE = 0.03;

export default worksheet({
  id: 'foam-density',
  question: 'How heavy is my foam?',
  fields: weighingFields,
  work: (v, pm) => {
    if (v.method === 'assumed')
      return { apparent: v.assumed, assumed: true, weighed: undefined, doubt: 0 };
    const volume =
      v.vesselKnown === 'weighed'
        ? vesselVolume({ empty: v.tare, filled: v.filled, temperature: v.temperature }).volume
        : v.vessel;
    const fulls = v.weighings === 'several' ? v.fulls.map(({ full }) => full) : [v.full];
    // The mean would hide one that is no weighing of foam.
    if (v.weighings === 'several')
      for (const [i, full] of fulls.entries())
        demand(`fulls.${i}.full`, full, 'mass', { min: v.tare, aboveMin: true }, 'no-foam');
    if (v.vesselKnown === 'weighed')
      demand('filled', v.filled, 'mass', { min: Math.max(...fulls), aboveMin: true }, 'no-water');
    const spread = repeated({ values: fulls, kind: 'mass' });
    const asMade = foamDensity({ tare: v.tare, full: spread.mean, vessel: volume });
    const parted = partDrained({
      net: spread.mean - v.tare,
      vessel: volume,
      drained: v.drained,
      solutionDensity: SOLUTION_DENSITY,
    });
    const notAll = { max: justUnder(1, SLIVER), belowMax: true };
    demand('drained', parted.share, 'ratio', notAll, 'more-than-the-foam-held');
    const foam = v.drained > 0 ? foamDensity({ tare: 0, full: parted.foam, vessel: 1 }) : asMade;
    const range = (Math.max(...fulls) - Math.min(...fulls)) / (spread.mean - v.tare);
    const weighed = {
      volume,
      foam,
      asMade,
      spread,
      range,
      share: parted.share,
      count: fulls.length,
      scale: v.weighings === 'several' ? v.scale / volume : 0,
    };
    const doubt = densityDoubt(
      { tare: v.tare, full: spread.mean, vessel: volume },
      {
        tare: pm.tare,
        full: v.weighings === 'several' ? v.scale : pm.full,
        vessel:
          v.vesselKnown === 'weighed' ? (volume * pm.filled) / (v.filled - v.tare) : pm.vessel,
      },
    );
    return { apparent: foam.apparent, assumed: false, weighed, doubt };
  },
  results: {
    density: {
      label: 'Foam density',
      kind: 'density',
      of: (r) => r.apparent,
      units: FOAM,
      sure: true,
      scatter: ({ weighed }) =>
        weighed?.spread.uncertainty && weighed.spread.uncertainty / weighed.volume,
      listed: ({ weighed }) => weighed && [weighed.scale, 'fulls'],
    },
    expansion: {
      label: 'Expansion',
      kind: 'count',
      of: ({ weighed }) => weighed?.foam.expansion,
      note: 'volumes of foam from one of solution',
    },
    gas: {
      label: 'Gas in the foam',
      kind: 'ratio',
      of: ({ weighed }) => weighed?.foam.gasFraction,
      units: PERCENT,
    },
    volume: {
      label: 'Vessel’s volume',
      kind: 'volume',
      of: ({ weighed }) => weighed?.volume,
      sure: true,
    },
    range: {
      label: 'Weighings differ, lowest to highest, by',
      kind: 'ratio',
      of: ({ weighed }) => (weighed && weighed.count > 1 ? weighed.range : undefined),
      units: PERCENT,
      significant: 2,
    },
    asMade: {
      label: 'The foam as it was made, liquid and all',
      kind: 'density',
      of: ({ weighed }) => (weighed && weighed.share > 0 ? weighed.asMade.apparent : undefined),
      units: FOAM,
    },
    share: {
      label: 'Liquid drained before it was weighed',
      kind: 'ratio',
      of: ({ weighed }) => (weighed && weighed.share > 0 ? weighed.share : undefined),
      units: PERCENT,
      significant: 2,
    },
  },
  judge: (r, _, say) => {
    const amount = say(r.apparent, 'density', { units: FOAM });
    const fault = foamFault(r.apparent);
    const slip = `First look for a slip: ${r.weighed ? `in the vessel’s volume, ${say(r.weighed.volume, 'volume')}, and in the weights` : 'in the figure, and in its unit'}.`;
    const wrong =
      fault &&
      {
        hardly: `${amount} is hardly foam. ${slip}`,
        thin: `${amount} is lighter than the standards’ band. ${slip} If it is right, foam this thin breaks in the mixer: close the air a little, or make the solution stronger.`,
        wet: `${amount} is a wet foam: it carries much solution, and what it carries goes into the mix as water. Open the air a little.`,
      }[fault.is];
    if (r.assumed)
      return {
        verdict: fault?.verdict ?? 'look',
        say: `${wrong ? `${wrong} And it` : amount} is assumed, not weighed. Weigh a bucket of your foam before the base mix is made: every amount below rests on it.`,
      };
    // What it has let go says more than what is left weighs, unless there was a slip.
    if (r.weighed && r.weighed.share > DRAINED.thin && isFoam(r.weighed.asMade.apparent)) {
      const gone = r.weighed.share > DRAINED.gone;
      return {
        verdict: gone ? 'stop' : (fault?.verdict ?? 'look'),
        say: `${say(r.weighed.share, 'ratio', { units: PERCENT, significant: 2 })} of its liquid had run out when it was weighed: ${gone ? 'what is left breaks under the paddle' : 'its walls are thin, and much of it will break under the paddle (common practice, no source)'}. Make fresh foam, and weigh it within a minute.`,
      };
    }
    if (wrong && fault.verdict === 'stop') return { verdict: 'stop', say: wrong };
    // A ± larger than the result is sooner a slip of its unit, and said so with the reading it comes from.
    const unsure = r.doubt <= r.apparent && unsureFoam(r.doubt, say);
    if (unsure) return unsure;
    if (r.weighed && r.weighed.range > MOST_RANGE)
      return {
        verdict: 'look',
        say: `Your weighings differ by ${say(r.weighed.range, 'ratio', { units: PERCENT, significant: 2 })}: look for the cause, pressure, packing or liquid left in the vessel, before you mix by the mean of ${amount}.`,
      };
    if (wrong) return { verdict: fault.verdict, say: wrong };
    if (r.apparent < PRACTICE.from)
      return {
        verdict: 'look',
        say: `${amount} lies ${r.apparent > STANDARD_FOAM_BAND.max ? 'just above' : 'in'} the standards’ band for machine-made foam; small-batch makers want it denser, so that it survives the drill: give it a little less air, or use it and expect to correct.`,
      };
    return {
      verdict: 'good',
      say: `${amount} is where small-batch makers work (common practice, no source), above the standards’ band for machine-made foam. On the day, use it at once.`,
    };
  },
  notes: ({ weighed }, _, say) =>
    weighed
      ? [
          ...(weighed.share > 0
            ? [
                `This is the foam above the liquid. If the liquid goes into the mix with it, use the foam as it was made, ${say(weighed.asMade.apparent, 'density', { units: FOAM })}.`,
              ]
            : []),
          ...(weighed.spread.plusMinus
            ? [
                `From their scatter alone the mean lies within\u00a0±\u00a0${say(weighed.spread.plusMinus / weighed.volume, 'density', { units: FOAM, significant: 2 })} 95 times in 100. What the scale or the vessel’s volume has wrong, no number of weighings shows.`,
              ]
            : []),
          'Put the scale’s reading in as it is: the air in the bubbles needs no correction.',
        ]
      : [],
  refusals: {
    'no-foam': ({ quantity, value, allowed }, say) =>
      `Weighing ${Number(quantity.split('.')[1]) + 1}: read ${say(value, 'mass', { plain: true })}; it must be more than the empty vessel, ${say(allowed.min!, 'mass', { plain: true })}.`,
    'no-water': ({ value, allowed }, say) =>
      `Full of water, ${say(value, 'mass', { plain: true })}, the vessel must weigh more than full of foam, ${say(allowed.min!, 'mass', { plain: true })}. Check both, and their units.`,
    'no-gas': ({ value, allowed }, say) =>
      `The full vessel, ${say(value, 'mass', { plain: true })}, is as heavy as if it held plain solution: by its volume that makes ${say(allowed.max!, 'mass')}. Check that volume and its unit, that it was foam to the brim, and that the empty weight is of the same vessel.`,
    'more-than-the-foam-held': () =>
      'That is as much liquid as everything in the vessel weighs, or more. Check the weighing, and the unit of the liquid.',
  },
  folded: 'Several weighings, and liquid under the foam',
  blames: { empty: 'tare', full: ['full', 'fulls'], values: 'fulls' },
  keeps: { density: 'foam.density', volume: 'bucket.brim' },
  leaves: { [ASSUMED_FOAM]: (r) => (r.assumed ? r.apparent : undefined) },
  working: [
    {
      tex: String.raw`\rho_f = \frac{m_{\text{full}} - m_{\text{empty}}}{V}`,
      put: (r, v, say) =>
        r.weighed === undefined
          ? 'Assumed; nothing was weighed.'
          : `ρf = (${netWords(r.weighed.spread.mean, v.tare, say)}) ÷ ${say(r.weighed.volume, 'volume')} = ${say(r.weighed.asMade.apparent, 'density', { units: FOAM })}`,
    },
    {
      tex: String.raw`\rho_f' = \frac{m_{\text{foam}} - \rho_s V_{\text{drained}}}{V - V_{\text{drained}}}`,
      put: (r, v, say) =>
        r.weighed && v.drained > 0
          ? `ρf′ = ${say(r.apparent, 'density', { units: FOAM })} above ${say(v.drained, 'volume', { units: SMALL_VOLUME })} of liquid`
          : 'Only when liquid stands below the foam.',
    },
    {
      tex: String.raw`V = \frac{m_{\text{water}} - m_{\text{empty}}}{\rho_w(T)}`,
      put: (r, v, say) =>
        v.method === 'weighed' && v.vesselKnown === 'weighed'
          ? `V = (${netWords(v.filled, v.tare, say)}) ÷ water’s density at ${say(v.temperature, 'temperature')} = ${say(r.weighed!.volume, 'volume', { significant: 4 })}`
          : 'Only when the vessel is weighed full of water.',
    },
  ],
  figure: ({ result, say }) => (
    <FoamScale
      gas={AIR_DENSITY}
      solution={SOLUTION_DENSITY}
      caption="Foam between gas and solution. Bands: what standards name for preformed foam (from memory), and where small-batch makers work (common practice, no source)"
      bands={[
        {
          from: STANDARD_FOAM_BAND.min,
          to: STANDARD_FOAM_BAND.max,
          label: 'standards, from memory',
        },
        { ...PRACTICE, label: 'practice' },
      ]}
      marks={[
        ...(result.weighed && result.weighed.share > 0
          ? [{ at: result.weighed.asMade.apparent, label: 'as made', role: 'plain' as const }]
          : []),
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
  defers: ['The concentrate’s own sheet gives the density it is sold for.'],
  sources: [
    'imo-foam-test',
    'jcgm-100',
    'navedtra-14070',
    'tanaka-2001',
    'aci-523-1r',
    'common-practice',
  ],
});
