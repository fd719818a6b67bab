import { $learned, type LearnedSummary } from '../../../bench/learned.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { type BatchRecord, inOrder } from '../../../bench/records/record.ts';
import { $unlearned } from '../../../bench/store.ts';
import { drainedPerMinute } from '../../../core/records/foam-drift.ts';
import { learn } from '../../../core/records/learn.ts';
import { type Lesson, PRIORS, withinPossible } from '../../../core/records/priors.ts';
import { LEAST_SURVIVAL } from '../../shared/foam/foam-share.ts';
import { isFoam } from '../../shared/foam/is-foam.ts';
import {
  balanceOf,
  cleanAge,
  contradicts,
  curedHot,
  driedDensity,
  plannedAlike,
  sunkShare,
  weighedTwice,
} from './record-numbers.ts';
import { ABOUT_28_DAYS, publishedFor, strengthsOffBand } from './record-strengths.ts';
import { landedDensity } from './record-words.ts';

/** The value one batch gives for each lesson, SI; lessons without a value are left out. */
export function observe(record: BatchRecord): Partial<Record<Lesson, number>> {
  const found: Partial<Record<Lesson, number>> = {};
  const put = (lesson: Lesson, x: number | undefined) => {
    if (x !== undefined && Number.isFinite(x)) found[lesson] = x;
  };
  const at = (name: Parameters<typeof readingValue>[1]) => readingValue(record, name);
  const balance = balanceOf(record);
  // If readings contradict each other, one is wrong, and it may be the bucket's.
  const sound = !contradicts(balance);
  if (balance.ok) {
    const { finding, survival } = balance.verdict;
    const dumb = finding === 'no-such-base-mix' || finding === 'cannot-tell';
    const tells = survival >= LEAST_SURVIVAL && isFoam(at('foamDensity')!);
    if (!dumb && sound && tells) put('survival', survival);
  }
  const foam = weighedTwice(record);
  if (foam?.tells && !foam.undrained) put('drift', foam.drift);
  const sunk = sunkShare(record);
  if (!sunk?.collapsed) put('settling', sunk?.share);
  const clean = cleanAge(record);
  if (clean && !clean.young && curedHot(record) === undefined) put('stripAge', clean.age);
  const [landed, planned] = [landedDensity(record), at('planned')];
  if (sound && landed && planned) put('landing', landed / planned - 1);
  if (sound) put('strength', strengthRatio(record));
  return found;
}

/**
 * Crushing strength divided by the geometric mean of the published band for its density; undefined
 * for a probable slip.
 */
function strengthRatio(record: BatchRecord): number | undefined {
  const [crush, age] = [readingValue(record, 'crush'), readingValue(record, 'crushAge')];
  // Air-dry is heavier than the band's oven-dry density by an unknown amount.
  if (!crush || !age || driedDensity(record)?.dried !== 'oven') return undefined;
  if (age < ABOUT_28_DAYS.from || age > ABOUT_28_DAYS.to) return undefined;
  const band = publishedFor(record);
  if (!band || strengthsOffBand(record).some(({ reading }) => reading === 'crush'))
    return undefined;
  return crush / Math.sqrt(band.low * band.high);
}

export interface LessonLearned {
  readonly lesson: Lesson;
  readonly learned: ReturnType<typeof withinPossible>;
  /** The batches it was learned from, oldest first, with the value of each. */
  readonly from: readonly { readonly record: BatchRecord; readonly value: number }[];
}

/**
 * The lessons of all batches together, and whether these are the invented ones, which count only
 * while there are no others.
 */
export function learnFrom(records: readonly BatchRecord[]): {
  readonly invented: boolean;
  readonly used: readonly BatchRecord[];
  readonly lessons: readonly LessonLearned[];
} {
  const own = records.filter(({ invented }) => !invented);
  const invented = own.length === 0 && records.length > 0;
  const used = (invented ? records : own).toSorted(inOrder);
  const seen = used.map((record) => ({ record, said: observe(record) }));
  const lessons = (Object.keys(PRIORS) as Lesson[]).map((lesson): LessonLearned => {
    const all = seen.flatMap(({ record, said }) =>
      said[lesson] === undefined ? [] : [{ record, value: said[lesson] }],
    );
    const from = lesson === 'landing' ? plannedAlike(all) : all;
    const positive = 'log' in PRIORS[lesson];
    const usable = from.filter(({ value }) => !positive || value > 0);
    const found = learn({ values: usable.map(({ value }) => value), prior: PRIORS[lesson] });
    return { lesson, learned: withinPossible(lesson, found), from: usable };
  });
  return { invented, used, lessons };
}

type Said = LearnedSummary['values'][string];

/**
 * The names that fields and notes use, the lesson behind each, and its conversion, if it is not the
 * lesson's own value.
 */
const OFFERS: Readonly<
  Record<string, { readonly lesson: Lesson; readonly as?: (said: Said) => Said | undefined }>
> = {
  'foam.survival': { lesson: 'survival' },
  'foam.gasLost': { lesson: 'survival', as: ({ v, pm, n }) => ({ v: 1 - v, pm, n }) },
  'foam.drained': { lesson: 'drift', as: drained },
  'form.settling': { lesson: 'settling' },
  'strip.age': { lesson: 'stripAge' },
  'strength.ratio': { lesson: 'strength' },
  'batch.landing': { lesson: 'landing' },
};

/**
 * The share drained per minute, with the relative ± of the drift; undefined for a foam that grew
 * heavier.
 */
function drained({ v, pm, n }: Said): Said | undefined {
  if (v >= 0) return undefined;
  const share = drainedPerMinute({ drift: v });
  return { v: share, pm: (pm * share) / -v, n };
}

/** The summary that other pages offer from. */
export function summaryOf(found: ReturnType<typeof learnFrom>): LearnedSummary {
  const values = Object.fromEntries(
    Object.entries(OFFERS).flatMap(([name, { lesson, as = (said: Said) => said }]) => {
      const { learned } = found.lessons.find((one) => one.lesson === lesson)!;
      const { estimate: v, plusMinus: pm, count: n, next } = learned;
      const said = n > 0 ? as({ v, pm, n, ...next }) : undefined;
      return said ? [[name, said]] : [];
    }),
  );
  return { invented: found.invented, values };
}

/**
 * Stores the summary for the other pages. It writes to the store, so it must not be called while
 * rendering.
 */
export function storeLearned(found: ReturnType<typeof learnFrom>): void {
  const next = summaryOf(found);
  if (JSON.stringify($learned.get()) !== JSON.stringify(next)) $learned.set(next);
  $unlearned.set(undefined);
}
