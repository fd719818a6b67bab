import { useRef, useState } from 'preact/hooks';
import { arrived } from '../../bench/arrived.ts';
import { enter } from '../../bench/store.ts';
import type { TemperatureLog } from '../../core/curing/log.ts';
import { DAY } from '../../core/quantity/constants.ts';
import { type Say, speaker } from '../../islands/engine/say.ts';
import { readMoment } from '../../islands/fields/read-moment.ts';
import { useEntries, useUnits } from '../../islands/hooks.ts';
import { Said } from '../../islands/parts/Said.tsx';
import { castAt } from '../curing/curing-fields.ts';
import { FileButton } from '../shared/log/FileButton.tsx';
import { LOG_FILES, LogText, SCALES } from '../shared/log/LogText.tsx';
import type { Answers, Brought } from '../shared/log/logger-file.ts';
import { momentInWords } from '../shared/time/moments.ts';

/** The code that reads a file is loaded once there is one. */
const reader = () => arrived(import('../shared/log/logger-file.ts'));
type Reader = Awaited<ReturnType<typeof reader>>;

/**
 * A place to drop or paste a logger's file: reports what was read, row by row, and puts it on the
 * bench.
 */
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
    const large = by.tooLarge({ name: called, size: raw.length });
    if (large) {
      setFound(undefined);
      return setProblem(large);
    }
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
    const text = await by.textOf(file);
    if (text === undefined) return setProblem(by.unreadable(file));
    // Answers about another file do not apply to this one.
    setHow({});
    await read(text, file.name, {});
  };
  const again = (with_: Answers) => {
    setHow(with_);
    void read(text, name, with_);
  };

  const ownCast = entries['curing.castAt']?.t;
  const castShown = ownCast ?? castAt.example;
  const cast = readMoment(castShown);
  // The example's casting time is no start for the reader's own log.
  const fromCast = cast !== undefined && (fromCastChosen ?? ownCast !== undefined);
  const log = found?.log;
  const dated = log?.history !== undefined && log.survey.style === 'date';
  // A clock without dates may begin on a day before or after casting: that is asked.
  const asksDay =
    log?.history !== undefined &&
    log.survey.style === 'clock' &&
    !log.survey.counted &&
    ownCast !== undefined &&
    cast !== undefined;
  const takenOn = (day: number) => (Math.floor(cast! / DAY) + day) * DAY + log!.begins;
  /** When the first reading was taken, in local time, if known. */
  const began = dated
    ? log.begins
    : asksDay && typeof how.day === 'number'
      ? takenOn(how.day)
      : undefined;
  const fromFirst = began === undefined || (dated && !fromCast);
  const waits = log?.waits || (asksDay && how.day === undefined);
  /**
   * The casting time that its hours are counted from, if known: to the minute, like the field Cast
   * at.
   */
  const from =
    began === undefined
      ? undefined
      : fromFirst
        ? new Date(began * 1000).toISOString().slice(0, 16)
        : castShown;
  const brought =
    log && !waits
      ? found.by.toBench(log, from ? readMoment(from)! - began! + log.begins : undefined, system)
      : undefined;
  const told = log
    ? `${name && `${name}: `}${waits ? found!.by.WAITS : summary(log, brought, fromFirst, found!.by, speaker(system))}`
    : '';
  const benched =
    brought &&
    entries['curing.source']?.t === 'readings' &&
    entries['curing.readings']?.t === brought.entry.t &&
    (from ?? castShown) === castShown;
  const done =
    problem || (benched ? 'On the bench. The worksheets below now count from these readings.' : '');
  const put = () => {
    if (!brought) return;
    enter('curing.readings', { ...brought.entry, ...(from && { from }) });
    enter('curing.source', { t: 'readings' });
    if (from && fromFirst) enter('curing.castAt', { t: from });
  };

  return (
    <div class={over ? 'drop over' : 'drop'}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the file button and the box below do the same by keyboard */}
      <div
        onDragOver={(event) => {
          if (!bringsFile(event)) return;
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          if (!bringsFile(event)) return;
          event.preventDefault();
          setOver(false);
          void take(event.dataTransfer!.files[0]);
        }}
      >
        <p>
          A logger’s file, dropped here or chosen:{' '}
          <FileButton id="log-file" accept={LOG_FILES} onFiles={([file]) => take(file)}>
            Choose a logger’s file
          </FileButton>
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
                  disabled={cast === undefined}
                  onChange={(e) => setFromCast(e.currentTarget.checked)}
                />{' '}
                Count from the casting
                {cast === undefined
                  ? ' (Cast at, below, is still asked for)'
                  : `, ${momentInWords(cast)}`}
                , and not from the first reading
              </label>
            </p>
          )}
          {asksDay && (
            <p>
              <found.by.Choice
                label="These clocks name no day. The first reading is:"
                value={String(how.day ?? '')}
                options={[
                  ['casting', 'the casting'],
                  ...[-1, 0, 1].map((day) => [String(day), momentInWords(takenOn(day))] as const),
                ]}
                onPick={(day) => setHow({ ...how, day: day === 'casting' ? day : Number(day) })}
              />
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
      {done && <p>{done}</p>}
      <Said text={done || [told, ...(log ? found!.by.rowsInWords(log.problems) : [])].join(' ')} />
    </div>
  );
}

/** Whether a drag brings a file; dragged text is left to the text box. */
const bringsFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files');

function summary(
  log: TemperatureLog,
  brought: Brought | undefined,
  fromFirst: boolean,
  by: Reader,
  say: Say,
): string {
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
  return `${readings}${fromFirst ? ' The first is taken as the casting.' : ''}${before}${thinned}`;
}
