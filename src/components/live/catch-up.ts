import { $behind, $entries, $kept, $units, dropBehind, keep } from '../../bench/store.ts';
import { answer } from '../../islands/engine/answer.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import { speaker } from '../../islands/engine/say.ts';
import { keepResults } from '../../islands/keep-results.ts';
import type { AnyWorksheet } from '../../islands/worksheet.ts';
import { link } from '../link.ts';

const files = import.meta.glob<AnyWorksheet>(
  ['../../worksheets/*/*.tsx', '!../../worksheets/live/*'],
  { import: 'default' },
);
const loads = new Map(
  Object.entries(files).map(([file, load]) => [file.replace(/^.*\/|\.tsx$/g, ''), load]),
);

/**
 * Debounce in ms, without a key press here or in another tab, before results on other pages are
 * recomputed.
 */
const PAUSE = 1000;
/**
 * The maximum runs of one worksheet. Chains of dependent results are shorter, so a cycle stops
 * here.
 */
const MOST = 8;

/** From now on, catches up at each pause after a change. */
export function follow(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let working = false;
  const wait = () => {
    clearTimeout(timer);
    if (Object.keys($behind.get()).length > 0) timer = setTimeout(work, PAUSE);
  };
  const work = async () => {
    if (working) return wait();
    working = true;
    try {
      await catchUp();
    } finally {
      working = false;
    }
  };
  $entries.listen(wait);
  $behind.subscribe(wait);
}

/**
 * Recomputes the kept results of worksheets on other pages that depend on a changed key, so that no
 * page takes a number that is out of date. It fetches only those worksheets, and runs one per task,
 * so that a key press in between is answered. A key press stops it, and so does leaving the page:
 * the changed keys stay recorded until all of it is done, after the next pause or on the next page.
 * Only the marks seen here are removed, so a change that another tab records meanwhile stays.
 */
async function catchUp(): Promise<void> {
  let paused = true;
  const stopListening = $entries.listen(() => {
    paused = false;
  });
  let stopFollowing: (() => void) | undefined;
  try {
    restsOn ??= await table();
    const due = new Set<string>();
    const marks = new Set<string>();
    // Moved to the end, so that it comes after what it depends on.
    const putBehind = ([mark, key]: readonly [string, string]) => {
      marks.add(mark);
      for (const id of keepers())
        if (restsOn?.[id]?.includes(key) ?? true) {
          due.delete(id);
          due.add(id);
        }
    };
    Object.entries($behind.get()).forEach(putBehind);
    // A result that changes, here or in a worksheet on this page, makes those that depend on it due.
    stopFollowing = $behind.listen((now, _before, mark) => {
      if (mark && now[mark]) putBehind([mark, now[mark]]);
    });
    const worked: string[] = [];
    for (const id of due) {
      due.delete(id);
      if (!loads.has(id)) dropKeptBy(id);
      const sheet = await loads.get(id)?.();
      await nextTask();
      if (!paused) return;
      if (!sheet || isAwake(id) || worked.filter((was) => was === id).length === MOST) continue;
      worked.push(id);
      workOut(sheet);
    }
    if (paused) dropBehind(marks);
  } finally {
    stopListening();
    stopFollowing?.();
  }
}

/**
 * The bench keys each worksheet depends on, as the build wrote them. One that is not listed may
 * depend on any.
 */
type RestsOn = Readonly<Record<string, readonly string[]>>;
let restsOn: RestsOn | undefined;
async function table(): Promise<RestsOn> {
  const answered = await fetch(link('rests-on.json'));
  if (!answered.ok) throw new Error(`rests-on.json: ${answered.status}`);
  return answered.json();
}

/** The worksheets that have results on the bench. */
const keepers = () => new Set(Object.values($kept.get()).flatMap(({ by }) => by ?? []));

/**
 * Removes results of a worksheet that does not exist, from a link or a file: nothing would ever
 * correct them.
 */
function dropKeptBy(id: string): void {
  for (const [key, { by }] of Object.entries($kept.get())) if (by === id) keep(key, undefined);
}

/** A worksheet that is awake on this page recomputes itself. */
const isAwake = (id: string) =>
  document.querySelector(`[data-island$="/${id}"][data-awake="yes"]`) !== null;

const nextTask = () => new Promise((resolve) => setTimeout(resolve));

function workOut(sheet: AnyWorksheet): void {
  const say = speaker($units.get());
  const kept = $kept.get();
  const reading = readWorksheet(sheet, $entries.get(), kept, say);
  keepResults(sheet, reading, answer(sheet, reading, say, kept), false);
}
