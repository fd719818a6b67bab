import { useEffect, useState } from 'preact/hooks';
import { readingValue } from '../../bench/records/csv.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Table } from '../../islands/parts/Table.tsx';
import { DENSITY } from './amounts.ts';
import { dryColumn } from './dry-column.ts';
import { DAYS, KPA, MPA } from './part-fields.ts';
import { driedDensity } from './record-numbers.ts';
import { nameOf, weighedDensity } from './record-words.ts';

/** What a batch says of density and strength, SI. */
export interface StrengthPoint {
  readonly name: string;
  readonly wet: number | undefined;
  readonly dry: number | undefined;
  readonly dried: string | undefined;
  readonly crush: number | undefined;
  readonly crushAge: number | undefined;
  readonly bend: number | undefined;
  readonly bendAge: number | undefined;
}

type Charts = typeof import('./StrengthPointsChart.tsx');

/** The strengths that were measured, beside the densities they belong to: drawn, and as a table. */
export function StrengthPoints({
  records,
  say,
}: {
  readonly records: readonly BatchRecord[];
  readonly say: Say;
}) {
  const [charts, setCharts] = useState<Charts>();
  const points = records.toReversed().flatMap((record): StrengthPoint[] => {
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
    };
    const told = (point.crush || point.bend) && (point.dry || point.wet);
    return told ? [point] : [];
  });
  useEffect(() => {
    if (points.length > 1 && !charts) import('./StrengthPointsChart.tsx').then(setCharts);
  }, [points.length]);
  const age = ({ crushAge, bendAge }: StrengthPoint) => {
    const ages = [...new Set([crushAge, bendAge])].flatMap((x) =>
      x === undefined ? [] : [say(x, 'time', { units: DAYS, significant: 2 })],
    );
    return ages.join(' and ') || '—';
  };
  const dry = dryColumn(
    points.map((point) =>
      point.dry === undefined ? undefined : { density: point.dry, dried: point.dried },
    ),
    say,
  );
  return (
    <>
      {charts && <charts.StrengthPointsChart points={points} say={say} />}
      <Table
        caption="Your points of density and strength"
        columns={['Batch', 'Wet density', dry.head, 'Crushing', 'Bending', 'Age']}
        rows={points.map((point, i) => [
          point.name,
          point.wet ? say(point.wet, 'density', { units: DENSITY }) : '—',
          dry.cells[i]!,
          point.crush ? say(point.crush, 'stress', { units: MPA, significant: 2 }) : '—',
          point.bend ? say(point.bend, 'stress', { units: KPA, significant: 2 }) : '—',
          age(point),
        ])}
      />
    </>
  );
}
