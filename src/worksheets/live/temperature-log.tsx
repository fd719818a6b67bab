import { useRef, useState } from 'preact/hooks';
import { enter } from '../../bench/store.ts';
import type { TemperatureLog } from '../../core/curing/log.ts';
import { readMoment } from '../../islands/fields/read-moment.ts';
import { useEntries, useUnits } from '../../islands/hooks.ts';
import { castAt } from '../shared/curing-fields.ts';
import type { Brought, Reading } from '../shared/logger-file.ts';
import { momentInWords } from '../shared/moments.ts';

/** Dates lie after this many seconds; bare clocks and counted hours do not. */
const DATED = 1e8;
const LARGEST = 5_000_000;

/** What reads a file is fetched once there is one. */
const reader = () => import('../shared/logger-file.ts');
type Reader = Awaited<ReturnType<typeof reader>>;
/** What the reader says of the file; their units say the rest. */
type How = Omit<Reading, 'otherwise'>;

/** A place to drop or paste a logger's file: says what it read, row by row, and puts it on the bench. */
export default function TemperatureLogDrop() {
  const entries = useEntries();
  const system = useUnits();
  const [text, setText] = useState('');
  const [name, setName] = useState('');
  const [how, setHow] = useState<How>({ dayFirst: true, scale: 'heading' });
  const [found, setFound] = useState<{ readonly log: TemperatureLog; readonly by: Reader }>();
  const [fromCastChosen, setFromCast] = useState<boolean>();
  const [problem, setProblem] = useState('');
  const [over, setOver] = useState(false);
  const latest = useRef(0);

  const read = async (raw: string, called: string, with_: How) => {
    const turn = ++latest.current;
    setText(raw);
    setName(called);
    setProblem('');
    const by = await reader();
    const log =
      raw.trim() === ''
        ? undefined
        : await by.readLoggerText(raw, { ...with_, otherwise: by.scaleOf(system) });
    if (turn === latest.current) setFound(log && { log, by });
  };
  const take = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > LARGEST) {
      setProblem(`‘${file.name}’ is larger than 5\u00a0MB: is it a logger’s file of readings?`);
      return;
    }
    await read(await file.text(), file.name, how);
  };
  const again = (with_: How) => {
    setHow(with_);
    void read(text, name, with_);
  };

  const ownCast = entries['curing.castAt']?.t;
  const cast = readMoment(ownCast ?? castAt.example);
  // The example's casting is no beginning for the reader's own log.
  const fromCast = fromCastChosen ?? ownCast !== undefined;
  const log = found?.log;
  const dated = log?.history !== undefined && log.begins > DATED;
  const brought = found?.by.toBench(found.log, dated && fromCast ? cast : undefined);
  const put = () => {
    if (!brought) return;
    enter('curing.readings', brought.entry);
    enter('curing.source', { t: 'readings' });
    if (dated && !fromCast)
      enter('curing.castAt', { t: new Date(log!.begins * 1000).toISOString().slice(0, 16) });
    setProblem('On the bench. The worksheets below now count from these readings.');
  };

  return (
    <div class={over ? 'drop over' : 'drop'}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the file button and the box below do the same by keyboard */}
      <div
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          void take(event.dataTransfer?.files[0]);
        }}
      >
        <p>
          A logger’s file, dropped here or chosen:{' '}
          <label class="file-button">
            Choose a logger’s file
            <input
              id="log-file"
              type="file"
              accept=".csv,.txt,.tsv,text/*"
              onChange={(event) => void take(event.currentTarget.files?.[0])}
            />
          </label>
        </p>
        <label for="log-text">Or paste its rows, with a time and a temperature in each:</label>
        <textarea
          id="log-text"
          rows={4}
          spellcheck={false}
          autocomplete="off"
          value={text.length > 20_000 ? `${text.slice(0, 20_000)}\n…` : text}
          placeholder={'2026-05-08 14:00;20,1\n2026-05-08 14:15;20,6'}
          onInput={(event) => void read(event.currentTarget.value, '', how)}
        />
      </div>
      <p class="help">
        Any separator, decimal point or comma, °C or °F, dates year first or day first, or the clock
        alone. It stays in this browser.
      </p>
      {found && log && (
        <>
          <p>
            <label>
              Dates such as 3/4/2026:{' '}
              <select
                class="choice"
                value={how.dayFirst ? 'day' : 'month'}
                onChange={(e) => again({ ...how, dayFirst: e.currentTarget.value === 'day' })}
              >
                <option value="day">day first</option>
                <option value="month">month first</option>
              </select>
            </label>
          </p>
          <p>
            <label>
              Temperatures without a unit:{' '}
              <select
                class="choice"
                value={how.scale}
                onChange={(e) => again({ ...how, scale: e.currentTarget.value as How['scale'] })}
              >
                <option value="heading">{`as the heading says, else ${system === 'us' ? '°F' : '°C'}`}</option>
                <option value="celsius">°C</option>
                <option value="fahrenheit">°F</option>
              </select>
            </label>
          </p>
          {dated && (
            <p>
              <label>
                <input
                  type="checkbox"
                  checked={fromCast}
                  onChange={(e) => setFromCast(e.currentTarget.checked)}
                />{' '}
                Count from the casting
                {cast === undefined ? '' : `, ${momentInWords(cast)}`}, and not from the first
                reading
              </label>
            </p>
          )}
          <div role="status">
            <p>
              {name && `${name}: `}
              {summary(log, brought)}
            </p>
            <ul>
              {found.by.rowsInWords(log.problems).map((words) => (
                <li>{words}</li>
              ))}
            </ul>
          </div>
          {brought && (
            <button type="button" onClick={put}>
              Use these readings
            </button>
          )}
        </>
      )}
      {problem && <p role="status">{problem}</p>}
    </div>
  );
}

function summary(log: TemperatureLog, brought: Brought | undefined): string {
  if (!log.history)
    return 'No row could be read as a time and a temperature. A row needs both, such as 2026-05-08 14:00;20,1.';
  const scale = log.scale === 'celsius' ? '°C' : '°F';
  if (!brought)
    return `${log.rows.length} readings in ${scale}, all of them from before the casting: check the date of casting.`;
  const before =
    brought.before > 0
      ? ` ${brought.before} from before the casting ${brought.before === 1 ? 'is' : 'are'} left aside.`
      : '';
  const thinned =
    brought.kept < brought.readings
      ? ` The bench keeps ${brought.kept} of them; no other lies further than ${brought.largestMiss.toFixed(2)}\u00a0°C from the line between these.`
      : '';
  return `${log.rows.length} ${log.rows.length === 1 ? 'reading' : 'readings'} in ${scale}.${before}${thinned}`;
}
