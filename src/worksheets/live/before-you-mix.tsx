import { $ticks } from '../../bench/ticks.ts';
import { useEntries, useUsed } from '../../islands/hooks.ts';
import { useTicks } from '../../islands/use-ticks.ts';
import { useMinute } from '../shared/time/use-minute.ts';

export interface Checklist {
  readonly sheets: readonly {
    readonly id: string;
    readonly question: string;
    readonly cautions: readonly string[];
  }[];
  readonly cautions: readonly {
    readonly id: string;
    readonly title: string;
    readonly steps: readonly string[];
    readonly first: string;
  }[];
}

/** The cautions of every batch. */
const EVERY_BATCH = [
  'not-load-bearing',
  'glycerol-and-concentrate',
  'pressurised-vessel',
  'compressed-air-jet',
  'cement-dust',
  'caustic-slurry',
  'drill-mixer',
  'alkaline-washout',
  'heavy-lift',
];
const MOST_NAMED = 3;

/**
 * A check list for today: the cautions of every batch, and of the worksheets this reader has used.
 */
export default function BeforeYouMix({ given }: { readonly given?: unknown }) {
  const { sheets, cautions } = given as Checklist;
  const entries = useEntries();
  const touched = useUsed();
  const ticks = useTicks();
  useMinute();
  const today = new Date().toDateString();
  const isTicked = (line: string) => ticks[line] === today;
  // A worksheet with entries of its own, from a link or an opened batch, counts as used too.
  const owners = new Set(
    Object.entries(entries).flatMap(([key, { t, rows }]) =>
      t === undefined && rows === undefined ? [] : [key.split('.')[0]],
    ),
  );
  const used = sheets.filter(({ id }) => touched[id] || owners.has(id));
  const because = (id: string) =>
    used.filter((sheet) => sheet.cautions.includes(id)).map(({ question }) => question);
  const listed = cautions.filter(({ id }) => EVERY_BATCH.includes(id) || because(id).length > 0);
  const lines = listed.flatMap(({ id, steps }) => steps.map((_, i) => `${id}-${i}`));
  const left = lines.filter((line) => !isTicked(line)).length;
  const tick = (line: string, ticked: boolean) =>
    $ticks.setKey(line, ticked ? new Date().toDateString() : (undefined as never));
  return (
    <article class="bench-sheet check-list" aria-label="Before you mix">
      <header>
        <h3>Before you mix</h3>
        <p class={used.length === 0 ? 'on-screen' : undefined}>
          {used.length === 0
            ? 'You have used no worksheet yet: this is what every batch needs. Use some, and what they need is added here.'
            : `What every batch needs, and what ${used.length === 1 ? 'the worksheet' : `the ${used.length} worksheets`} you have used ${used.length === 1 ? 'brings' : 'bring'} with ${used.length === 1 ? 'it' : 'them'}.`}
        </p>
        <p class="on-paper">
          Date <span class="blank" /> Batch <span class="blank" />
        </p>
      </header>
      {/* Or else a browser puts back ticks by itself, yesterday's too. */}
      <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        {listed.map(({ id, title, steps, first }) => (
          <section key={id}>
            <h4>{title}</h4>
            <p class="because">{reason(because(id))}</p>
            <ul>
              {steps.map((step, i) => {
                const line = `${id}-${i}`;
                return (
                  <li key={line}>
                    <label>
                      <input
                        type="checkbox"
                        checked={isTicked(line)}
                        onChange={(event) => tick(line, event.currentTarget.checked)}
                      />
                      <span>{step}</span>
                    </label>
                  </li>
                );
              })}
            </ul>
            <p class="first">
              <strong>If it happens.</strong> {first}
            </p>
          </section>
        ))}
      </form>
      <p role="status" class="on-screen">
        {left === 0 ? 'Everything is ticked.' : `${left} of ${lines.length} still to tick.`} Ticks
        are kept in this browser until midnight.
      </p>
      <button type="button" class="main" onClick={() => window.print()}>
        Print this page
      </button>
    </article>
  );
}

/** Why a caution is on the list: the worksheets that have it, or every batch. */
function reason(questions: readonly string[]): string {
  if (questions.length === 0) return 'Every batch.';
  const named = questions.slice(0, MOST_NAMED).map((question) => `“${question}”`);
  const more = questions.length - named.length;
  return `Because of ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}
