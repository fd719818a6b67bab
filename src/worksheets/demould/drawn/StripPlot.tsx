import { DAY } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Band, Level, Plot } from '../../../islands/plots/Plot.tsx';
import { scaleLinear } from '../../../islands/plots/scale.ts';
import { DAYS, KPA } from '../../shared/words/amounts.ts';

interface Props {
  /** How far the drawing looks, s. */
  readonly until: number;
  /** Strength that handling may use, Pa, between its ends at a time, s. */
  readonly usable: (time: number) => readonly [low: number, high: number];
  /** Pa */
  readonly stress: { readonly low: number; readonly high: number };
  readonly earliest: number | undefined;
  readonly latest: number | undefined;
  readonly now: number;
  readonly say: Say;
}

const STEPS = 48;
/** The plot ends at this many times the tension of handling: what is far above does not show when that is reached. */
const MOST_SHOWN = 3;
/** What the names of the levels need. */
const NAME_ROOM = 160;

/** The strength that may be used rising past what handling asks, and the window between. */
export function StripPlot({ until, usable, stress, earliest, latest, now, say }: Props) {
  const unit = KPA[say.system];
  const y = (pa: number) => toUnit(pa, 'stress', unit);
  const days = (time: number) => time / DAY;
  const edges = Array.from({ length: STEPS + 1 }, (_, i) => {
    const time = (until * i) / STEPS;
    const [low, high] = usable(time);
    return [days(time), y(low), y(high)] as const;
  });
  const most = Math.max(...edges.map(([, , high]) => high));
  const top = y(stress.high) * Math.min(MOST_SHOWN, Math.max(2.2, most / y(stress.high)));
  // The axis ends on a round number above that.
  const isCut = scaleLinear([0, top], [0, 1]).nice(4)(most) > 1;
  const words = (time: number) => say(time, 'time', { units: DAYS, significant: 2 });
  const passes =
    earliest === undefined
      ? 'does not pass that within the time shown'
      : `passes that after ${words(earliest)} at the earliest and, at the latest, ${latest === undefined ? 'beyond the time shown' : `after ${words(latest)}`}`;
  const asks = (pa: number) => say(pa, 'stress', { units: KPA });
  const window =
    earliest === undefined
      ? 'It does not reach what handling asks.'
      : latest === undefined
        ? 'From the upright line on the part may be ready.'
        : 'Between the two upright lines the part may be ready.';
  return (
    <Plot
      words={`Handling asks, at worst, for ${asks(stress.high)}${stress.low < stress.high ? `, without a jerk for ${asks(stress.low)}` : ''}. The strength that may be used ${passes}; now it is ${words(now)}.`}
      caption={`Shaded: the share of the bending strength that may be used, between the slow and the fast estimate. ${window}${isCut ? ' Cut off at the top, the shade goes on above.' : ''} Only a test tells.`}
      x={[0, days(until)]}
      y={[0, top]}
      xLabel="days since casting"
      yLabel={`bending strength to use, ${unitOf('stress', unit).symbol}`}
    >
      {(axes) => {
        const [bottom, roof] = axes.y.range() as [number, number];
        const [left, right] = axes.x.range() as [number, number];
        const cut = {
          ...axes,
          y: Object.assign((pa: number) => Math.max(roof, axes.y(pa)), axes.y),
        };
        const stand = [earliest, latest].flatMap((time) =>
          time !== undefined && time <= until ? [axes.x(days(time))] : [],
        );
        // At the end of the levels, unless an upright line stands in the way there only.
        const crowded =
          stand.some((x) => x > right - NAME_ROOM) && !stand.some((x) => x < left + NAME_ROOM);
        const side = crowded ? 'start' : 'end';
        // Below its line, for the other level's name stands above that; only where it meets nothing.
        const low = axes.y(y(stress.low));
        const arrow = axes.x(days(now));
        const apart = crowded ? arrow > left + NAME_ROOM : arrow < right - NAME_ROOM;
        const named = low + 24 < bottom && (now > until || apart || low + 50 < bottom);
        const upright = (time: number | undefined) =>
          time !== undefined && time <= until ? (
            <path class="curve" d={`M${axes.x(days(time))} ${bottom}V${roof}`} />
          ) : null;
        return (
          <>
            <Band axes={cut} edges={edges} />
            {stress.low < stress.high && (
              <g>
                <path class="level" d={`M${left} ${low}H${right}`} />
                {named && (
                  <text
                    class="soft on-layer"
                    x={crowded ? left + 5 : right}
                    y={low + 16}
                    text-anchor={side}
                  >
                    without a jerk
                  </text>
                )}
              </g>
            )}
            <Level axes={axes} y={y(stress.high)} label="handling asks, at worst" named={side} />
            {upright(earliest)}
            {upright(latest)}
            {now <= until && (
              <g>
                <path class="arrow" d={`M${arrow} ${bottom}V${bottom - 40}`} />
                <text class="strong" x={arrow + 5} y={bottom - 26}>
                  now
                </text>
              </g>
            )}
          </>
        );
      }}
    </Plot>
  );
}
