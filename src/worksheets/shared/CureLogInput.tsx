import { useState } from 'preact/hooks';
import type { System } from '../../bench/entries.ts';
import { LIMITS } from '../../bench/records/limits.ts';
import type { CureLog } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import { HOURS } from './part-fields.ts';

const LARGEST = 2_000_000;

/** A temperature log, from a file of a logger or pasted: read, thinned to what a record holds. */
export function CureLogInput({
  log,
  say,
  onLog,
}: {
  readonly log: CureLog | undefined;
  readonly say: Say;
  readonly onLog: (log: CureLog | undefined) => void;
}) {
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const take = async (text: string) => {
    const found = await readLog(text, say.system);
    if (typeof found === 'string') {
      setSaid(found);
      return;
    }
    setText('');
    setSaid(found.said);
    onLog(found.log);
  };
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
          <button type="button" onClick={() => onLog(undefined)}>
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
      {!log && (
        <>
          <textarea
            id="record-log"
            rows={4}
            spellcheck={false}
            autocomplete="off"
            aria-describedby="record-log-help"
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <p class="records-line">
            <button type="button" disabled={text.trim() === ''} onClick={() => take(text)}>
              Attach these lines
            </button>
            <label class="file-button">
              Choose a file
              <input
                type="file"
                accept=".csv,.txt,.tsv,text/*"
                onChange={async (event) => {
                  const file = event.currentTarget.files?.[0];
                  event.currentTarget.value = '';
                  if (!file) return;
                  if (file.size > LARGEST)
                    setSaid('That file is larger than 2\u00a0MB and was not read.');
                  else take(await file.text());
                }}
              />
            </label>
          </p>
        </>
      )}
      <p role="status" class="help">
        {said}
      </p>
    </div>
  );
}

const SCALES = { metric: '°C', us: '°F' } as const;

async function readLog(
  text: string,
  system: System,
): Promise<string | { readonly log: CureLog; readonly said: string }> {
  const { readLoggerText, scaleOf } = await import('./logger-file.ts');
  const { history, problems, scale } = await readLoggerText(text, {
    dayFirst: true,
    scale: 'heading',
    otherwise: scaleOf(system),
  });
  if (!history) return 'No line could be read as a time and a temperature; nothing was attached.';
  const { times, temperatures } = history;
  const every = Math.ceil(times.length / LIMITS.logPoints);
  const kept = times.flatMap((_, i) => (i % every === 0 || i === times.length - 1 ? [i] : []));
  const used = every > 1 ? kept.slice(0, LIMITS.logPoints) : kept;
  const unread = problems.filter(
    ({ used, code }) => !used && code !== 'heading' && code !== 'blank',
  );
  return {
    log: {
      seconds: used.map((i) => times[i]! - times[0]!),
      kelvin: used.map((i) => temperatures[i]!),
    },
    said: [
      `${times.length} readings attached, in ${scale === 'celsius' ? '°C' : '°F'}.`,
      unread.length > 0 &&
        `${unread.length} lines could not be read, the first of them line ${unread[0]!.row}.`,
      every > 1 && `Every ${every}th was kept.`,
    ]
      .filter(Boolean)
      .join(' '),
  };
}
