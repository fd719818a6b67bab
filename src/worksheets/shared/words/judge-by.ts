import type { Judgement } from '../../../islands/worksheet.ts';

const GRAVEST_FIRST: readonly Judgement['verdict'][] = ['stop', 'look', 'good'];

/**
 * Combines judgements into one, the most serious first, so that none hides another; `otherwise` if
 * there are none.
 */
export function judgeBy(all: readonly (Judgement | undefined)[], otherwise: Judgement): Judgement {
  const rank = ({ verdict }: Judgement) => GRAVEST_FIRST.indexOf(verdict);
  const said = all.filter((each) => each !== undefined).sort((a, b) => rank(a) - rank(b));
  return said[0]
    ? { verdict: said[0].verdict, say: said.map((each) => each.say).join(' ') }
    : otherwise;
}
