import { SPECIFIC_HEAT } from '../../core/curing/heat/thermal-properties.ts';
import { FREEZES_AT } from '../../core/curing/limits.ts';
import {
  HOT_WATER_LIMIT,
  iceAsWater,
  iceFor,
  mixTemperature,
  waterTemperatureFor,
} from '../../core/curing/mix-temperature.ts';
import { isBaseMix } from '../../core/mix/water-cement-limits.ts';
import type { Say } from '../../islands/engine/say.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { noBaseMixWords } from '../shared/mix/no-base-mix.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { temperature } from './curing-temperature.ts';
import { WarmthScale } from './drawn/WarmthScale.tsx';
import { MIX, mixWarmth, outsideMix } from './mix-warmth.ts';

/** The specific heats as the working shows them, kJ/(kg·K). */
const KILOJOULES = {
  cement: SPECIFIC_HEAT.cement / 1000,
  water: SPECIFIC_HEAT.water / 1000,
} as const;

/**
 * The largest difference from the wanted temperature that is accepted, K: what the calculation leaves
 * out makes about one degree, and so do the readings of the ingredients. A choice.
 */
const MISS = 3;

/** Up to this difference, K, the mix is said to be as wanted. A choice. */
const AS_WANTED = 1;

const mass = (label: string, example: string) =>
  number('mass', { label, example, min: '0 kg', max: '100000 kg' });

