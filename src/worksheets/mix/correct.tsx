import { correctMix } from '../../core/mix/correct.ts';
import { correctionTable, densitiesAround } from '../../core/mix/correction-table.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import { number } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { DENSITY, FOAM, LITRES, PERCENT } from '../shared/amounts.ts';
import { sandCement, waterCement } from './recipe-fields.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
const MOST_CORRECTIONS = 2;

export default worksheet({
  id: 'correct',
  question: 'The bucket weighs this. What do I add?',
  fields: {
    full: number('mass', {
      label: 'Bucket, struck full of blended mix',
      example: '13.65 kg',
      plusMinus: '0.01 kg',
      min: '0 kg',
      max: '5000 kg',
    }),
    tare: number('mass', {
      label: 'Bucket, empty',
      example: '0.85 kg',
      plusMinus: '0.01 kg',
      min: '0 kg',
      max: '200 kg',
      bench: 'bucket.tare',
    }),
    vessel: number('volume', {
      label: 'Bucket’s volume to the brim',
      example: '20 L',
      plusMinus: '0.2 L',
      min: '0.1 L',
      max: '1000 L',
      units: LITRES,
      bench: 'bucket.volume',
    }),
    mass: number('mass', {
      label: 'Mix in the mixer',
      help: 'What went in, less what you have taken out.',
      example: '21.02 kg',
      min: '0.01 kg',
      max: '100 t',
      folded: true,
      takes: 'mix.loadMass',
    }),
    target: number('density', {
      label: 'Target wet density',
      example: '600 kg/m3',
      min: '10 kg/m3',
      units: DENSITY,
      takes: 'mix.planned',
      folded: true,
    }),
    foamDensity: number('density', {
      label: 'Foam density now',
      example: '80 g/L',
      min: '5 g/L',
      max: '500 g/L',
      units: FOAM,
      takes: 'foam.density',
      bench: 'mix.foamDensity',
      folded: true,
    }),
    baseDensity: number('density', {
      label: 'Base mix density',
      example: '1951 kg/m3',
      min: '10 kg/m3',
      units: DENSITY,
      takes: 'mix.baseDensity',
      folded: true,
    }),
    cement: number('mass', {
      label: 'Cement in the mixer',
      example: '13.56 kg',
      min: '0.01 kg',
      takes: 'mix.loadCement',
      folded: true,
    }),
    water: number('mass', {
      label: 'All water in it, the foam’s too',
      example: '7.45 kg',
      min: '0 kg',
      takes: 'mix.loadWater',
      folded: true,
    }),
    waterCement: { ...waterCement, folded: true },
    sandCement: { ...sandCement, folded: true },
    tolerance: number('ratio', {
      label: 'Near enough, either way',
      help: 'One code allows 5 % over at the point of deposit.',
      example: '5 %',
      min: '0 %',
      max: '50 %',
      units: PERCENT,
      folded: true,
    }),
    made: number('count', {
      label: 'Corrections made so far',
      example: '0',
      min: '0',
      max: '20',
      whole: true,
    }),
  },
  work: (v) => {
    const measured = wetDensity({ tare: v.tare, full: v.full, vessel: v.vessel });
    const tolerance = v.tolerance * v.target;
    const common = {
      massInHand: v.mass,
      targetDensity: v.target,
      foamDensity: v.foamDensity,
      baseDensity: v.baseDensity,
      tolerance,
    };
    const fix = correctMix({
      ...common,
      measuredDensity: measured,
      inHand: { cement: v.cement, water: v.water },
      baseRecipe: { waterCement: v.waterCement, sandCement: v.sandCement },
    });
    const step = Math.max(10, Math.round(v.target / 24 / 5) * 5);
    const table = correctionTable({
      ...common,
      tare: v.tare,
      vessel: v.vessel,
      densities: densitiesAround({ targetDensity: v.target, step, below: 5, above: 8 }),
    });
    return { measured, fix, table, off: measured / v.target - 1, tolerance };
  },
  results: {
    measured: {
      label: 'Wet density',
      kind: 'density',
      of: (r) => r.measured,
      units: DENSITY,
      sure: true,
    },
    addFoam: {
      label: 'Add foam',
      kind: 'volume',
      of: (r) => (r.fix.foamVolume > 0 ? r.fix.foamVolume : undefined),
      units: LITRES,
      answer: true,
    },
    addFoamMass: {
      label: 'which weighs',
      kind: 'mass',
      of: (r) => (r.fix.foamMass > 0 ? r.fix.foamMass : undefined),
    },
    addBase: {
      label: 'Add base mix',
      kind: 'mass',
      of: (r) => (r.fix.baseMass > 0 ? r.fix.baseMass : undefined),
      answer: true,
    },
    addCement: {
      label: 'made of cement',
      kind: 'mass',
      of: (r) => (r.fix.baseMass > 0 ? r.fix.baseParts?.cement : undefined),
    },
    addWater: {
      label: 'and water',
      kind: 'mass',
      of: (r) => (r.fix.baseMass > 0 ? r.fix.baseParts?.water : undefined),
    },
    addSand: {
      label: 'and sand',
      kind: 'mass',
      of: (r) => (r.fix.baseParts && r.fix.baseParts.sand > 0 ? r.fix.baseParts.sand : undefined),
    },
    off: {
      label: 'Off target by',
      kind: 'ratio',
      of: (r) => r.off,
      units: PERCENT,
      significant: 2,
    },
    volume: { label: 'Mix you will have', kind: 'volume', of: (r) => r.fix.volume, units: LITRES },
    yield: {
      label: 'Yield changes by',
      kind: 'ratio',
      of: (r) => r.fix.yieldChange,
      units: PERCENT,
      significant: 2,
    },
    ratio: {
      label: 'w/c with the foam’s water',
      kind: 'count',
      of: (r) => r.fix.waterCementTotal,
    },
  },
  judge: ({ fix, measured, off }, { made, target }, say) => {
    const amount = say(measured, 'density', { units: DENSITY });
    if (fix.notes.some(({ code }) => code === 'check-reading'))
      return {
        verdict: 'stop',
        say: `${amount} cannot be a mix of this base mix and this foam. Weigh again: the bucket, its empty weight and its volume.`,
      };
    if (fix.action === 'leave')
      return {
        verdict: 'good',
        say: `${amount} is near enough to ${say(target, 'density', { units: DENSITY })}. Stop stirring and place it.`,
      };
    if (made >= MOST_CORRECTIONS)
      return {
        verdict: 'stop',
        say: `After ${made} corrections every turn of the paddle breaks more foam than it mends. Place it as it is, write ${amount} on the sheet, and start the next batch from that.`,
      };
    const add =
      fix.action === 'add-foam'
        ? `Add ${say(fix.foamVolume, 'volume', { units: LITRES })} of foam (${say(fix.foamMass, 'mass')})`
        : `Add ${say(fix.baseMass, 'mass')} of base mix`;
    return {
      verdict: 'look',
      say: `${Math.abs(off * 100).toFixed(0)} % too ${off > 0 ? 'heavy' : 'light'}. ${add}, fold it in gently, and weigh once more.`,
    };
  },
  notes: () => [
    'Exact for foam that all survives. Some breaks while it is folded in, so a corrected mix tends to come out a little heavy.',
    'Stop when it is near enough, after two corrections, or when the mix begins to stiffen: a placed mix a little off is worth more than a perfect one that has set in the bucket (common practice, no source).',
  ],
  refusals: {
    'heavier-than-base-mix': (e, say) =>
      `The target, ${say(e.value, 'density', { units: DENSITY })}, is not below the base mix (${say(e.allowed.max!, 'density', { units: DENSITY, significant: 4 })}): no foam would be wanted.`,
    'lighter-than-foam': (e, say) =>
      `The target, ${say(e.value, 'density', { units: DENSITY })}, is not above the foam (${say(e.allowed.min!, 'density', { units: DENSITY })}): no amount of foam reaches it.`,
  },
  folded: 'The batch behind it',
  blames: {
    targetDensity: 'target',
    massInHand: 'mass',
    measuredDensity: 'full',
  },
  working: [
    {
      tex: String.raw`\rho = \frac{m_{\text{full}} - m_{\text{empty}}}{V_{\text{bucket}}}`,
      put: (v, r, say) =>
        `ρ = (${say(v.full, 'mass', { decimals: 2 })} − ${say(v.tare, 'mass', { decimals: 2 })}) ÷ ${say(v.vessel, 'volume', { units: LITRES })} = ${say(r.measured, 'density', { units: DENSITY })}`,
    },
    {
      tex: String.raw`F = \frac{M - \rho_t M/\rho}{\rho_t - \rho_f} \qquad B = \frac{\rho_t M/\rho - M}{1 - \rho_t/\rho_b}`,
      put: (v, r, say) =>
        r.fix.action === 'add-base-mix'
          ? `B = (${say(v.target, 'density', { units: DENSITY })} × ${say(r.fix.volumeBefore, 'volume', { units: LITRES })} − ${say(v.mass, 'mass')}) ÷ (1 − target ÷ base mix) = ${say(r.fix.baseMass, 'mass')}`
          : `F = (${say(v.mass, 'mass')} − ${say(v.target, 'density', { units: DENSITY })} × ${say(r.fix.volumeBefore, 'volume', { units: LITRES })}) ÷ (target − foam) = ${say(r.fix.foamVolume, 'volume', { units: LITRES })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <DensityScale
      title="Where the mix is, and where it should be"
      from={0}
      to={Math.max(2200, values.baseDensity * 1.08)}
      units={DENSITY}
      bands={[
        {
          from: values.target - result.tolerance,
          to: values.target + result.tolerance,
          label: 'near enough',
        },
      ]}
      marks={[
        { at: values.foamDensity, label: 'foam', role: 'plain' },
        { at: values.target, label: 'target', role: 'target' },
        { at: result.measured, label: 'measured', role: 'measured' },
        { at: values.baseDensity, label: 'base mix', role: 'plain' },
      ]}
      arrow={
        result.fix.action === 'leave' ? undefined : { from: result.measured, to: values.target }
      }
      say={say}
    />
  ),
  tables: [
    {
      caption: 'If the bucket weighs …',
      columns: ['Bucket weighs', 'Wet density', 'Add foam', 'Add base mix'],
      rows: ({ table }, _, say) =>
        table.map((row) => [
          say(row.reading, 'mass', { decimals: 2 }),
          say(row.density, 'density', { units: DENSITY }),
          row.foamVolume > 0 ? say(row.foamVolume, 'volume', { units: LITRES }) : '—',
          row.baseMass > 0 ? say(row.baseMass, 'mass') : row.foamVolume > 0 ? '—' : 'leave it',
        ]),
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: ['The tolerance is yours, or that of the code or specification the part is made to.'],
  sources: ['astm-c138', 'california-721-2-1', 'common-practice'],
});
