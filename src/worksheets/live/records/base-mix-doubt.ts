import { isBaseMix } from '../../../core/mix/water-cement-limits.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { inWords, noBaseMixWords } from '../../shared/mix/no-base-mix.ts';

/**
 * Relative difference from the planned w/c above which a mistake is assumed. Our own limit, no
 * source.
 */
const AS_PLANNED = 0.15;

/** Water and cement of a base mix, kg. */
interface BaseParts {
  readonly water: number;
  readonly cement: number;
}

const ratioOf = ({ water, cement }: BaseParts) => water / cement;
const isNear = (x: number, to: number) => Math.abs(x / to - 1) <= AS_PLANNED;

/**
 * The doubt about the water and cement weighed in, compared with the plan's if there is one. The
 * plan's cement replacements count as cement on both sides.
 */
export function baseMixDoubt(
  weighed: BaseParts,
  /** `binder`: cement with its replacements, kg. */
  planned: (BaseParts & { readonly binder?: number | undefined }) | undefined,
  say: Say,
): Judgement | undefined {
  if (weighed.cement === 0)
    return {
      verdict: 'stop',
      say: 'Cement cannot be 0: nothing can be worked out for a base mix without it. Write down what was weighed in.',
    };
  const raw = ratioOf(weighed);
  if (!planned)
    return isBaseMix(raw) ? undefined : { verdict: 'stop', say: noBaseMixWords(raw, say) };
  const ofBinder = planned.cement / (planned.binder ?? planned.cement);
  const [ratio, plan] = [raw * ofBinder, ratioOf(planned) * ofBinder];
  if (isNear(ratio, plan)) return undefined;
  const [water, cement] = [say(weighed.water, 'mass'), say(weighed.cement, 'mass')];
  const ask = isNear(raw, 1 / ratioOf(planned))
    ? `are the ${water} of water and the ${cement} of cement swapped?`
    : `look again at the ${water} of water and the ${cement} of cement, and at their units.`;
  return {
    verdict: isBaseMix(ratio) ? 'look' : 'stop',
    say: `The w/c weighed in is ${inWords(ratio, say)}${ofBinder < 1 ? ', what stands in for cement counted' : ''}, where ${inWords(plan, say)} is planned: ${ask}`,
  };
}
