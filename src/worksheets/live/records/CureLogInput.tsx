import { useState } from 'preact/hooks';
import { arrived } from '../../../bench/arrived.ts';
import { keepLines, linesOf } from '../../../bench/records/log-lines.ts';
import type { CureLog } from '../../../bench/records/record.ts';
import type { TemperatureLog } from '../../../core/curing/log.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { FileButton } from '../../shared/log/FileButton.tsx';
import { LOG_FILES, LogText, SCALES } from '../../shared/log/LogText.tsx';
import type { Answers } from '../../shared/log/logger-file.ts';
import { HOURS } from '../../shared/words/amounts.ts';

/** The code that reads a log is loaded once there is one. */
const reader = () => arrived(import('../../shared/log/logger-file.ts'));
type Reader = Awaited<ReturnType<typeof reader>>;

/** Input of a temperature log, from a logger's file or pasted, thinned to what a record holds. */
export function CureLogInput({
  id,
  log,
  castOn,
  say,
  onLog,
}: {
  /** The id of the batch. */
  readonly id: string;
  readonly log: CureLog | undefined;
  /** The day it was cast. */
  readonly castOn: string;
  readonly say: Say;
  readonly onLog: (log: CureLog | undefined) => void;
}) {
  const [text, setText] = useState(() => linesOf(id));
  const [kept, setKept] = useState(true);
  const [said, setSaid] = useState('');
  const [answers, setAnswers] = useState<Answers>({});
  const [found, setFound] = useState<{ readonly read: TemperatureLog; readonly by: Reader }>();
  const write = (text: string) => {
    setText(text);
    setKept(keepLines(id, text));
  };
  const take = async (text: string, answers: Answers) => {
    const by = await reader();
    const large = by.tooLarge({ name: '', size: text.length });
    if (large) return setSaid(large);
    const read = await by.readLoggerText(text, {
      ...answers,
      otherwise: by.readersScale(say.system),
      cast: `${castOn}T12:00`,
    });
    const recorded = by.toRecord(read);
    setAnswers(answers);
    setFound({ read, by });
    setSaid(by.attachedInWords(read, recorded));
    const done = recorded && by.unreadRows(read).length === 0;
    if (done) {
      setText(text);
      keepLines(id, '');
    } else write(text);
    if (recorded) onLog(recorded.log);
  };
  const takeOff = (event: MouseEvent) => {
    keepFocus(event, 'record-log-said');
    write('');
    setAnswers({});
    setSaid('');
    setFound(undefined);
    onLog(undefined);
  };
  // With rows that were not counted the text stays open to be corrected.
  const open = !log || (found ? found.by.unreadRows(found.read).length > 0 : text !== '');
  const last = log?.seconds.at(-1);
  return (
    <div class="field lines">
      <label for="record-log">Temperature log</label>
      {log && last !== undefined ? (
        <p>
          {log.seconds.length} readings over{' '}
          {say(last - log.seconds[0]!, 'time', { units: HOURS, significant: 2 })}, from{' '}
          {say(Math.min(...log.kelvin), 'temperature')} to{' '}
          {say(Math.max(...log.kelvin), 'temperature')}.{' '}
          <button type="button" onClick={takeOff}>
            Take the log off
          </button>
        </p>
      ) : (
        <p class="help" id="record-log-help">
          Paste lines of time and temperature, or choose the logger’s file. A number without a unit
          is in {SCALES[say.system]}, unless a heading says otherwise. The first reading counts as
          the casting.
        </p>
      )}
      {open && (
        <>
          <LogText
            id="record-log"
            text={text}
            {...(log ? {} : { help: 'record-log-help' })}
            onText={write}
          />
          {!kept && (
            <p class="problem">
              This browser does not keep these lines: attach them before you leave the page.
            </p>
          )}
          <p class="records-line">
            <button
              type="button"
              disabled={text.trim() === ''}
              onClick={(event) => {
                keepFocus(event, 'record-log-said');
                take(text, answers);
              }}
            >
              Attach these lines
            </button>
            <FileButton
              accept={LOG_FILES}
              onFiles={async ([file]) => {
                const by = await reader();
                const text = by.tooLarge(file!) ? undefined : await by.textOf(file!);
                if (text === undefined) setSaid(by.tooLarge(file!) ?? by.unreadable(file!));
                else take(text, {});
              }}
            >
              Choose a file
            </FileButton>
          </p>
        </>
      )}
      {found && (
        <found.by.LogQuestions
          log={found.read}
          answers={answers}
          reader={SCALES[say.system]}
          onAnswer={(answers) => take(text, answers)}
        />
      )}
      <div role="status" class="help" id="record-log-said" tabIndex={-1}>
        <p>{said}</p>
        {found && <found.by.LogRows log={found.read} />}
      </div>
    </div>
  );
}
