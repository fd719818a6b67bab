import { $behind, $entries, $kept, $units } from '../../bench/store.ts';
import { answer } from '../../islands/engine/answer.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import { speaker } from '../../islands/engine/say.ts';
import { keepResults } from '../../islands/keep-results.ts';
import { type AnyWorksheet, entryKeys, takenKeys } from '../../islands/worksheet.ts';

const files = import.meta.glob<AnyWorksheet>(
  ['../../worksheets/*/*.tsx', '!../../worksheets/live/*', '!../../worksheets/shared/*'],
  { import: 'default' },
);

/** More rounds than results rest on each other in a row: a circle ends. */
const ROUNDS = 8;

/**
 * Works out anew what worksheets on other pages have kept, where something they rest on has changed: so
 * that no page takes over a number that is older than what it comes of.
 */
export async function catchUp(): Promise<void> {
  const sheets = await keepersElsewhere();
  // From here in one go: a page that is left in between would leave some of it behind for good.
  for (let round = 0; round < ROUNDS; round++) {
    const behind = new Set($behind.get());
    if (behind.size === 0) return;
    $behind.set([]);
    for (const sheet of sheets)
      if ([...entryKeys(sheet), ...takenKeys(sheet)].some((key) => behind.has(key))) workOut(sheet);
  }
}

/** The worksheets whose results lie on the bench; what is awake on this page works itself out. */
function keepersElsewhere(): Promise<readonly AnyWorksheet[]> {
  const ids = new Set(Object.values($kept.get()).map(({ by }) => by));
  const away = Object.entries(files).filter(([file]) => {
    const id = file.replace(/^.*\/|\.tsx$/g, '');
    return ids.has(id) && !document.querySelector(`[data-island$="/${id}"][data-awake="yes"]`);
  });
  return Promise.all(away.map(([, load]) => load()));
}

function workOut(sheet: AnyWorksheet): void {
  const say = speaker($units.get());
  const reading = readWorksheet(sheet, $entries.get(), $kept.get(), say);
  keepResults(sheet, reading, answer(sheet, reading, say), false);
}
