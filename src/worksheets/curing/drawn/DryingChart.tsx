import { DIFFUSIVITY_DOUBT, type diffusionDryingTime } from '../../../core/curing/drying.ts';
import { DAY } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Band, Curve, Level, Plot } from '../../../islands/plots/Plot.tsx';
import { DAYS, PERCENT } from '../../shared/words/amounts.ts';

const POINTS = 60;

interface Props {
  /** Mean moisture after a time, s. */
  readonly meanAt: (time: number) => number;
  readonly target: number;
  /** When the mean comes to the target, by that diffusivity and at both ends of its doubt, s. */
  readonly dry: ReturnType<typeof diffusionDryingTime>;
  /** Dry by the rule for screeds, s. */
  readonly rule: number;
  readonly until: number;
  readonly say: Say;
}

/** The water still in it, on the mean, as it dries: the estimate, and how far it may be out. */
export function DryingChart({ meanAt, target, dry, rule, until, say }: Props) {
  const times = Array.from({ length: POINTS + 1 }, (_, i) => until * (i / POINTS) ** 2);
  // Water that moves so many times faster has gone as far in as much less time.
  const percent = (time: number, faster = 1) => meanAt(time * faster) * 100;
  const days = (time: number) => say(time, 'time', { units: DAYS, significant: 2 });
  const share = (of: number) => say(of, 'ratio', { units: PERCENT, significant: 2 });
  return (
    <Plot
      words={`Mean moisture from ${share(meanAt(0))} down; dry enough, ${share(target)}, after ${days(dry.time)}, in the band after ${days(dry.soonest)} to ${days(dry.latest)}; the rule for screeds says dry after ${days(rule)}.`}
      caption={`Water still in it, on the mean, by diffusion; the band is a diffusivity ${DIFFUSIVITY_DOUBT} times larger or smaller. The upright line is the rule for screeds.`}
      x={[0, until / DAY]}
      y={[0, percent(0) * 1.05]}
      xLabel="days of drying"
      yLabel="water, % of dry mass"
    >
      {(axes) => (
        <>
          <Band
            axes={axes}
            edges={times.map((time) => [
              time / DAY,
              percent(time, DIFFUSIVITY_DOUBT),
              percent(time, 1 / DIFFUSIVITY_DOUBT),
            ])}
          />
          <Level axes={axes} y={target * 100} label="dry enough" />
          <path
            class="level"
            d={`M${axes.x(rule / DAY)} ${axes.y.range()[0]}V${axes.y.range()[1]}`}
          />
          <Curve axes={axes} points={times.map((time) => [time / DAY, percent(time)])} />
        </>
      )}
    </Plot>
  );
}