export default worksheet({
  id: 'mix-temperature',
  question: 'How warm will the mix come out?',
  fields: {
    cement: { ...mass('Cement', '40.72 kg'), takes: 'mix.cement' },
    cementAt: temperature('Cement is at', '18 °C', {}),
    water: { ...mass('Mixing water', '16.29 kg'), takes: 'mix.water' },
    waterAt: temperature('Water is at', '23 °C', { min: '0 °C' }),
    sand: { ...mass('Sand, as damp as it lies', '0 kg'), takes: 'mix.sand', usual: true },
    sandAt: { ...temperature('Sand is at', '12 °C', {}), needs: 'sand' },
    foam: { ...mass('Foam, by weight', '6.07 kg'), takes: 'mix.foamMass' },
    foamAt: temperature('Foaming solution is at', '15 °C', { min: '-20 °C' }),
    wanted: temperature('Mix temperature you want', '22 °C', { min: '0 °C', max: '60 °C' }),
    sandWater: number('ratio', {
      label: 'Water in the sand',
      usual: true,
      help: 'Of its oven-dry mass.',
      example: '0 %',
      min: '0 %',
      max: '50 %',
      units: PERCENT,
      takes: 'mix.sandWater',
      folded: true,
    }),
    ice: { ...mass('Ice, besides the water', '0 kg'), folded: true },
    iceAt: temperature('Ice is at', '-5 °C', { max: '0 °C', folded: true }),
  },
  work: (v) => {
    const sandHeat = (SPECIFIC_HEAT.sand + v.sandWater * SPECIFIC_HEAT.water) / (1 + v.sandWater);
    const others = [
      { mass: v.cement, temperature: v.cementAt, specificHeat: SPECIFIC_HEAT.cement },
      { mass: v.foam, temperature: v.foamAt, specificHeat: SPECIFIC_HEAT.water },
      { mass: v.sand, temperature: v.sandAt, specificHeat: sandHeat },
    ];
    const water = { mass: v.water, temperature: v.waterAt, specificHeat: SPECIFIC_HEAT.water };
    const ice = { mass: v.ice, temperature: v.iceAt };
    const mix = mixTemperature({ ingredients: [...others, water], ice });
    const heat = waterTemperatureFor({ others, water: v.water, wanted: v.wanted, ice });
    const cool =
      mix.temperature - v.wanted >= AS_WANTED && v.ice === 0
        ? iceFor({
            others,
            water: v.water,
            waterTemperature: v.waterAt,
            wanted: v.wanted,
            iceTemperature: v.iceAt,
          })
        : undefined;
    const melted = { mass: v.ice, specificHeat: SPECIFIC_HEAT.water };
    const capacity = [...others, water, melted].map((each) => each.mass * each.specificHeat);
    const all = capacity.reduce((a, b) => a + b, 0);
    const [cement, foam, sand, ofWater, ofIce] = capacity.map((each) => each / all);
    const shares = { cement, foam, sand, water: ofWater, ice: ofIce };
    return { mix, heat, cool, sandHeat, shares, iceCounts: iceAsWater(v.iceAt) };
  },
  results: {
    temperature: { label: 'Mix temperature', kind: 'temperature', of: (r) => r.mix.temperature },
    waterFor: {
      label: 'Water temperature for the one you want',
      kind: 'temperature',
      of: (r) =>
        // Neither water that cannot be, nor water too hot to meet cement.
        r.heat.notes.length > 0 ? undefined : r.heat.temperature,
    },
    ice: {
      label: 'Ice in place of as much water, for the one you want',
      kind: 'mass',
      of: ({ cool }) => (cool && isEnough(cool) ? cool.mass : undefined),
      significant: 2,
    },
    iceLeft: {
      label: 'Ice left unmelted',
      kind: 'mass',
      of: (r) => (r.mix.iceLeft > 0 ? r.mix.iceLeft : undefined),
      significant: 2,
    },
  },
  doubts: (_, v, say) => slipWords(v, say),
  judge: ({ mix, heat, cool }, v, say) => {
    const { waterAt, wanted } = v;
    const t = (kelvin: number) => say(kelvin, 'temperature');
    const water =
      cool && !isEnough(cool) && !outsideMix(wanted)
        ? `Not even ice for all the water cools it to ${t(wanted)}: let the cement and the sand cool first.`
        : waterWords(heat, v, say);
    if (waterAt > HOT_WATER_LIMIT)
      return {
        verdict: 'stop',
        say: `Water at ${saidApart(waterAt, 'temperature', [HOT_WATER_LIMIT], say)} must not meet cement: above ${t(HOT_WATER_LIMIT)} it can set in a flash, in lumps. Cool it, or let sand take the heat first.`,
      };
    if (mix.iceLeft > 0)
      return {
        verdict: 'stop',
        say: 'There is more ice than the rest can melt. Lumps of ice leave holes: use less.',
      };
    const warmth = mixWarmth(mix.temperature, say, 'the temperatures above and their units');
    const ways =
      mix.temperature > MIX.hot && (!cool || isEnough(cool))
        ? 'Use cooler water, or ice for some of it.'
        : water;
    if (warmth?.verdict === 'stop') return { ...warmth, say: `${warmth.say} ${ways}` };
    const frozen = [
      ...(v.sand > 0 && v.sandAt <= FREEZES_AT ? ['sand'] : []),
      ...(v.foam > 0 && v.foamAt <= FREEZES_AT ? ['foaming solution'] : []),
    ].join(' and the ');
    if (frozen)
      return {
        verdict: 'look',
        say: `The ${frozen} may be frozen: ice takes heat that is not counted here, and its lumps leave holes. Thaw ${frozen.includes(' and ') ? 'them' : 'it'} before you rely on ${t(mix.temperature)}.`,
      };
    if (warmth) return { ...warmth, say: `${warmth.say} ${ways}` };
    if (outsideMix(wanted))
      return { verdict: 'look', say: `${t(mix.temperature)} will do. ${water}` };
    const over = mix.temperature - wanted;
    if (Math.abs(over) > MISS)
      return {
        verdict: 'look',
        say: `${t(mix.temperature)} is ${say(Math.abs(over), 'temperatureDifference', { significant: 2 })} ${over < 0 ? 'cooler' : 'warmer'} than you want. ${water}`,
      };
    if (Math.abs(over) < AS_WANTED)
      return {
        verdict: 'good',
        say: `${t(mix.temperature)} is what you want, or within a degree of it.`,
      };
    return {
      verdict: 'good',
      say: `${t(mix.temperature)} will do. ${water}`,
    };
  },
  notes: () => [
    'The heat of wetting the cement, of the drill and of the air is left out; the mix usually comes out a degree or so warmer. Measure it.',
  ],
  refusals: {
    'nothing-to-warm': () => 'Water alone is no mix: enter its cement, and its foam or sand.',
    freezes: () => 'These ingredients would freeze together. Warm the water, or use less ice.',
  },
  folded: 'Ice, and the water in the sand',
  blames: {
    mass: 'cement',
    capacity: 'cement',
    mixTemperature: 'waterAt',
    heat: 'ice',
    iceTemperature: 'iceAt',
    temperature: 'cementAt',
  },
  keeps: { temperature: 'curing.mixTemperature' },
  working: [
    {
      tex: String.raw`T = \frac{\sum m\,c\,T}{\sum m\,c}`,
      put: ({ mix, sandHeat, iceCounts }, v, say) =>
        `${say(v.cement, 'mass')} × ${KILOJOULES.cement} × ${say(v.cementAt, 'temperature')} + ${say(v.water, 'mass')} × ${KILOJOULES.water} × ${say(v.waterAt, 'temperature')} + ${say(v.foam, 'mass')} × ${KILOJOULES.water} × ${say(v.foamAt, 'temperature')}${v.sand > 0 ? ` + ${say(v.sand, 'mass')} × ${(sandHeat / 1000).toFixed(2)} × ${say(v.sandAt, 'temperature')}` : ''}${v.ice > 0 ? ` + ${say(v.ice, 'mass')} × ${KILOJOULES.water} × ${say(iceCounts, 'temperature')} for the ice (as water so cold: what melts it counted)` : ''}, over the same without the temperatures: ${mix.iceLeft > 0 ? 'below freezing, so not all of the ice melts, and the mix stays at ' : ''}${say(mix.temperature, 'temperature')}`,
    },
    {
      tex: String.raw`T_w = \frac{T \sum m\,c - \sum_{\text{others}} m\,c\,T_i}{m_w\,c_w}`,
      put: ({ heat }, v, say) =>
        `For ${say(v.wanted, 'temperature')} the water would have to be at ${say(heat.temperature, 'temperature')}`,
    },
  ],
  figure: ({ values: v, result: { mix, shares, iceCounts }, say }) => (
    <WarmthScale
      marks={[
        { name: 'cement', at: v.cementAt, share: shares.cement ?? 0, role: 'plain' },
        ...(v.sand > 0
          ? [{ name: 'sand', at: v.sandAt, share: shares.sand ?? 0, role: 'plain' as const }]
          : []),
        { name: 'water', at: v.waterAt, share: shares.water ?? 0, role: 'plain' },
        ...(v.ice > 0
          ? [
              {
                name: 'melting ice, as water at',
                at: iceCounts,
                share: shares.ice ?? 0,
                role: 'plain' as const,
              },
            ]
          : []),
        { name: 'foam', at: v.foamAt, share: shares.foam ?? 0, role: 'plain' },
        { name: 'mix', at: mix.temperature, role: 'measured' },
      ]}
      limit={{ at: HOT_WATER_LIMIT, label: 'no hotter water on cement' }}
      say={say}
    />
  ),
  cautions: ['caustic-slurry', 'boiling-water', 'frost-and-heat'],
  defers: [
    'The thermometer in the mix decides; the concentrate’s own sheet says how warm its solution may be.',
  ],
  sources: ['aci-305r', 'aci-306r', 'bentz-2007', 'brown-2022', 'ice-heat', 'common-practice'],
});

