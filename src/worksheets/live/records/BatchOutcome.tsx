import { pageAt } from '../../../bench/page-at.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { READINGS, type ReadingName } from '../../../bench/records/readings.ts';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import type { Kind } from '../../../core/quantity/kinds.ts';
import { refused } from '../../../islands/engine/problems.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';
import { Results } from '../../../islands/parts/Results.tsx';
import { Verdict } from '../../../islands/parts/Verdict.tsx';
import type { Judgement } from '../../../islands/worksheet.ts';
import { reconcileJudgement } from '../../records/reconcile-words.ts';
import { freeInSand, furtherIn } from '../../shared/mix/further.ts';
import { HOURS, PERCENT, SMALL_MASS } from '../../shared/words/amounts.ts';
import { cementDensityOf } from './cement-density.ts';
import { reconcileWith } from './reconcile-with.ts';
import { readingDoubts, recordBaseDoubt, recordPlanDoubt } from './record-doubts.ts';
import { RECORD_FIELDS } from './record-fields.ts';
import {
  ageWhenStripped,
  balanceOf,
  coldestFrost,
  contradicts,
  driedDensity,
  loggedOf,
  type RecordBalance,
  tellsOfFoam,
} from './record-numbers.ts';
import { goOnWith, onwardWords } from './record-onward.ts';
import { dryWords, OF_CORRECTION, weighedDensity } from './record-words.ts';
import { useStrengthDoubts } from './use-strength-doubts.ts';

/** A result of a batch: its name, its kind, its value in SI, and its format. */
type Figure = readonly [
  label: string,
  kind: Kind,
  value: number,
  how: { readonly units?: Units; readonly significant?: number; readonly pm?: number | undefined },
];

/** The results in the form that a worksheet's results have. */
const asResults = (figures: readonly Figure[]) => ({
  sheet: {
    results: Object.fromEntries(
      figures.map(([label, kind, , { pm: _, ...how }]) => [label, { label, kind, ...how }]),
    ),
  },
  answered: {
    numbers: Object.fromEntries(
      figures.map(([label, , value, { pm }]) => [
        label,
        { value, ...(pm && Number.isFinite(pm) && { sure: { pm, mostFrom: undefined } }) },
      ]),
    ),
  },
});

