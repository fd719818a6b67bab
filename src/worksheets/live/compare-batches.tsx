import { useEffect, useMemo, useState } from 'preact/hooks';
import { readingValue } from '../../bench/records/reading-value.ts';
import { type BatchRecord, someByName } from '../../bench/records/record.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { Table } from '../../islands/parts/Table.tsx';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import { HOURS, PERCENT } from '../shared/words/amounts.ts';
import { withPm } from '../shared/words/with-pm.ts';
import { doubtedWords } from './compare/doubted-words.ts';
import { dryColumn } from './compare/dry-column.ts';
import type { Said } from './compare/LandingChart.tsx';
import { noCharts } from './compare/no-charts.ts';
import { landedOf } from './compare/record-landed.ts';
import { signedPercent } from './compare/signed-percent.ts';
import { isDoubted } from './records/record-doubts.ts';
import { ageWhenStripped, balanceOf, driedDensity, tellsOfFoam } from './records/record-numbers.ts';
import { landedDensity, nameOf, namesInWords, weighedDensity } from './records/record-words.ts';
import { useRecords } from './records/use-records.ts';
import { useStrengthDoubts } from './records/use-strength-doubts.ts';

type Charts = typeof import('./compare/LandingChart.tsx');
/** The fewest batches for a chart. */
const FEWEST = 2;
/** The most batches in the table, the latest ones. */
const MOST_ROWS = 40;

/** The density of a corrected batch as last weighed, kg/m³. */
const lastOf = (record: BatchRecord) =>
  record.corrections.length > 0 ? weighedDensity(record) : undefined;

const ChartSays = ({ verdict, say }: Said) =>
  verdict ? <Verdict verdict={verdict} say={say} /> : <p class="note">{say}</p>;

/** Saved batches side by side, and how close they landed. */
export default function CompareBatches() {
  const units = useUnits();
  const say = speaker(units);
  const [loaded] = useRecords();
  const [charts, setCharts] = useState<Charts>();
  // Calculating thousands of batches takes seconds, so it is done once.
  const records = useMemo(
    () => (loaded.is === 'there' ? loaded.listed.records.toReversed() : []),
    [loaded],
  );
  const found = useMemo(() => landedOf(records), [records]);
  const { landed, invented, leftOut, otherPlan } = found;
  const { doubtsOf, lost } = useStrengthDoubts(records);
  useEffect(() => {
    if (landed.length >= FEWEST && !charts)
      import('./compare/LandingChart.tsx').then(
        ({ LandingChart, PredictedChart, chartJudgement }) =>
          setCharts({ LandingChart, PredictedChart, chartJudgement }),
        noCharts,
      );
  }, [landed.length]);
  const doubted = useMemo(
    () => records.filter((record) => isDoubted(record, say, doubtsOf(record, say))),
    [records, doubtsOf, units],
  );
  if (loaded.is === 'failed') return <p class="records-failed">{loaded.say}</p>;
  if (records.length === 0)
    return (
      <p class="note">
        Your saved batches stand side by side here. Save one, or load the invented ones on the first
        page of this chapter.
      </p>
    );
  const charted = landed.length >= FEWEST;
  const without =
    charted && leftOut.length > 0 ? ` The chart leaves out ${namesInWords(leftOut)}.` : '';
  const byName = someByName(records);
  const shown = records.slice(-MOST_ROWS);
  const corrected = shown.some(lastOf);
  const dry = dryColumn(shown.map(driedDensity), say);
  const allInvented = records.every(({ invented }) => invented);
  return (
    <div class="records compare">
      {records.some(({ invented }) => invented) && (
        <p class="invented-banner">
          {allInvented
            ? 'All of these batches are invented.'
            : `Some of these batches are invented.${invented || !charted ? '' : ' What the chart says is of yours alone.'}`}
        </p>
      )}
      {lost && <Verdict {...lost} />}
      {doubted.length > 0 && (
        <Verdict verdict="look" say={`${doubtedWords(doubted, shown)}${without}`} />
      )}
      {charts && charted && (
        <>
          <ChartSays {...charts.chartJudgement(found)} />
          <charts.LandingChart landed={landed} byName={byName} />
          <charts.PredictedChart landed={landed} say={say} />
        </>
      )}
      {!charted && (
        <p class="note">
          A chart, and what it says of your plans, needs two batches of your own with a planned
          density and a weighed one, whose readings can all be true
          {otherPlan.length > 0 && ', planned for about the same share of foam that survives'}
          {!invented && landed.length === 1 && ': there is one so far'}.
        </p>
      )}
      <Table
        caption={
          records.length > MOST_ROWS
            ? `The latest ${MOST_ROWS} of ${records.length} batches; all of them are in the table for spreadsheets.`
            : `All batches, the earliest first${byName ? '; those of one day by their names, where no time is known' : ''}`
        }
        columns={[
          'Batch',
          'Off by',
          'Foam survived',
          'Planned',
          'First weighed',
          ...(corrected ? ['Corrected to'] : []),
          'w/c weighed in',
          'Stripped, age at\u00a020\u00a0°C (68\u00a0°F)',
          dry.head,
        ]}
        rows={shown.map((record, i) => {
          const [planned, weighed] = [readingValue(record, 'planned'), landedDensity(record)];
          const [cement, water] = [readingValue(record, 'cement'), readingValue(record, 'water')];
          const balance = balanceOf(record);
          const age = ageWhenStripped(record);
          const density = (x: number | undefined) => (x === undefined ? '—' : say(x, 'density'));
          return [
            `${nameOf(record)}${doubted.includes(record) ? ', look again' : ''}`,
            planned && weighed ? signedPercent(weighed / planned - 1) : '—',
            balance.ok && tellsOfFoam(balance.verdict)
              ? withPm(
                  say,
                  balance.verdict.survival,
                  balance.verdict.u.survival,
                  'ratio',
                  PERCENT,
                ).replaceAll(' ', '\u00a0')
              : '—',
            density(planned),
            density(weighed),
            ...(corrected ? [density(lastOf(record))] : []),
            cement && water !== undefined ? say(water / cement, 'count', { decimals: 2 }) : '—',
            age === undefined ? '—' : say(age, 'time', { units: HOURS, significant: 2 }),
            dry.cells[i]!,
          ];
        })}
      />
    </div>
  );
}