interface Masses {
  readonly cement: number;
  readonly water: number;
  readonly ice: number;
  readonly sand: number;
  readonly sandWater: number;
  readonly foam: number;
}

/**
 * The doubt about masses that make no base mix, or about more foam than cement by weight, which is
 * probably a volume. A choice, no source.
 */
function slipWords(
  { cement, water, ice, sand, sandWater, foam }: Masses,
  say: Say,
): string | undefined {
  if (cement === 0) return undefined;
  const ratio = (water + ice + (sand * sandWater) / (1 + sandWater)) / cement;
  if (water > 0 && !isBaseMix(ratio)) return `Check the masses. ${noBaseMixWords(ratio, say)}`;
  return foam > cement
    ? `Check the foam: at ${say(foam, 'mass')} it outweighs the cement. Litres in place of its weight?`
    : undefined;
}

/** Whether ice for the water, or for some of it, brings the mix to what is wanted. */
const isEnough = ({ notes }: ReturnType<typeof iceFor>) => notes.length === 0;

const plainly = (kelvin: number, say: Say) => say(kelvin, 'temperature', { plain: true });

function waterWords(
  heat: ReturnType<typeof waterTemperatureFor>,
  { wanted, ice }: { readonly wanted: number; readonly ice: number },
  say: Say,
): string {
  if (outsideMix(wanted))
    return `The ${plainly(wanted, say)} you want is too ${wanted > MIX.hot ? 'hot' : 'cold'} for a mix: aim between ${plainly(MIX.cold, say)} and ${plainly(MIX.hot, say)}.`;
  const t = (kelvin: number) => say(kelvin, 'temperature');
  const code = heat.notes[0]?.code;
  if (ice > 0 && (code === 'impossible' || code === 'hot-water'))
    return `For ${t(wanted)} use less ice.`;
  if (code === 'impossible')
    return `No water is hot enough for ${t(wanted)}: warm the cement and the sand as well.`;
  if (code === 'hot-water')
    return `For ${t(wanted)} the water would be at ${t(heat.temperature)}, too hot to meet cement: warm the room and the bags instead.`;
  if (code === 'needs-ice')
    return `For ${t(wanted)} ${ice > 0 ? 'more' : 'some'} of the water must be ice.`;
  return `For ${t(wanted)} have the water at ${t(heat.temperature)}.`;
}
