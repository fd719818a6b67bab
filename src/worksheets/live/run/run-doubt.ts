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

/** Foam put in that is off what is wanted by more than this share was measured or typed wrong. A choice. */
const ANOTHER_AMOUNT = 0.5;
/** Nobody’s small batch is a load larger than this, m³: a unit was taken for another. A choice. */
const LARGEST = 0.5;
/** No more can come out than went in, and bucket and forms are not read closer than this. A choice. */
const OUT_OF_IN = 1.1;

const litres = (volume: number, say: Say) => say(volume, 'volume');
const look = (words: string): Judgement => ({ verdict: 'look', say: words });

/**
 * What is strange about what was put in so far, the cause before what follows from it; and that the mixer runs
 * over, whatever else is strange.
 */
export function runDoubts(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): readonly Judgement[] {
  // The example’s plan is nobody’s.
  const own = plan?.example ? undefined : plan;
  const { room, amount } = amountDoubts(readings, plan, own, say);
  const first = baseDoubt(readings, own, say) ?? foamDoubt(readings, plan, say);
  return [first ?? (room ? undefined : amount), room].filter((doubt) => doubt !== undefined);
}

/** The first of them. */
export const runDoubt = (...asked: Parameters<typeof runDoubts>): Judgement | undefined =>
  runDoubts(...asked)[0];

function baseDoubt({ at }: RunReadings, own: RunPlan | undefined, say: Say) {
  const [water, cement] = [at('water'), at('cement')];
  const weighed = cement === 0 || (water !== undefined && cement !== undefined);
  const doubt = weighed ? baseMixDoubt({ water: water ?? 0, cement }, own, say) : undefined;
  // Of damp sand, some of what it weighs is water.
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
  // What a correction had taken out of the mixer runs over nothing.
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

/** A bucket that the whole blend does not fill, while its foam is still in the making and nothing else is strange. */
export function bucketDoubt(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const [vessel, wanted] = [readings.at('vessel'), foamWanted(readings, plan, say)];
  if (!vessel || wanted.is !== 'amount' || wanted.mix >= vessel) return undefined;
  if (runDoubt(readings, plan, say)) return undefined;
  // Of the example’s amounts nobody mixes.
  if (plan?.example && baseIn(readings, plan)?.weighed !== 'all') return undefined;
  return look(
    `The bucket holds more than all of the mix, ${litres(wanted.mix, say)}: have a smaller vessel ready to weigh the blend in.`,
  );
}

/** More filled in the forms and left over than ever was in the mixer. */
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
