import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear } from '../../../islands/plots/scale.ts';
import { KPA } from '../../shared/words/amounts.ts';

interface Props {
  readonly loading: 'centre' | 'thirds';
  /** m */
  readonly span: number;
  /** Pa, one a bar. */
  readonly strengths: readonly number[];
  readonly mean: number;
  readonly low: number;
  /** No scatter is known: the low end is a guess. */
  readonly guessed: boolean;
  readonly plusMinus: number | undefined;
  readonly say: Say;
}

const [LEFT, RIGHT, BAR] = [90, 330, 40] as const;
const AXIS = 232;

/** The test as it is set up, and below it what each bar said. */
export function BarTest({ loading, span, strengths, mean, low, guessed, plusMinus, say }: Props) {
  const third = (RIGHT - LEFT) / 3;
  const loads = loading === 'centre' ? [210] : [LEFT + third, RIGHT - third];
  const unit = KPA[say.system];
  const shown = (pa: number) => toUnit(pa, 'stress', unit);
  // No strength is below 0, however widely the bars scatter.
  const least = Math.max(0, mean - (plusMinus ?? 0));
  const most = Math.max(...strengths, mean + (plusMinus ?? 0));
  const x = scaleLinear([0, shown(most) * 1.08], [20, 400]).nice(5);
  const of = (pa: number) => x(shown(pa));
  const words = (pa: number) => say(pa, 'stress', { units: KPA });
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${AXIS + 44}`}
        role="img"
        aria-label={`A bar on two supports ${say(span, 'length')} apart, a bucket hung ${loading === 'centre' ? 'from its middle' : 'from a spreader at the thirds of the span'}. Bars: ${strengths.map(words).join(', ')}; mean ${words(mean)}, low end ${words(low)}${guessed ? ', a guess' : ''}.`}
      >
        <rect class="cement" x={LEFT - 26} y={BAR} width={RIGHT - LEFT + 52} height="24" />
        {[LEFT, RIGHT].map((at) => (
          <path class="outline" d={`M${at} ${BAR + 25}l-11 20h22Z`} />
        ))}
        {loads.map((at) => (
          <path class="outline" d={`M${at} ${BAR - 6}V${loading === 'centre' ? 96 : 86}`} />
        ))}
        {loads.length > 1 && (
          <path class="outline" d={`M${loads[0]! - 12} 86H${loads[1]! + 12}M210 86V96`} />
        )}
        <path class="outline" d="M192 108Q210 84 228 108M188 108H232L226 150H194Z" />
        <path class="water" d="M190 124H230L226 150H194Z" />
        <path class="leader" d={`M${LEFT} 22V34M${RIGHT} 22V34M${LEFT} 28H${RIGHT}`} />
        <text x="210" y="17" text-anchor="middle">
          {say(span, 'length')}
        </text>
        <text x="240" y="135">
          filled until it breaks
        </text>
        <text x="240" y="152" class="soft">
          a hand above the sand
        </text>
        <path class="sand" d="M160 160H260V168H160Z" />
        <rect
          class="band"
          x={of(least)}
          width={of(mean + (plusMinus ?? 0)) - of(least)}
          y={AXIS - 26}
          height="26"
        />
        <path class="level" d={`M${of(low)} ${AXIS - 30}V${AXIS}`} />
        <text
          class="soft"
          x={low > 0 ? of(low) - 3 : of(0)}
          y={AXIS - 35}
          text-anchor={low > 0 ? 'end' : 'start'}
        >
          {guessed ? 'low end, a guess' : 'low end'}
        </text>
        <path class="arrow" d={`M${of(mean)} ${AXIS - 26}V${AXIS}`} />
        <text class="strong" x={of(mean) - 6} y={AXIS - 35}>
          mean
        </text>
        {strengths.map((strength) => (
          <circle class="marker" cx={of(strength)} cy={AXIS - 13} r="5" />
        ))}
        <Axis x={x} y={AXIS} />
      </svg>
      <figcaption>
        The test, and the strength of each bar in {unitOf('stress', unit).symbol}.{' '}
        {plusMinus === undefined
          ? 'One bar shows no scatter.'
          : 'The shaded band is the ± of the mean.'}
      </figcaption>
    </figure>
  );
}
