import { DomainError, ifAllowed } from '../../core/domain-error.ts';
import { toUnit } from '../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import { blendOf, blendToTarget, blendWaters } from '../../core/water/blend.ts';
import { waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import { speciate } from '../../core/water/carbonate/speciate.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { lazy } from '../shared/lazy.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { blendFields } from './blend-fields.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { BlendFigure } from './drawn/BlendFigure.tsx';
import { ofPH } from './of-ph.ts';
import { stillHard } from './still-hard.ts';
import { atBenchPressure, WATER_REFUSALS } from './water-solved.ts';

/** Above this share of soft water, blending saves too little to be worth the measuring. Common practice, no source. */
const ALL_BUT_SOFT = 0.9;
/** And above this share of the other water: no home test shows a hundredth of the hardness. Common practice, no source. */
const ALL_BUT_HARD = 0.99;
/** What was read stands in the working as it was read: 12 mg/L, not 12.0. */
const READ = { plain: true, significant: 3 } as const;
export default worksheet({
  id: 'blend-waters',
  question: 'How much soft water do I blend in?',
  fields: blendFields,
  folded: 'For the pH of the blend',
  work: (v) => {
    const byHard = v.of === 'hardness';
    if (byHard) {
      demandFresh(v.hardness);
      demandFresh(v.soft, 'soft');
    }
    const further = v.more === 'more' ? v.further : [];
    const values = byHard
      ? [v.hardness, v.soft, ...further.map((water) => water.hardness)]
      : [v.otherFirst, v.otherSecond, ...further.map((water) => water.other)];
    const target = byHard ? v.target : v.otherTarget;
    const found = blendToTarget({ values, target, volume: v.volume });
    if (!found.reached)
      throw new DomainError({
        quantity: byHard ? 'target' : 'otherTarget',
        value: target,
        kind: byHard ? 'hardness' : 'concentration',
        allowed: { min: found.least, max: found.most },
        because: target > found.most ? 'above-them-all' : 'below-them-all',
      });
    const { fractions, volumes } = found;
    const waterOf = [
      { hardness: v.hardness, alkalinity: v.alkalinity, pH: v.pH },
      { hardness: v.soft, alkalinity: v.softAlkalinity, pH: v.softPH },
      ...further,
    ];
    const given = waterOf.flatMap(({ hardness, alkalinity, pH }) =>
      alkalinity === undefined || pH === undefined ? [] : [{ hardness, alkalinity, pH }],
    );
    // Each solved by itself first, so that the ion that balances it is counted in the blend.
    const waters = lazy(() => {
      const perVolume = waterPerVolume({ temperature: v.temperature });
      return given.map(({ hardness, alkalinity, pH }) =>
        atBenchPressure(
          speciate(
            { temperature: v.temperature, calcium: hardness / perVolume },
            { pH, alkalinity: (2 * alkalinity) / perVolume },
          ),
        ),
      );
    });
    const pHOf = (shares: readonly number[]) => ({
      solved: blendWaters(
        waters().map((water, i) => ({ mass: shares[i]!, water })),
        v.temperature,
      ).pH,
      averaged: blendOf(waters().map((water, i) => ({ amount: shares[i]!, value: water.pH }))),
    });
    const known = byHard && given.length === values.length;
    const names = ['first', 'second', ...further.map((_, i) => ['third', 'fourth', 'fifth'][i]!)];
    return {
      names,
      values,
      target,
      fractions,
      volumes,
      /** As typed, of each water. */
      pHs: waterOf.map(({ pH }) => pH),
      pHOf: known ? pHOf : undefined,
      pH: lazy(() => (known ? pHOf(fractions) : undefined)),
    };
  },
  results: {
    second: {
      label: 'Of the second water',
      kind: 'volume',
      of: (r) => r.volumes[1],
      sure: true,
      aboutZero: 'good',
    },
    first: {
      label: 'Of the first water',
      kind: 'volume',
      of: (r) => r.volumes[0],
      answer: true,
    },
    third: { label: 'Of the third water', kind: 'volume', of: (r) => r.volumes[2] },
    fourth: {
      label: 'Of the fourth water',
      kind: 'volume',
      of: (r) => r.volumes[3],
    },
    fifth: { label: 'Of the fifth water', kind: 'volume', of: (r) => r.volumes[4] },
    share: {
      label: 'Share of the second water',
      kind: 'ratio',
      of: (r) => r.fractions[1],
      units: PERCENT,
    },
    pH: {
      label: 'pH of the blend',
      kind: 'count',
      of: (r) => r.pH()?.solved,
      note: 'from the carbonate system',
    },
    averaged: {
      label: 'pH by averaging',
      kind: 'count',
      of: (r) => r.pH()?.averaged,
      note: 'not what you get: pH is not conserved',
    },
  },
  judge: (r, v, say) => {
    // A doubt asks about waters that cannot be: no harder than nought less its ±.
    const pH = ifAllowed(r.pH);
    const unfit =
      ofPH(pH?.solved, say, 'this blend', 'the pH and alkalinity of each water') ??
      // Whether or not the blend can be solved, and though another water hide it.
      r.names
        .map((name, i) =>
          r.fractions[i]! > 0 ? ofPH(r.pHs[i], say, `the ${name} water`, 'its pH') : undefined,
        )
        .find(Boolean);
    if (unfit) return unfit;
    const recipe = r.volumes
      .map((volume, i) => ({ volume, name: r.names[i]! }))
      .filter(({ volume }) => volume > 0)
      .map(({ volume, name }) => `${say(volume, 'volume')} of the ${name} water`);
    const still = v.of === 'hardness' ? stillHard(r.target, say) : '';
    const verdict = still ? 'look' : 'good';
    if (recipe.length === 1)
      return { verdict, say: `No blending is needed: take ${recipe[0]}.${still}` };
    const main = r.fractions.indexOf(Math.max(...r.fractions));
    const [most, alone] = [r.names[main]!, stillHard(r.values[main]!, say)];
    const soft = r.values[main] === Math.min(...r.values);
    // Little counts where foam bears the blend, and not the harder water alone.
    const enough = soft ? ALL_BUT_SOFT : still || !alone ? ALL_BUT_HARD : 1;
    if (v.of === 'hardness' && r.fractions[main]! > enough)
      return {
        verdict: 'look',
        say: `It would be nearly all ${soft ? 'soft' : `of the ${most}`} water. Use the ${most} water alone and save the measuring.${alone}`,
      };
    return {
      verdict,
      say: `Stir together ${recipe.join(' and ')}, then test ${v.of === 'hardness' ? 'the hardness of ' : ''}the blend once.${still}`,
    };
  },
  notes: (r, v) =>
    v.of === 'hardness'
      ? [
          `Hardness, alkalinity and every ion blend by volume. pH does not: ${r.pHOf ? 'for it all hardness is taken as calcium, and chloride, or a cation, as what balances the charges' : 'for it give the alkalinity and pH of each water, folded above'}.`,
        ]
      : [],
  refusals: {
    ...WATER_REFUSALS,
    ...BRINE_REFUSAL,
    'below-them-all': ({ value, kind, allowed }, say) =>
      `No blend of these is as low as ${words(say, value, kind)}: the least any can have is ${words(say, allowed.min!, kind)}. ${kind === 'hardness' ? 'Find a softer water or soften one' : 'Find a water with less of it: softening takes out neither chloride nor sulfate'}.`,
    'above-them-all': ({ value, kind, allowed }, say) =>
      `All of these lie below ${words(say, value, kind)} already (at most ${words(say, allowed.max!, kind)}). Use them as they are.`,
  },
  blames: { ionicStrength: 'hardness', carbonDioxidePressure: 'pH', values: 'hardness' },
  working: [
    {
      tex: String.raw`x_2 = \frac{c_1 - c_{\text{wanted}}}{c_1 - c_2}`,
      put: (r, v, say) =>
        r.values.length > 2
          ? `As much of the first as the target allows, and of the others only the one of which less is needed: ${r.fractions.map((f, i) => `${r.names[i]} ${say(f, 'ratio', { units: PERCENT })}`).join(', ')}.`
          : v.of === 'hardness'
            ? `(${say(v.hardness, 'hardness', READ)} − ${say(v.target, 'hardness', READ)}) ÷ (${say(v.hardness, 'hardness', READ)} − ${say(v.soft, 'hardness', READ)}) = ${say(r.fractions[1]!, 'ratio', { units: PERCENT })} of the second`
            : `(${say(v.otherFirst, 'concentration')} − ${say(v.otherTarget, 'concentration')}) ÷ (${say(v.otherFirst, 'concentration')} − ${say(v.otherSecond, 'concentration')}) = ${say(r.fractions[1]!, 'ratio', { units: PERCENT })} of the second`,
    },
    {
      tex: String.raw`\mathrm{pH} = f\!\left(\textstyle\sum x_i A_i,\ \sum x_i C_i,\ \sum x_i \mathrm{Ca}_i,\ T\right)`,
      put: (r) => {
        const pH = r.pH();
        return pH
          ? `Alkalinity, carbon and ions averaged, then solved: pH\u00a0${pH.solved.toFixed(2)} (the average of the pH values is ${pH.averaged.toFixed(2)}).`
          : 'Not asked for, or not all given.';
      },
    },
  ],
  figure: ({ values: v, result: r, say }) => {
    const { pHOf } = r;
    const kind = v.of === 'hardness' ? 'hardness' : 'concentration';
    const unit = kind === 'hardness' ? KINDS.hardness.shown[say.system] : 'mg/L';
    const shown = (value: number) => toUnit(value, kind, unit);
    return (
      <BlendFigure
        parts={r.names.map((name, i) => ({
          name: `${name} water`,
          value: shown(r.values[i]!),
          fraction: r.fractions[i]!,
        }))}
        target={shown(r.target)}
        name={kind === 'hardness' ? kind : undefined}
        unit={unitOf(kind, unit).symbol}
        pH={pHOf && ((share) => pHOf([1 - share, share]))}
      />
    );
  },
  cautions: ['stored-rainwater'],
  defers: ['A test of the blend itself.'],
  sources: ['definition', 'plummer-busenberg-1982', 'wateq4f', 'en-1008-memory', 'common-practice'],
});

const words = (say: Say, si: number, kind: DomainError['kind']) => say(si, kind);
