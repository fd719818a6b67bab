import { differences } from '../../../bench/records/differences.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { speaker } from '../../../islands/engine/say.ts';
import { useUnits } from '../../../islands/hooks.ts';
import { Table } from '../../../islands/parts/Table.tsx';
import { correctionWords } from './record-words.ts';

/** The most characters of a text shown; a longer one ends with a mark. */
const MOST = 120;
const short = (text: string) => (text.length > MOST ? `${text.slice(0, MOST)}…` : text || '—');

/** Two versions of one batch, side by side. */
export function Differences({
  here,
  there,
  where,
}: {
  readonly here: BatchRecord;
  readonly there: BatchRecord;
  readonly where: string;
}) {
  const say = speaker(useUnits());
  return (
    <Table
      caption="Where the two differ"
      columns={['', 'Here', where]}
      rows={differences(here, there, (record) => correctionWords(record, say)).map((row) => [
        row.of,
        short(row.here),
        short(row.there),
      ])}
    />
  );
}
