import { useEffect, useState } from 'preact/hooks';
import { readingValue } from '../../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';
import { Table } from '../../../islands/parts/Table.tsx';
import { DAYS, KPA, MPA } from '../../shared/words/amounts.ts';
import { driedDensity } from '../records/record-numbers.ts';
import { strengthsOffBand } from '../records/record-strengths.ts';
import { nameOf, weighedDensity } from '../records/record-words.ts';
import { dryColumn } from './dry-column.ts';
import { noCharts } from './no-charts.ts';

/** The dry density and strengths of a batch, SI. */
export interface StrengthPoint {
  readonly name: string;
  readonly wet: number | undefined;
  readonly dry: number | undefined;
  readonly dried: string | undefined;
  readonly crush: number | undefined;
  readonly crushAge: number | undefined;
  readonly bend: number | undefined;
  readonly bendAge: number | undefined;
  /** Those that are probably a slip. */
  readonly doubted: readonly ('crush' | 'bend')[];
}

type Charts = typeof import('./StrengthPointsChart.tsx');

/** The densities and strengths of batches, in their order; batches without any are left out. */
export const strengthPoints = (records: readonly BatchRecord[]): readonly StrengthPoint[] =>
  records.flatMap((record): StrengthPoint[] => {
    const at = (name: 'crush' | 'crushAge' | 'bend' | 'bendAge') => readingValue(record, name);
    const dry = driedDensity(record);
    const point = {
      name: nameOf(record),
      wet: weighedDensity(record),
      dry: dry?.density,
      dried: dry?.dried,
      crush: at('crush'),
      crushAge: at('crushAge'),
      bend: at('bend'),
      bendAge: at('bendAge'),
      doubted: strengthsOffBand(record).map(({ reading }) => reading),
    };
    const told = (point.crush || point.bend) && (point.dry || point.wet);
    return told ? [point] : [];
  });

/** The measured strengths with their densities, as a chart and a table. */
export function StrengthPoints({
  records,
  invented,
  say,
}: {
  /** The batches that teach, in their order. */
  readonly records: readonly BatchRecord[];
  readonly invented: boolean;
  readonly say: Say;
}) {
  const [charts, setCharts] = useState<Charts>();
  const points = strengthPoints(records);
  useEffect(() => {
    if (points.length > 1 && !charts) import('./StrengthPointsChart.tsx').then(setCharts, noCharts);
  }, [points.length]);
  const age = ({ crushAge, bendAge }: StrengthPoint) => {
    const ages = [...new Set([crushAge, bendAge])].flatMap((x) =>
      x === undefined ? [] : [say(x, 'time', { units: DAYS, significant: 2 })],
    );
    return ages.join(' and ') || '—';
  };
  const strength = (point: StrengthPoint, of: 'crush' | 'bend', units: Units) =>
    point[of]
      ? `${say(point[of], 'stress', { units, significant: 2 })}${point.doubted.includes(of) ? ', look again' : ''}`
      : '—';
  const dry = dryColumn(
    points.map((point) =>
      point.dry === undefined ? undefined : { density: point.dry, dried: point.dried },
    ),
    say,
  );
  return (
    <>
      {charts && <charts.StrengthPointsChart points={points} invented={invented} say={say} />}
      <Table
        caption={`${invented ? 'Invented' : 'Your'} points of density and strength`}
        columns={['Batch', 'Wet density', dry.head, 'Crushing', 'Bending', 'Age']}
        rows={points.map((point, i) => [
          point.name,
          point.wet ? say(point.wet, 'density') : '—',
          dry.cells[i]!,
          strength(point, 'crush', MPA),
          strength(point, 'bend', KPA),
          age(point),
        ])}
      />
      {points.some(({ doubted }) => doubted.length > 0) && (
        <p class="note">What is marked “look again” counts nowhere here; its record says why.</p>
      )}
    </>
  );
}
