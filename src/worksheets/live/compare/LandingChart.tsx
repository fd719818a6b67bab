import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import { controlChart } from '../../../core/records/control-chart.ts';
import { learn } from '../../../core/records/learn.ts';
import { PRIORS } from '../../../core/records/priors.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Dot, Level, Plot } from '../../../islands/plots/Plot.tsx';
import type { Judgement } from '../../../islands/worksheet.ts';
import { NEAR_ENOUGH, WORTH } from '../../shared/mix/near-enough.ts';
import { MOST_NAMES, namesInWords } from '../records/record-words.ts';
import type { landedOf } from './record-landed.ts';
import { signedPercent } from './signed-percent.ts';

export interface Landed {
  readonly name: string;
  /** kg/m³ */
  readonly planned: number;
  /** As first weighed. */
  readonly weighed: number;
  /** The planned survival of the foam's gas. */
  readonly share: number;
}

/**
 * The fewest batches with limits: with fewer, one difference sets them, and no batch can exceed
 * them.
 */
const FEWEST_LIMITS = 3;
/** The fewest batches that can be called good. A choice. */
const FEWEST_GOOD = 5;

/** What the batches tell about the plan; without a verdict if there are too few. */
export interface Said {
  readonly verdict?: Judgement['verdict'] | undefined;
  readonly say: string;
}

/** Planned survival above which a plan cannot be corrected upwards. A choice. */
const ALL_SURVIVES = 0.975;
/** Advice to correct the plan once, keeping its target. */
const ONCE =
  'Correct the plan once, not after each batch: keep the target at the density you want, and put the share that your batches teach into “Foam that survives until it is in the mix”.';
const NO_MORE =
  'Look at the bucket’s volume, the weight of the foam, and air whipped into the base mix: no more of the foam can survive than all of it.';

const PLAIN = 'plain' as const;
/**
 * The least distance of the limits, px, that leaves room for the label of the mean between theirs.
 */
const ROOM_FOR_MEAN = 60;
/**
 * How far the lines continue past the last batch, so that their labels are beside the points on a
 * phone too.
 */
const BESIDE = 1.4;
/** The landing error of each batch, with the control limits. */
export function LandingChart({
  landed,
  byName,
}: {
  readonly landed: readonly Landed[];
  /** Whether some were made on one day in an unknown order. */
  readonly byName: boolean;
}) {
  const errors = landed.map(({ planned, weighed }) => weighed / planned - 1);
  const chart = controlChart(errors);
  const room = 0.1 * Math.max(0.02, chart.high - chart.low);
  const bottom = Math.min(0, ...errors, chart.low) - room;
  const top = Math.max(0, ...errors, chart.high) + room;
  const beyond = new Set(chart.beyond);
  const out = chart.beyond.map((i) => landed[i]!.name);
  const words = `Landing errors of ${landed.length} batches: mean ${signedPercent(chart.centre)}, limits ${signedPercent(chart.low)} and ${signedPercent(chart.high)}; ${out.length === 0 ? 'none is beyond them' : `beyond them: ${namesInWords(out)}`}.`;
  return (
    <Plot
      words={words}
      caption={`Wet density as first weighed, before any correction, over planned, in the order the batches were made${byName ? '; those of one day by their names, where no time is known' : ''}. ${landed.length < FEWEST_LIMITS ? 'From two batches the dashed limits tell nothing yet.' : 'Between the dashed limits a batch differs from the rest by chance.'}${chart.provisional && landed.length >= FEWEST_LIMITS ? ' From fewer than 20 batches the limits are provisional.' : ''}`}
      x={[0.5, landed.length * BESIDE + 0.5]}
      y={[bottom * 100, top * 100]}
      xCounted={landed.length}
      xLabel="batch"
      yLabel="landing error, %"
    >
      {(axes) => (
        <>
          <Level axes={axes} y={chart.high * 100} label={signedPercent(chart.high)} />
          <Level axes={axes} y={chart.low * 100} label="" />
          <text
            class="soft"
            x={axes.x.range()[1]}
            y={axes.y(chart.low * 100) + 16}
            text-anchor="end"
          >
            {signedPercent(chart.low)}
          </text>
          <path
            class="tick"
            d={`M${axes.x.range()[0]} ${axes.y(chart.centre * 100)}H${axes.x.range()[1]}`}
          />
          {axes.y(chart.low * 100) - axes.y(chart.high * 100) > ROOM_FOR_MEAN && (
            <text
              class="soft"
              x={axes.x.range()[1]}
              y={axes.y(chart.centre * 100) - 5}
              text-anchor="end"
            >
              mean {signedPercent(chart.centre)}
            </text>
          )}
          <path
            class="outline thin"
            d={`M${errors.map((e, i) => `${axes.x(i + 1)} ${axes.y(e * 100)}`).join('L')}`}
          />
          {errors.map((error, i) => (
            <Dot
              axes={axes}
              at={[i + 1, error * 100]}
              label={beyond.has(i) && beyond.size <= MOST_NAMES ? String(i + 1) : ''}
              role={beyond.has(i) ? 'measured' : 'plain'}
            />
          ))}
        </>
      )}
    </Plot>
  );
}

