import { type KeptResults, keptValue } from '../../bench/entries.ts';
import { demand } from '../../core/domain-error.ts';
import { EXTREMES } from '../../core/extremes.ts';
import { type Correction, correctMix } from '../../core/mix/correct.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import type { Say } from '../../islands/engine/say.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import {
  addWords,
  doubtWords,
  mixAdvice,
  overflows,
  spentJudgement,
  TO_EXAMPLE,
  vesselFor,
} from '../shared/mix/correction-advice.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import { holdsFurther } from '../shared/mix/further.ts';
import { pasteWaterCement } from '../shared/mix/paste-water.ts';
import { targetRefusals } from '../shared/mix/target-refusals.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS, PERCENT } from '../shared/words/amounts.ts';
import { netWords } from '../shared/words/as-said.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { BENCH_COLUMNS, benchRows } from './bench-rows.ts';
import { OWN_AIM, OWN_AMOUNT, OWN_PLAN } from './own-plan.ts';
import { weighedLoadFields } from './weighed-load-fields.ts';
import { grownWords, noSuchMix, waterDoubt } from './weighing-doubts.ts';

/** The working is shown in units that cancel. */
const CUBIC = { metric: 'm3', us: 'ft3' } as const;

/** The deviation in words: in whole per cents, or one digit below 1 %, and never reading the same as the tolerance. */
const tooMuch = (off: number, near: number, say: Say) =>
  `${saidApart(Math.abs(off), 'ratio', [near], say, {
    units: PERCENT,
    ...(Math.abs(off) < 0.01 ? { significant: 1 } : { decimals: 0 }),
  })} too ${off > 0 ? 'heavy' : 'light'}`;

/** The mass to correct, kg: all that is in the mixer, or as much as it has room for once corrected. */
const inMixer = ({ measured, fix }: { readonly measured: number; readonly fix: Correction }) =>
  measured * fix.volumeBefore;

/** What the plan’s load weighs, whatever is in it. */
const LOAD_MASS = 'mix.loadMass';

const isOwn = (kept: KeptResults, much: number) => (keptValue(kept[OWN_PLAN]) ?? 0) >= much;