/** The results of a batch's readings so far: mass balance, age and dry density. */
export function BatchOutcome({ record, say }: { readonly record: BatchRecord; readonly say: Say }) {
  const balance = balanceOf(record);
  const { doubtsOf, lost } = useStrengthDoubts([record]);
  const strengths = lost ? [lost] : doubtsOf(record, say);
  const age = ageWhenStripped(record);
  const logged = loggedOf(record);
  const hours = (s: number) => say(s, 'time', { units: HOURS, significant: 2 });
  const dry = driedDensity(record);
  const cementDensity = cementDensityOf(record);
  const counted = balance.ok && furtherIn(readingValue(record, 'cement')!, record.kept);
  const empty = balance.ok ? [] : balance.missing.filter((name) => !filled(record.readings[name]));
  const figures: Figure[] = [];
  if (balance.ok) {
    const { verdict } = balance;
    const { u } = verdict;
    figures.push(['Wet density', 'density', verdict.wetDensity, { pm: u.wetDensity }]);
    if (tellsOfFoam(verdict))
      figures.push(
        ['Foam that survived', 'ratio', verdict.survival, { units: PERCENT, pm: u.survival }],
        ['Gas in the mix', 'ratio', verdict.air, { units: PERCENT, pm: u.air }],
      );
    figures.push([
      'w/c with the foam’s water',
      'ratio',
      verdict.waterCement,
      { pm: u.waterCement },
    ]);
    // With an impossible density the results that depend on it are left out.
    const told = verdict.finding !== 'heavier-than-airless';
    if (told && verdict.yield !== undefined)
      figures.push(['Yield', 'volume', verdict.yield, { pm: u.yield }]);
    if (told && verdict.missing !== undefined)
      figures.push(['Went in, not found', 'mass', verdict.missing, { pm: verdict.uMissing }]);
  }
  if (age !== undefined)
    figures.push([
      'Age when stripped, at 20\u00a0°C (68\u00a0°F)',
      'time',
      age,
      { units: HOURS, significant: 2 },
    ]);
  if (dry)
    figures.push([
      dry.dried === undefined
        ? `Density, ${dryWords(dry.dried)}`
        : dry.dried === 'oven'
          ? 'Oven-dry density'
          : 'Air-dry density',
      'density',
      dry.density,
      { pm: dry.u },
    ]);
  return (
    <div class="outcome" data-outcome>
      <Results {...asResults(figures)} system={say.system}>
        {judgementsOf(record, balance, say, strengths).map((judgement) => (
          <Verdict {...judgement} />
        ))}
      </Results>
      {logged?.part && coldestFrost(record) === undefined && (
        <p class="note" data-part-logged>
          {logged.from < logged.to
            ? `Of the ${hours(logged.age)} to stripping the temperature log covers ${hours(logged.to - logged.from)}: `
            : 'The temperature log covers nothing of the time to stripping: '}
          {age === undefined
            ? 'without a mean temperature for the rest no age is worked out.'
            : 'for the rest the mean temperature counts.'}
        </p>
      )}
      {!balance.ok &&
        balance.refused.map((quantity) => (
          <p class="problem">
            {balance.why
              ? refused(
                  { ...balance.why, quantity: labelOf(quantity) },
                  RECORD_FIELDS[quantity as ReadingName],
                  say,
                )
              : `“${labelOf(quantity)}” cannot be: look at it again.`}
          </p>
        ))}
      {!balance.ok && balance.more && (
        <p class="note">
          By its plan it holds more than the cement, water, sand and foam written down here: so what
          went in is not compared with what came out, and how much of its foam survived is not
          known.
        </p>
      )}
      {counted && (
        <p class="note">
          By its plan it holds {say(counted.further, 'mass', { units: SMALL_MASS })} of fibre or
          pigment, or both: that counts as put in.
        </p>
      )}
      {balance.ok && balance.verdict.yield === undefined && (
        <p class="note">
          The density of some of the mix that was taken out is not known, so the yield is not
          either.
        </p>
      )}
      {empty.length > 0 && (
        <p class="note">
          To compare what went in with what came out, write down:{' '}
          {empty.map((name) => READINGS[name].label.toLowerCase()).join(', ')}.
        </p>
      )}
      {balance.ok && (
        <p class="note">
          One batch’s figures
          {cementDensity &&
            `, for cement of ${say(cementDensity, 'density')} as on the bench it was saved from`}
          . <a href={pageAt('batch-records/learn/')}>What your batches teach</a> combines them with
          the rest and with what is assumed; that average is the one to plan with.
        </p>
      )}
      {weighedDensity(record) !== undefined && !contradicts(balance) && !record.invented && (
        <p>
          <button type="button" data-onward onClick={() => goOnWith(record, say)}>
            Use its {onwardWords(record, say)} for curing, stripping and lifting
          </button>
        </p>
      )}
      {/* The worksheet knows of no mix that was taken out before it was corrected, of no damp sand, fibre or pigment. */}
      {balance.ok &&
        !record.invented &&
        !freeInSand(record.kept) &&
        !counted &&
        !record.corrections.some(({ out }) => out) && (
          <p>
            <button type="button" onClick={() => reconcileWith(record)}>
              Put its weighings into “Did it come out as it went in?”
            </button>
          </p>
        )}
    </div>
  );
}

/**
 * The verdicts on a batch. It is not good beside a doubt, and an impossible base mix is told once.
 */
export function judgementsOf(
  record: BatchRecord,
  balance: RecordBalance,
  say: Say,
  /** The doubts about its strengths. */
  strengths: readonly Judgement[] = [],
): readonly Judgement[] {
  const base = recordBaseDoubt(record, say);
  // If readings contradict each other, the density may be wrong.
  const ofPlan = contradicts(balance) ? undefined : recordPlanDoubt(record, say);
  const doubts = [...readingDoubts(record, balance, say, strengths), ...(ofPlan ? [ofPlan] : [])];
  if (!balance.ok || (base && balance.verdict.finding === 'no-such-base-mix')) return doubts;
  const judgement = reconcileJudgement(balance.verdict, readingValue(record, 'sand'), say);
  return judgement.verdict === 'good' && doubts.length > 0 ? doubts : [...doubts, judgement];
}

const labelOf = (quantity: string) =>
  quantity in READINGS
    ? READINGS[quantity as ReadingName].label
    : (OF_CORRECTION[quantity] ?? quantity);