/**
 * The advice of the chart; for invented batches, what it would be. Not good while a batch is left
 * out because its readings contradict each other; one of another plan is only named.
 */
export function chartJudgement({
  landed,
  invented,
  leftOut,
  otherPlan,
}: ReturnType<typeof landedOf>): Said {
  const { verdict, say } = judged(landed);
  const theirs = `These batches are invented, so your plan stays as it is. Of your own it would say: ${say}`;
  const without =
    otherPlan.length > 0
      ? ` Left out, as planned for another share of foam that survives: ${namesInWords(otherPlan)}.`
      : '';
  return {
    verdict: verdict === 'good' && leftOut.length > 0 ? undefined : verdict,
    say: `${invented ? theirs : say}${without}`,
  };
}

function judged(landed: readonly Landed[]): Said {
  const errors = landed.map(({ planned, weighed }) => weighed / planned - 1);
  const chart = controlChart(errors);
  const names = (places: readonly number[]) => namesInWords(places.map((i) => landed[i]!.name));
  if (landed.length < FEWEST_LIMITS)
    return {
      say: `Two batches are too few to tell chance from a fault of the plan. Judge it once there are ${FEWEST_GOOD}.`,
    };
  if (chart.beyond.length > 0)
    return {
      verdict: 'look',
      say: `${names(chart.beyond)} ${chart.beyond.length > 1 ? 'lie' : 'lies'} beyond what chance explains: find what was different ${chart.beyond.length > 1 ? 'on those days' : 'that day'} before the next batch.`,
    };
  if (chart.runs.length > 0)
    return {
      verdict: 'look',
      say: `Eight or more in a row lie on one side of the mean, the last ${names(chart.runs.slice(-1))}: something has shifted.`,
    };
  const off = Math.abs(chart.centre) > Math.max(chart.centreReach, WORTH);
  const apart = apartWords(errors, names);
  const mean = signedPercent(chart.centre).replace(/^[+−]/, '');
  if (off) {
    const most = Math.max(...landed.map(({ share }) => share));
    return {
      verdict: 'look',
      say: `${chart.centre < 0 && most > ALL_SURVIVES ? NO_MORE : ONCE} The batches differ from each other no more than chance explains, but come out ${mean} too ${chart.centre > 0 ? 'heavy' : 'light'} on average.${apart}`,
    };
  }
  const found = `as far as ${landed.length} can tell (${signedPercent(chart.centre)}\u00a0±\u00a0${(chart.centreReach * 100).toFixed(1)})`;
  // The mean must be known within the tolerance of a batch. A choice.
  if (landed.length < FEWEST_GOOD || chart.centreReach > NEAR_ENOUGH)
    return {
      say: `The batches differ no more than chance explains, and ${found} they are ${Math.abs(chart.centre) > chart.centreReach ? 'too little off to correct a plan for' : 'neither heavy nor light'} on average: too ${landed.length < FEWEST_GOOD ? 'few' : 'scattered'} to call it good. Leave the plan alone.${apart}`,
    };
  return {
    verdict: 'good',
    say: `The batches differ no more than chance explains, and on average they land, ${found}. Leave the plan alone.${apart}`,
  };
}

/**
 * A batch within the control limits may still be pulled in as an outlier in what batches teach:
 * then it is named.
 */
function apartWords(errors: readonly number[], names: (places: readonly number[]) => string) {
  const { moved } = learn({ values: errors, prior: PRIORS.landing });
  if (moved.length === 0) return '';
  const [stand, them] = moved.length === 1 ? ['stands', 'it'] : ['stand', 'them'];
  return ` ${names(moved)} ${stand} apart from the rest, as may come by chance: the average under “What your batches teach” counts ${them} for less.`;
}

/** Planned against measured wet density, with the line of equality. */
export function PredictedChart({
  landed,
  say,
}: {
  readonly landed: readonly Landed[];
  readonly say: Say;
}) {
  const unit = KINDS.density.shown[say.system];
  const { symbol } = unitOf('density', unit);
  const points = landed.map(
    ({ planned, weighed }) =>
      [toUnit(planned, 'density', unit), toUnit(weighed, 'density', unit)] as const,
  );
  const all = points.flat();
  const [low, high] = [Math.min(...all) * 0.95, Math.max(...all) * 1.05];
  return (
    <Plot
      words={`Planned against first weighed wet density of ${landed.length} batches, from ${say(Math.min(...landed.map((l) => l.weighed)), 'density')} to ${say(Math.max(...landed.map((l) => l.weighed)), 'density')} weighed.`}
      caption="Planned against first weighed. On the line the batch landed; above it, it came out heavy."
      x={[low, high]}
      y={[low, high]}
      xLabel={`planned, ${symbol}`}
      yLabel={`first weighed, ${symbol}`}
    >
      {(axes) => (
        <>
          <path
            class="level"
            d={`M${axes.x(low)} ${axes.y(low)}L${axes.x(high)} ${axes.y(high)}`}
          />
          {points.map((at) => (
            <Dot axes={axes} at={at} label="" role={PLAIN} />
          ))}
        </>
      )}
    </Plot>
  );
}
