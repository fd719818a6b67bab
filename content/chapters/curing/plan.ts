import { inBoth } from '~/components/prose/amount.ts';
import {
  DIN_CURING,
  EN_CLASS_1,
  EN_CLASS_1_SET,
  EN_CURING_SHARES,
  FLAT_RULES,
  type FlatRule,
} from '~/core/curing/curing-rules.ts';
import { type DayExtremes, dailyHistory } from '~/core/curing/history.ts';
import { curingPlan, type PlanEntry } from '~/core/curing/plan.ts';
import { GROWTH_COEFFICIENT } from '~/core/curing/strength-growth.ts';
import { DAY, HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { DEMO_DAYS } from '~/worksheets/curing/curing-fields.ts';
import { CAST_AT, VARIABLE } from './ageing.ts';

/** From its own temperature on to where the band before it begins. */
function bandInWords(row: number): string {
  const [from, below] = [DIN_CURING[row]?.from, DIN_CURING[row - 1]?.from];
  if (from === undefined) throw new Error(`The German table has no row ${row}.`);
  return below === undefined
    ? `${inBoth({ value: from, kind: 'temperature' })} and above`
    : inBoth({ value: [from, below], kind: 'temperature' });
}
export const germanTable = DIN_CURING.map(({ days }, row) => [
  bandInWords(row),
  ...[days.rapid, days.medium, days.slow, days['very-slow']].map(String),
]);

function flatDays(rule: FlatRule['rule']): number {
  const found = FLAT_RULES.find((each) => each.rule === rule);
  if (!found) throw new Error(`There is no rule ${rule}.`);
  return found.duration / DAY;
}
/** Days by the rules that ask for so many, whatever the surface. */
export const asked = {
  ukPlain: flatDays('nhbc-plain'),
  ukReinforced: flatDays('nhbc-reinforced'),
  american: flatDays('aci-normal'),
  americanHighEarly: flatDays('aci-high-early'),
};

/** Of the European classes: the first in hours, and in how many it must have set; the others in per cent of the strength. */
export const european = {
  class1: EN_CLASS_1 / HOUR,
  class1Set: EN_CLASS_1_SET / HOUR,
  class2: EN_CURING_SHARES[2] * 100,
  class3: EN_CURING_SHARES[3] * 100,
  class4: EN_CURING_SHARES[4] * 100,
};

function dayOf(line: string): DayExtremes {
  const [coldest, warmest] = line.split('\t').map((celsius) => Number(celsius) + ICE_POINT);
  if (coldest === undefined || warmest === undefined)
    throw new Error(`“${line}” is not a day’s lowest and highest temperature.`);
  return { coldest, warmest };
}
const demoEnds = curingPlan({
  history: dailyHistory({ days: DEMO_DAYS.split('\n').map(dayOf), start: CAST_AT }),
  gain: 'slow',
  law: VARIABLE,
  coefficient: GROWTH_COEFFICIENT['32.5N'],
});
function demoDays(rule: PlanEntry['rule']): number {
  const ends = demoEnds.find((entry) => entry.rule === rule)?.ends;
  if (ends === undefined) throw new Error(`The demo’s plan has no end by ${rule}.`);
  return Number((ends / DAY).toFixed(1));
}
/** Days from casting on, in the demo's fortnight. */
export const demoNeeds = {
  german: demoDays('din-1045-3'),
  uk: demoDays('nhbc-plain'),
  american: demoDays('aci-normal'),
};
