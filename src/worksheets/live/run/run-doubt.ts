import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { stiffDoubt } from '../../mix/stiff-doubt.ts';
import { hasRoom } from '../../shared/mix/correction-advice.ts';
import { baseMixDoubt } from '../records/base-mix-doubt.ts';
import { blendDensity } from '../records/record-words.ts';
import { baseIn, foamWanted, massIn, otherMass, outOf } from './run-base.ts';
import { foamDoubt } from './run-foam-doubt.ts';
import type { RunReadings } from './run-readings.ts';

/** Relative difference from the foam needed above which a mistake is assumed. A choice. */
const ANOTHER_AMOUNT = 0.5;
/** The largest load of a small batch, m³: above it a wrong unit is assumed. A choice. */
const LARGEST = 0.5;
/**
 * Ratio of mass out to mass in that is accepted, as bucket and forms are read no closer. A choice.
 */
const OUT_OF_IN = 1.1;

const litres = (volume: number, say: Say) => say(volume, 'volume');
const look = (words: string): Judgement => ({ verdict: 'look', say: words });

/**
 * The doubts about the amounts put in so far: the first one, causes before their effects, and an
 * overfull mixer beside it.
 */
export function runDoubts(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): readonly Judgement[] {
  // The example's plan is not compared with.
  const own = plan?.example ? undefined : plan;
  const { room, amount } = amountDoubts(readings, plan, own, say);
  const first = baseDoubt(readings, own, say) ?? foamDoubt(readings, plan, say);
  return [first ?? (room ? undefined : amount), room].filter((doubt) => doubt !== undefined);
}

/** The first of the doubts. */
export const runDoubt = (...asked: Parameters<typeof runDoubts>): Judgement | undefined =>
  runDoubts(...asked)[0];

function baseDoubt({ at }: RunReadings, own: RunPlan | undefined, say: Say) {
  const [water, cement] = [at('water'), at('cement')];
  const weighed = cement === 0 || (water !== undefined && cement !== undefined);
  const doubt = weighed ? baseMixDoubt({ water: water ?? 0, cement }, own, say) : undefined;
  // Damp sand includes water, so that the ratio is not known.
  if (doubt || own?.damp) return doubt;
  const [wet, dry] = weighed
    ? [water ?? 0, cement + (at('sand') ?? own?.sand ?? 0)]
    : own
      ? [own.water, own.cement + own.sand]
      : [1, 0];
  const stiff = stiffDoubt(wet, dry + otherMass(own), say);
  return stiff?.verdict === 'stop' ? stiff : undefined;
}

function amountDoubts(
  readings: RunReadings,
  plan: RunPlan | undefined,
  own: RunPlan | undefined,
  say: Say,
): { readonly room?: Judgement; readonly amount?: Judgement } {
  const wanted = foamWanted(readings, plan, say);
  const base = baseIn(readings, plan);
  if (wanted.is !== 'amount' || !base) return {};
  // Mix taken out before a correction is no longer in the mixer.
  const out = outOf(readings);
  const mix = wanted.mix - out / wanted.density;
  if (!hasRoom(mix, own?.largestLoad ?? LARGEST))
    return {
      room: look(
        `${say(base.mass, 'mass')} of base mix and its foam${out ? `, less the ${say(out, 'mass')} taken out,` : ''} make ${litres(mix, say)}${own ? `, and the mixer takes ${litres(own.largestLoad, say)}` : ''}: look again at each part weighed in, and at its unit.`,
      ),
    };
  const put = readings.at('foamVolume');
  if (put === undefined || Math.abs(put / wanted.volume - 1) <= ANOTHER_AMOUNT) return {};
  return {
    amount: look(
      `${litres(put, say)} of foam was put in, where ${litres(wanted.volume, say)} is wanted: look again at what was measured out.`,
    ),
  };
}

/**
 * The doubt about a bucket that the whole blend will not fill, before the foam is folded in;
 * undefined if there is another doubt.
 */
export function bucketDoubt(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const [vessel, wanted] = [readings.at('vessel'), foamWanted(readings, plan, say)];
  if (!vessel || wanted.is !== 'amount' || wanted.mix >= vessel) return undefined;
  if (runDoubt(readings, plan, say)) return undefined;
  // Nobody mixes the example's amounts.
  if (plan?.example && baseIn(readings, plan)?.weighed !== 'all') return undefined;
  return look(
    `The bucket holds more than all of the mix, ${litres(wanted.mix, say)}: have a smaller vessel ready to weigh the blend in.`,
  );
}

/** The doubt about more mass in the forms and left over than was in the mixer. */
export function placedDoubt(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const { at } = readings;
  const [base, went] = [baseIn(readings, plan), massIn(readings, plan, say)];
  const density = blendDensity(at) ?? at('planned') ?? plan?.wetDensity;
  if (!base || went === undefined || !density) return undefined;
  if (plan?.example && base.weighed !== 'all') return undefined;
  const out = (at('placed') ?? 0) * density + (at('leftOver') ?? 0);
  if (out <= OUT_OF_IN * went) return undefined;
  return look(
    `Filled and left over weigh ${say(out, 'mass')} at ${say(density, 'density')}, and ${say(went, 'mass')} went into the mixer: look again at both, and at what was weighed in.`,
  );
}
