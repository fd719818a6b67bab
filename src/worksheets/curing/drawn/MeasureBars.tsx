import {
  ACTION_RATE,
  CAUTION_RATE,
  EVAPORATION_ACCURACY,
} from '../../../core/curing/evaporation.ts';
import type { MeasureResult } from '../../../core/curing/evaporation-measures.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';

const LEFT = 12;
const ROW = 46;
const TOP = 40;

/** What each measure leaves of the loss, with how far the estimate may err, on the two limits. */
export function MeasureBars({
  measures,
  names,
  limitShare,
  say,
}: {
  readonly measures: readonly MeasureResult[];
  readonly names: Readonly<Record<MeasureResult['measure'], string>>;
  /** What share of the published limits holds. */
  readonly limitShare: number;
  readonly say: Say;
}) {
  const care = CAUTION_RATE * limitShare;
  const act = ACTION_RATE * limitShare;
  const unit = KINDS.massFlux.shown[say.system];
  const inUnit = (rate: number) => toUnit(rate, 'massFlux', unit);
  const most =
    Math.max(act * 1.2, ...measures.map((m) => m.rate * (1 + EVAPORATION_ACCURACY))) * 1.04;
  const x = scaleLinear([0, inUnit(most)], [LEFT, WIDTH - 16]);
  const at = (rate: number) => x(Math.min(inUnit(most), inUnit(rate)));
  const bottom = TOP + measures.length * ROW;
  const words = measures
    .map(({ measure, rate }) => `${names[measure]} ${say(rate, 'massFlux')}`)
    .join(', ');
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${bottom + 46}`}
        role="img"
        aria-label={`Water lost: ${words}. Take care from ${say(care, 'massFlux')}, act from ${say(act, 'massFlux')}.`}
      >
        {[
          { limit: care, label: 'take care', y: 14 },
          { limit: act, label: 'act', y: 34 },
        ].map(({ limit, label, y }) => (
          <g>
            <path class="level" d={`M${at(limit)} ${y - 12}V${TOP}`} />
            <text class="soft" x={at(limit) + 5} y={y}>
              {label}
            </text>
          </g>
        ))}
        {measures.map(({ measure, rate }, i) => {
          const y = TOP + i * ROW;
          const middle = y + 31;
          return (
            <g>
              <text x={LEFT} y={y + 14}>
                {names[measure]}
              </text>
              <rect class="water" x={LEFT} y={y + 21} width={at(rate) - LEFT} height="20" />
              {/* Between the bars the limits pause, for the names stand there. */}
              <path class="level" d={`M${at(care)} ${y + 19}v24M${at(act)} ${y + 19}v24`} />
              <path
                class="whisker"
                d={`M${at(rate * (1 - EVAPORATION_ACCURACY))} ${middle}H${at(rate * (1 + EVAPORATION_ACCURACY))}`}
              />
            </g>
          );
        })}
        <Axis x={x} y={bottom + 2} />
        <text x={WIDTH - 16} y={bottom + 42} text-anchor="end">
          {unitOf('massFlux', unit).symbol}
        </text>
      </svg>
      <figcaption>
        Water lost now, and with each measure by itself. The line across each bar’s end is
        ±40&nbsp;%; the upright ones are half of the published limits.
      </figcaption>
    </figure>
  );
}
