import { useEffect, useMemo } from 'preact/hooks';
import { pageAt } from '../../bench/page-at.ts';
import { type BatchRecord, filled } from '../../bench/records/record.ts';
import { DAY, HOUR } from '../../core/quantity/constants.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { type Lesson, PRIORS } from '../../core/records/priors.ts';
import { type Say, speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { Table } from '../../islands/parts/Table.tsx';
import { NEAR_ENOUGH } from '../shared/mix/near-enough.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { StrengthPoints } from './compare/StrengthPoints.tsx';
import { signedTenths } from './compare/signed-percent.ts';
import { lastingChange } from './records/lasting-change.ts';
import { type LessonLearned, learnFrom, storeLearned } from './records/lessons.ts';
import { oddsOf, timesIn100 } from './records/record-odds.ts';
import { ABOUT_28_DAYS } from './records/record-strengths.ts';
import { nameOf } from './records/record-words.ts';
import { useRecords } from './records/use-records.ts';

/** How each lesson is worded: its name, and the format of its numbers. */
const SAID: Readonly<Record<Lesson, { name: string; of: (x: number) => string; unit: string }>> = {
  survival: {
    name: 'Foam that survives',
    of: (x) => formatNumber(x * 100, { decimals: 0 }),
    unit: '%',
  },
  drift: { name: 'Foam density, change in 10\u00a0min', of: signedTenths, unit: '%' },
  settling: { name: 'Settling', of: (x) => formatNumber(x * 100, { decimals: 1 }), unit: '%' },
  stripAge: {
    name: 'Came out clean at, age at 20\u00a0°C (68\u00a0°F)',
    of: (x) => formatNumber(x / HOUR, { decimals: 0 }),
    unit: 'h',
  },
  strength: {
    name: 'Strength over the published middle',
    of: (x) => formatNumber(x, { significant: 2 }),
    unit: 'times',
  },
  landing: {
    name: 'Wet density, first weighed, over planned',
    of: signedTenths,
    unit: '%',
  },
};
/** Why an interval ends at a limit of the possible. */
function endWords(
  lesson: Lesson,
  ends: { readonly low: boolean; readonly high: boolean },
): string | undefined {
  if (lesson === 'survival' && ends.high)
    return 'Foam that survives: the interval ends at 100\u00a0%, because no more gas can survive than the foam brought.';
  if (lesson === 'settling' && ends.low)
    return 'Settling: the interval begins at 0\u00a0%, because the top cannot sink by less than nothing.';
  return undefined;
}
/** Why batches that were tested say nothing of strength yet. */
function noneWords(lesson: Lesson, used: readonly BatchRecord[]): string | undefined {
  const tested = ({ readings }: BatchRecord) => filled(readings.crush) || filled(readings.bend);
  if (lesson !== 'strength' || !used.some(tested)) return undefined;
  const [from, to] = [ABOUT_28_DAYS.from / DAY, ABOUT_28_DAYS.to / DAY];
  return `Strength: what is published is of 28 days, crushed, and by oven-dry density. So only what was crushed at ${from} to ${to} days counts here, with a piece dried in an oven and a weighed density; the others stand in the table below.`;
}
/** A figure, its ± and its unit stay on one line. */
const together = (text: string) => text.replaceAll(' ', '\u00a0');

/**
 * What the reader's batches teach, beside the assumed values, and how it improves the odds of
 * landing.
 */
export default function LearnedFromBatches() {
  const say = speaker(useUnits());
  const [loaded] = useRecords();
  const records = loaded.is === 'there' ? loaded.listed.records : [];
  const found = useMemo(() => learnFrom(records), [loaded]);
  useEffect(() => {
    if (loaded.is === 'there') storeLearned(found);
  }, [found]);
  if (loaded.is === 'failed') return <p class="records-failed">{loaded.say}</p>;
  if (records.length === 0)
    return (
      <p class="note">
        What your batches teach appears here. Save one, or load the invented ones on the first page
        of this chapter.
      </p>
    );
  const { lessons, invented, used } = found;
  return (
    <div class="records learned">
      {invented && (
        <p class="invented-banner">
          From the invented batches only. The first batch of your own takes their place.
        </p>
      )}
      <Table
        caption="Yours beside the assumed value; the ± is what the next batch may differ by"
        columns={['', 'Assumed', 'Yours', 'Next batch, 95\u00a0%', 'Batches']}
        rows={lessons.map(({ lesson, learned }) => {
          const { name, of, unit } = SAID[lesson];
          const prior = PRIORS[lesson];
          const none = learned.count === 0;
          return [
            `${name},\u00a0${unit}`,
            ...[
              of(prior.mean),
              none
                ? '—'
                : `${of(learned.estimate)}\u00a0±\u00a0${of(learned.plusMinus).replace('+', '')}`,
              none ? '—' : `${of(learned.next.low)} to ${of(learned.next.high)}`,
              none ? 'none yet' : `${learned.count}${learned.count < 4 ? ', few' : ''}`,
            ].map(together),
          ];
        })}
      />
      {lessons.map(({ lesson, learned }) => {
        const why = learned.count > 0 ? endWords(lesson, learned.ends) : noneWords(lesson, used);
        return why && <p class="note">{why}</p>;
      })}
      {lessons.map(({ lesson, learned, from }) =>
        learned.moved.length === 0 ? null : (
          <p class="note">
            {SAID[lesson].name}:{' '}
            {learned.moved.map((i) => `“${nameOf(from[i]!.record)}”`).join(', ')} stood apart from
            the rest and {learned.moved.length === 1 ? 'counts' : 'each count'} no more than a poor
            one.
          </p>
        ),
      )}
      <Changed lessons={lessons} />
      <Odds lessons={lessons} records={records} say={say} />
      <StrengthPoints records={used} invented={invented} say={say} />
    </div>
  );
}

/** A message that the foam has changed lastingly, which the average does not show. */
function Changed({ lessons }: { readonly lessons: readonly LessonLearned[] }) {
  const survival = lessons.find(({ lesson }) => lesson === 'survival')!;
  const changed = lastingChange(survival);
  if (!changed) return null;
  return (
    <p class="note">
      The last {changed.count}, from “{nameOf(changed.first)}” on, all stood apart on one side. If
      the foam became another there, plan the next batch with theirs, typed in yourself:{' '}
      {SAID.survival.of(changed.mean)}&nbsp;%. Your {SAID.survival.of(survival.learned.estimate)}
      &nbsp;% is still mostly of those before.
    </p>
  );
}

/** How the learned survival improves the odds of landing. */
function Odds({
  lessons,
  records,
  say,
}: {
  readonly lessons: readonly LessonLearned[];
  readonly records: readonly BatchRecord[];
  readonly say: Say;
}) {
  const { learned, from } = lessons.find(({ lesson }) => lesson === 'survival')!;
  const last = from.at(-1)?.record ?? records[0]!;
  const odds = oddsOf(last, learned);
  if (!odds) return null;
  return (
    <p class="learned-odds">
      A batch like “{nameOf(last)}”, at {say(odds.target, 'density')}, lands within{' '}
      {100 * NEAR_ENOUGH}&nbsp;% of it <strong>{timesIn100(odds.before)}</strong> when its foam is
      planned as if all of it survived, and <strong>{timesIn100(odds.after)}</strong> when it is
      planned with your {say(learned.estimate, 'ratio', { units: PERCENT, decimals: 0 })}. Errors of
      weighing are within both: your share was found by such weighings. Planned so, leave the target
      as it is: a mean error of landing, on{' '}
      <a href={pageAt('batch-records/compare/')}>Batches side by side</a>, is mostly this same foam,
      and one cure is enough.
    </p>
  );
}