export default worksheet({
  id: 'correct',
  question: 'The bucket weighs this. What do I add?',
  fields: weighedLoadFields,
  work: (v, pm, typed) => {
    const measured = wetDensity({ tare: v.tare, full: v.full, vessel: v.vessel });
    demand('full', measured, 'density', EXTREMES.density, 'no-such-mix');
    const tolerance = v.tolerance * v.target;
    // What is in the mixer has the load's make-up, however much of it was taken out.
    const parts = v.cement * (1 + v.sandCement) + v.water;
    const inHand = v.mass / parts;
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
      inHand: { cement: v.cement * inHand, water: v.water * inHand },
      baseRecipe: { waterCement: pasteWaterCement(v), sandCement: v.sandCement },
    });
    const { target, made, vessel, load } = v;
    const doubt = densityDoubt(v, { full: pm.full, tare: pm.tare, vessel: pm.vessel });
    const mix = { density: measured, target, tolerance, made, vessel, load, doubt };
    const advice = mixAdvice(fix, mix);
    // Only a correction that should be made is shown as an amount.
    const add = advice.is === 'add' ? advice.fix : undefined;
    return {
      measured,
      fix: add ?? fix,
      common: { ...common, tare: v.tare, vessel, load },
      off: measured / target - 1,
      tolerance,
      advice,
      add,
      parts,
      ownParts: Boolean(typed?.('cement') && typed('water')),
      ownMass: Boolean(typed?.('mass')),
    };
  },
  results: {
    measured: {
      label: 'Wet density',
      kind: 'density',
      of: (r) => r.measured,
      sure: true,
    },
    addFoam: {
      label: 'Add foam',
      kind: 'volume',
      of: (r) => r.add?.foamVolume || undefined,
      units: ADDED_FOAM,
      sure: true,
      answer: true,
    },
    addFoamMass: {
      label: 'Foam to add, by weight',
      kind: 'mass',
      of: (r) => r.add?.foamMass || undefined,
      units: ADDED_FOAM_MASS,
      significant: 2,
    },
    addBase: {
      label: 'Add base mix',
      kind: 'mass',
      of: (r) => r.add?.baseMass || undefined,
      sure: true,
      answer: true,
    },
    addCement: {
      label: 'Cement in the base mix to add',
      kind: 'mass',
      of: (r) => r.add?.baseParts?.cement || undefined,
      significant: 2,
    },
    addWater: {
      label: 'Water in the base mix to add',
      kind: 'mass',
      of: (r) => r.add?.baseParts?.water || undefined,
      significant: 2,
    },
    addSand: {
      label: 'Sand in the base mix to add',
      kind: 'mass',
      of: (r) => r.add?.baseParts?.sand || undefined,
      significant: 2,
    },
    volume: { label: 'Mix you will have', kind: 'volume', of: (r) => r.add?.volume },
    ratio: {
      label: 'w/c with the foam’s water',
      kind: 'count',
      of: (r) => r.add?.waterCementTotal,
    },
  },
  awaits: [
    [
      'full',
      ({ common }, say) =>
        overflows(common)
          ? `Your bucket holds more than one load: bring ${vesselFor(common.massInHand / common.targetDensity, say)}.`
          : 'Type what your bucket weighs, struck full of the blend.',
    ],
    [
      'mass',
      ({ advice, off, tolerance, common }, say, kept) =>
        advice.is === 'add' && !isOwn(kept, OWN_AMOUNT)
          ? `${tooMuch(off, tolerance / common.targetDensity, say)}. How much to add depends on what is in the mixer: plan the batch, or type it under “The batch behind it”.`
          : undefined,
    ],
    [
      'target',
      ({ advice, measured }, say, kept) =>
        advice.is === 'leave' && !isOwn(kept, OWN_AIM)
          ? `${say(measured, 'density')} is near enough ${TO_EXAMPLE}`
          : undefined,
    ],
  ],
  minds: [OWN_PLAN, LOAD_MASS, 'mix.further'],
  judge: (r, v, say, kept = {}) => {
    const { advice, measured, off, tolerance, parts } = r;
    const { made, mass, target } = v;
    // A mix that is placed as it is may be less than planned. The plan does not include what a
    // correction added, so then only a typed mass counts.
    const ownMass = r.ownMass || (made === 0 && isOwn(kept, OWN_AMOUNT));
    const there = ownMass ? ` There are ${say(mass / measured, 'volume')} of the mix.` : '';
    const amount = say(measured, 'density');
    if (advice.is === 'refused') return { verdict: 'stop', say: noSuchMix(measured, say) };
    const doubted = doubtWords(advice, say);
    if (doubted) return doubted;
    if (advice.is === 'leave')
      return {
        verdict: 'good',
        say: `${amount} is near enough to ${say(target, 'density')}. Stop stirring and place it.${there}`,
      };
    if (advice.is !== 'add') {
      const spent = spentJudgement({ density: measured, target, tolerance }, say);
      return advice.is === 'place' ? { ...spent, say: `${spent.say}${there}` } : spent;
    }
    // A plan may have put in more than cement, water and sand.
    const load = Math.max(parts, keptValue(kept[LOAD_MASS]) ?? 0);
    const grown = r.ownParts || isOwn(kept, OWN_AMOUNT) ? grownWords(mass, load, say) : undefined;
    const along =
      advice.fix.action === 'add-base-mix' && holdsFurther(kept)
        ? ', with its share of the pigment, fibre and whatever else was planned in it'
        : '';
    const add = `${tooMuch(off, tolerance / target, say)}. ${addWords(advice, say)}${along}, fold it in gently, and weigh once more.`;
    const doubts = [grown, waterDoubt(v, say)].filter(Boolean);
    return {
      verdict: 'look',
      say: doubts.length > 0 ? `${doubts.join(' ')} If all is right: ${add}` : add,
    };
  },
  notes: () => [
    'Exact if all the foam survives. Some breaks while it is folded in, so a corrected mix tends to come out a little heavy.',
    'Stop when it is near enough, after two corrections, or when the mix begins to stiffen (common practice, no source).',
  ],
  refusals: {
    'no-such-mix': (e, say) => noSuchMix(e.value, say),
    ...targetRefusals('The target'),
  },
  folded: 'The batch behind it',
  blames: {
    targetDensity: 'target',
    massInHand: 'mass',
  },
  working: [
    {
      tex: String.raw`\rho = \frac{m_{\text{full}} - m_{\text{empty}}}{V_{\text{bucket}}}`,
      put: (r, v, say) =>
        `ρ = (${netWords(v.full, v.tare, say)}) ÷ ${say(v.vessel, 'volume')} = ${say(r.measured, 'density')}`,
    },
    {
      tex: String.raw`F = \frac{M - \rho_t M/\rho}{\rho_t - \rho_f} \qquad B = \frac{\rho_t M/\rho - M}{1 - \rho_t/\rho_b}`,
      put: (r, v, say) =>
        r.fix.action === 'leave'
          ? `ρ is within ${say(r.tolerance, 'density', { significant: 2 })} of ρt = ${say(v.target, 'density')}: near enough, and nothing is added.`
          : r.fix.action === 'add-base-mix'
            ? `B = (${say(v.target, 'density')} × ${say(r.fix.volumeBefore, 'volume', { units: CUBIC, steady: true })} − ${say(inMixer(r), 'mass', { steady: true })}) ÷ (1 − ${say(v.target, 'density')} ÷ ${say(v.baseDensity, 'density', { significant: 4 })}) = ${say(r.fix.baseMass, 'mass', { steady: true })}`
            : `F = (${say(inMixer(r), 'mass', { steady: true })} − ${say(v.target, 'density')} × ${say(r.fix.volumeBefore, 'volume', { units: CUBIC, steady: true })}) ÷ (${say(v.target, 'density')} − ${say(v.foamDensity, 'density')}) = ${say(r.fix.foamVolume, 'volume', { units: CUBIC, steady: true })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <DensityScale
      title="Where the mix is, and where it should be"
      from={Math.min(values.target, result.measured) * 0.85}
      to={Math.max(values.target, result.measured) * 1.15}
      bands={[
        {
          from: values.target - result.tolerance,
          to: values.target + result.tolerance,
          label: 'near enough',
        },
      ]}
      marks={[
        { at: values.target, label: 'target', role: 'target' },
        { at: result.measured, label: 'measured', role: 'measured' },
        { at: values.baseDensity, label: 'base mix', role: 'plain', far: true },
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
      columns: BENCH_COLUMNS,
      rows: ({ common }, v, say) => benchRows({ ...common, made: v.made }, v, say),
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: ['The tolerance is yours, or that of the code or specification the part is made to.'],
  sources: ['astm-c138', 'california-721-2-1', 'common-practice'],
});
