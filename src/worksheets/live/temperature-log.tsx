import { useRef, useState } from 'preact/hooks';
import { enter } from '../../bench/store.ts';
import type { TemperatureLog } from '../../core/curing/log.ts';
import { type Say, speaker } from '../../islands/engine/say.ts';
import { readMoment } from '../../islands/fields/read-moment.ts';
import { useEntries, useUnits } from '../../islands/hooks.ts';
import { Said } from '../../islands/parts/Said.tsx';
import { castAt } from '../shared/curing-fields.ts';
import { LogText, SCALES } from '../shared/LogText.tsx';
import type { Answers, Brought } from '../shared/logger-file.ts';
import { momentInWords } from '../shared/moments.ts';

/** What reads a file is fetched once there is one. */
const reader = () => import('../shared/logger-file.ts');
type Reader = Awaited<ReturnType<typeof reader>>;

/** A place to drop or paste a logger's file: says what it read, row by row, and puts it on the bench. */
export default function TemperatureLogDrop() {
  const entries = useEntries();
  const system = useUnits();
  const [text, setText] = useState('');
  const [name, setName] = useState('');
  const [how, setHow] = useState<Answers>({});
  const [found, setFound] = useState<{ readonly log: TemperatureLog; readonly by: Reader }>();
  const [fromCastChosen, setFromCast] = useState<boolean>();
  const [problem, setProblem] = useState('');
  const [over, setOver] = useState(false);
  const latest = useRef(0);

  const read = async (raw: string, called: string, with_: Answers) => {
    const turn = ++latest.current;
    setText(raw);
    setName(called);
    setProblem('');
    if (raw.trim() === '') setHow({});
    const by = await reader();
    const log =
      raw.trim() === ''
        ? undefined
        : await by.readLoggerText(raw, {
            ...with_,
            otherwise: by.readersScale(system),
            cast: entries['curing.castAt']?.t,
          });
    if (turn === latest.current) setFound(log && { log, by });
  };
  const take = async (file: File | undefined) => {
    if (!file) return;
    const by = await reader();
    const large = by.tooLarge(file);
    if (large) return setProblem(large);
    // What was said of another file is not said of this one.
    setHow({});
    await read(await by.textOf(file), file.name, {});
  };
  const again = (with_: Answers) => {
    setHow(with_);
    void read(text, name, with_);
  };

  const ownCast = entries['curing.castAt']?.t;
  const cast = readMoment(ownCast ?? castAt.example);
  // The example's casting is no beginning for the reader's own log.
  const fromCast = fromCastChosen ?? ownCast !== undefined;
  const log = found?.log;
  const dated = log?.history !== undefined && log.survey.style === 'date';
  const brought = found?.by.toBench(found.log, dated && fromCast ? cast : undefined, system);
  const told = log
    ? `${name && `${name}: `}${summary(log, brought, found!.by, speaker(system))}`
    : '';
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
        <LogText
          id="log-text"
          text={text}
          placeholder={'2026-05-08 14:00;20,1\n2026-05-08 14:15;20,6'}
          onText={(text) => void read(text, '', how)}
        />
      </div>
      <p class="help">
        Any separator, decimal point or comma, °C or °F, dates, the clock alone, or time counted
        from the start. What the rows do not say is asked. It stays in this browser.
      </p>
      {found && log && (
        <>
          <found.by.LogQuestions log={log} answers={how} reader={SCALES[system]} onAnswer={again} />
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
          <p>{told}</p>
          <found.by.LogRows log={log} />
          {brought && (
            <button type="button" onClick={put}>
              Use these readings
            </button>
          )}
        </>
      )}
      {problem && <p>{problem}</p>}
      <Said
        text={problem || [told, ...(log ? found!.by.rowsInWords(log.problems) : [])].join(' ')}
      />
    </div>
  );
}

function summary(log: TemperatureLog, brought: Brought | undefined, by: Reader, say: Say): string {
  if (log.waits) return by.WAITS;
  if (!log.history)
    return 'No row could be read as a time and a temperature. A row needs both, such as 2026-05-08 14:00;20,1.';
  const readings = by.readingsInWords(log, say);
  if (!brought)
    return `${readings} All of them are from before the casting: check the date of casting.`;
  const before =
    brought.before > 0
      ? ` ${brought.before} from before the casting ${brought.before === 1 ? 'is' : 'are'} left aside.`
      : '';
  const thinned =
    brought.kept < brought.readings
      ? ` The bench keeps ${brought.kept} of them; no other lies further than ${say(brought.largestMiss, 'temperatureDifference', { decimals: 2 })} from the line between these.`
      : '';
  return `${readings}${before}${thinned}`;
}
