import { $behind, $entries, $kept, $units, keep } from '../../bench/store.ts';
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
    if ($behind.get().length > 0) timer = setTimeout(work, PAUSE);
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
 * Works out anew what worksheets on other pages have kept, where something they rest on has changed: so
 * that no page takes over a number that is older than what it comes of. It fetches those alone, and works one
 * a task, so that a key in between is answered. At a key, or when the page is left, it stops where it is:
 * what is behind stays noted until all of it is done, here after the next pause or on the next page.
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
    // Last in the row, behind what it rests on.
    const putBehind = (key: string) => {
      for (const id of keepers())
        if (restsOn?.[id]?.includes(key) ?? true) {
          due.delete(id);
          due.add(id);
        }
    };
    $behind.get().forEach(putBehind);
    // What is kept anew, here or by a worksheet awake on this page, puts behind what rests on it in turn.
    stopFollowing = $kept.listen((_now, _before, key) => key && putBehind(key));
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
    if (paused) $behind.set([]);
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
