import type { Entry } from '../entries.ts';
import { READING_NAMES, readingOf } from './readings.ts';
import { type BatchRecord, type CureLog, content, said, stable } from './record.ts';

/** What two records differ in, in words a reader knows. `corrections` formats those. */
export function differences(
  a: BatchRecord,
  b: BatchRecord,
  corrections: (record: BatchRecord) => string,
): readonly Difference[] {
  const found: Difference[] = [];
  const compare = (of: string, x: string, y: string) => {
    if (x !== y) found.push({ of, ...fromTheDifference(x, y) });
  };
  compare('Mark', a.invented ? 'invented' : '', b.invented ? 'invented' : '');
  compare('Name', a.name, b.name);
  compare('Date', a.date, b.date);
  compare('Notes', a.notes, b.notes);
  for (const name of READING_NAMES)
    compare(readingOf(name).label, typed(a.readings[name]), typed(b.readings[name]));
  compare('Corrections', corrections(a), corrections(b));
  compare('Temperature log', logWords(a.log), logWords(b.log));
  compare('Photos', photoWords(a), photoWords(b));
  compare('Foam made at', a.foamMade ?? '', b.foamMade ?? '');
  compare('Bench', stable({ ...a.bench, ...a.kept }), stable({ ...b.bench, ...b.kept }));
  // Two photos with one caption, or a correction of a gram more: never show an empty table.
  if (found.length === 0 && content(a) !== content(b))
    found.push({ of: 'A detail that reads the same', here: '', there: '' });
  return found;
}

interface Difference {
  readonly of: string;
  readonly here: string;
  readonly there: string;
}

/**
 * Two texts with a common beginning longer than this are shown from shortly before they differ;
 * otherwise only the common part would be visible.
 */
const ALIKE = 60;
const BEFORE = 30;
function fromTheDifference(
  x: string,
  y: string,
): { readonly here: string; readonly there: string } {
  let at = 0;
  while (at < x.length && x[at] === y[at]) at++;
  const cut = (text: string) => (at > ALIKE ? `…${text.slice(at - BEFORE)}` : text);
  return { here: cut(x), there: cut(y) };
}

const typed = (entry: Entry = {}) => {
  const { t = '', u, p, pu } = said(entry);
  const pm = p ? ` ± ${p}${pu ? ` ${pu}` : ''}` : '';
  return `${t}${u && u !== '1' ? ` ${u}` : ''}${pm}`.trim();
};
const logWords = (log: CureLog | undefined) =>
  log ? `${log.seconds.length} readings, ${hash(stable([log.seconds, log.kelvin]))}` : '';
const photoWords = (record: BatchRecord) =>
  record.photos.map(({ id, caption }) => caption || id).join('; ');

/** A short hash, to tell two long texts apart. */
function hash(text: string): string {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return (h >>> 0).toString(16).padStart(8, '0');
}
