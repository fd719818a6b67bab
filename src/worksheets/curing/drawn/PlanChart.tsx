import { takeOut } from '../../../bench/take-out.ts';
import { DAY } from '../../../core/quantity/constants.ts';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';
import { momentInWords } from '../../shared/time/moments.ts';
import { type CalendarDate, calendarFile } from '../icalendar.ts';

const LEFT = 12;
const RIGHT = 16;
const ROW = 44;

export interface PlanRow {
  readonly name: string;
  /** s after casting; undefined when these temperatures do not let it end. */
  readonly ends: number | undefined;
}

interface Props {
  readonly rows: readonly PlanRow[];
  /** s after 1970 by the reader's clock. */
  readonly castAt: number;
  /** The one that holds, for a calendar; undefined where none does. */
  readonly date: CalendarDate | undefined;
  /** These temperatures let no end hold. */
  readonly stopped: boolean;
  /** The casting date is the example's. */
  readonly example: boolean;
}

/** Every rule as a bar from casting to the date it ends, with the ways to take the last along. */
export function PlanChart({ rows, castAt, date, stopped, example }: Props) {
  const until = stopped ? 'not before' : 'until';
  const shown = rows.filter((row): row is PlanRow & { ends: number } => row.ends !== undefined);
  const end = Math.max(DAY, ...shown.map(({ ends }) => ends));
  const x = scaleLinear([0, (end / DAY) * 1.04], [LEFT, WIDTH - RIGHT]);
  const bottom = shown.length * ROW + 4;
  const words = shown
    .map(({ name, ends }) => `${name}: ${until} ${momentInWords(castAt + ends)}`)
    .join('; ');
  return (
    <>
      <figure class="fig">
        <svg
          viewBox={`0 0 ${WIDTH} ${bottom + 44}`}
          role="img"
          aria-label={`Cast ${momentInWords(castAt)}. ${words}.`}
        >
          {shown.map(({ name, ends }, i) => (
            <g>
              <text x={LEFT} y={i * ROW + 16}>
                {`${name}, ${stopped ? 'not before ' : ''}${momentInWords(castAt + ends).replace(/,.*/, '')}`}
              </text>
              <rect
                class="water"
                x={LEFT}
                y={i * ROW + 22}
                width={x(ends / DAY) - LEFT}
                height="14"
              />
            </g>
          ))}
          <path class="axis" d={`M${LEFT} ${bottom}H${WIDTH - RIGHT}`} />
          {x.ticks(6).map((tick) => (
            <text class="soft" x={x(tick)} y={bottom + 18} text-anchor="middle">
              {tick}
            </text>
          ))}
          <text x={(LEFT + WIDTH - RIGHT) / 2} y={bottom + 37} text-anchor="middle">
            days since casting
          </text>
        </svg>
        <figcaption>
          How long each rule keeps the part damp, and the day{' '}
          {stopped ? 'before which it cannot end' : 'it ends'}.
        </figcaption>
      </figure>
      <p class="take-along">
        {date && (
          <>
            <button type="button" onClick={() => save(date)}>
              Save the longest as a calendar file
            </button>{' '}
          </>
        )}
        <button type="button" onClick={() => window.print()}>
          Print this plan
        </button>
      </p>
      {!date && (
        <p class="help">
          There is no calendar file: by these temperatures{' '}
          {stopped ? 'no end would hold' : 'American practice gives no end'}.
        </p>
      )}
      {date && example && (
        <p class="help">This is the example’s date, and the calendar file names it so.</p>
      )}
    </>
  );
}

const save = (date: CalendarDate) =>
  takeOut('curing-plan.ics', calendarFile(date, Date.now() / 1000), 'text/calendar');
