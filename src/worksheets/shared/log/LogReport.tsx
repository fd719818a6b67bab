import type { JSX } from 'preact';
import type { LogQuestion, TemperatureLog } from '../../../core/curing/log.ts';
import type { DateOrder } from '../../../core/curing/log-cells.ts';
import { DAY, HOUR } from '../../../core/quantity/constants.ts';
import { rowsInWords } from './log-words.ts';
import type { Answers } from './logger-file.ts';

type Options = readonly (readonly [value: string, label: string])[];

const UNITS: Options = [
  [String(HOUR), 'hours'],
  ['60', 'minutes'],
  ['1', 'seconds'],
  [String(DAY), 'days'],
];

/** Asks what a log leaves open, and the scale of its numbers without a unit. */
export function LogQuestions({
  log,
  answers,
  reader,
  onAnswer,
}: {
  readonly log: TemperatureLog;
  readonly answers: Answers;
  /** The scale of numbers without a unit if no heading names one, in words. */
  readonly reader: string;
  readonly onAnswer: (answers: Answers) => void;
}) {
  const { columns, orders, eitherWay } = log.survey;
  const asked: Readonly<Record<LogQuestion, () => JSX.Element>> = {
    column: () => (
      <Choice
        label="Which column holds the temperatures?"
        value={columns.some(({ at }) => at === answers.column) ? String(answers.column) : ''}
        options={columns.map(({ at, heading, first }) => [
          String(at),
          `column ${at + 1}${heading && `, ${heading}`}: ${first}, …`,
        ])}
        onPick={(column) => onAnswer({ ...answers, column: Number(column) })}
      />
    ),
    order: () => (
      <Choice
        label={`Dates such as ${eitherWay}:`}
        value={orders.find((order) => order === answers.order) ?? ''}
        options={orders.map((order) => [order, `${order} first`])}
        onPick={(order) => onAnswer({ ...answers, order: order as DateOrder })}
      />
    ),
    unit: () => (
      <Choice
        label="The times are numbers. They count:"
        value={answers.unit === undefined ? '' : String(answers.unit)}
        options={UNITS}
        onPick={(unit) => onAnswer({ ...answers, unit: Number(unit) })}
      />
    ),
  };
  return (
    <>
      {log.open.map((question) => (
        <p key={question}>{asked[question]()}</p>
      ))}
      {log.bare && (
        <p>
          <Choice
            label="Temperatures without a unit:"
            value={answers.scale ?? 'heading'}
            options={[
              ['heading', `as the heading says, else ${reader}`],
              ['celsius', '°C'],
              ['fahrenheit', '°F'],
            ]}
            onPick={(scale) => {
              const { scale: _, ...rest } = answers;
              onAnswer(scale === 'heading' ? rest : { ...rest, scale: scale as 'celsius' });
            }}
          />
        </p>
      )}
    </>
  );
}

/** Lists every row that was not simply a reading. */
export function LogRows({ log }: { readonly log: TemperatureLog }) {
  const all = rowsInWords(log.problems);
  return all.length === 0 ? null : (
    <ul>
      {all.map((words) => (
        <li>{words}</li>
      ))}
    </ul>
  );
}

/** A labelled list to choose from; while nothing is chosen it shows “choose”. */
export function Choice({
  label,
  value,
  options,
  onPick,
}: {
  readonly label: string;
  readonly value: string;
  readonly options: Options;
  readonly onPick: (value: string) => void;
}) {
  return (
    <label>
      {label}{' '}
      <select class="choice" value={value} onChange={(event) => onPick(event.currentTarget.value)}>
        {value === '' && (
          <option value="" disabled>
            choose
          </option>
        )}
        {options.map(([value, text]) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </label>
  );
}
