import { controlChart } from '../../core/records/control-chart.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Dot, Level, Plot } from '../../islands/plots/Plot.tsx';
import { DENSITY } from './amounts.ts';

export interface Landed {
  readonly name: string;
  /** kg/m³ */
  readonly planned: number;
  readonly weighed: number;
}

const PLAIN = 'plain' as const;
/** Below this distance of the limits the name of the mean would stand on theirs, px. */
const ROOM_FOR_MEAN = 60;
const percent = (x: number) =>
  `${x > 0 ? '+' : x < 0 ? '−' : ''}${Math.abs(x * 100).toFixed(1)}\u00a0%`;

/** The error of landing, batch by batch, between the limits that chance sets. */
export function LandingChart({ landed }: { readonly landed: readonly Landed[] }) {
  const errors = landed.map(({ planned, weighed }) => weighed / planned - 1);
  const chart = controlChart(errors);
  const room = 0.1 * Math.max(0.02, chart.high - chart.low);
  const bottom = Math.min(0, ...errors, chart.low) - room;
  const top = Math.max(0, ...errors, chart.high) + room;
  const out = chart.beyond.map((i) => landed[i]!.name);
  const words = `Landing errors of ${landed.length} batches: mean ${percent(chart.centre)}, limits ${percent(chart.low)} and ${percent(chart.high)}; ${out.length === 0 ? 'none is beyond them' : `beyond them: ${out.join(', ')}`}.`;
  return (
    <Plot
      words={words}
      caption={`Wet density weighed over planned, in the order the batches were made. Between the dashed limits a batch differs from the rest by chance.${chart.provisional ? ' From fewer than 20 batches the limits are provisional.' : ''}`}
      x={[0.5, landed.length * 1.2 + 0.5]}
      y={[bottom * 100, top * 100]}
      xLabel="batch"
      yLabel="landing error, %"
    >
      {(axes) => (
        <>
          <Level axes={axes} y={chart.high * 100} label={percent(chart.high)} />
          <Level axes={axes} y={chart.low * 100} label="" />
          <text
            class="soft"
            x={axes.x.range()[1]}
            y={axes.y(chart.low * 100) + 16}
            text-anchor="end"
          >
            {percent(chart.low)}
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
              mean {percent(chart.centre)}
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
              label={chart.beyond.includes(i) ? landed[i]!.name : ''}
              role={chart.beyond.includes(i) ? 'measured' : 'plain'}
            />
          ))}
        </>
      )}
    </Plot>
  );
}

/** What the chart says to do; of invented batches, what it would say. */
export function chartJudgement(landed: readonly Landed[], invented: boolean) {
  const { verdict, say } = judged(landed);
  const theirs = `These batches are invented, so your plan stays as it is. Of your own it would say: ${say}`;
  return { verdict, say: invented ? theirs : say };
}

function judged(landed: readonly Landed[]) {
  const errors = landed.map(({ planned, weighed }) => weighed / planned - 1);
  const chart = controlChart(errors);
  const names = (places: readonly number[]) => places.map((i) => `“${landed[i]!.name}”`).join(', ');
  if (chart.beyond.length > 0)
    return {
      verdict: 'look',
      say: `${names(chart.beyond)} lies beyond what chance explains: find what was different that day before the next batch.`,
    } as const;
  if (chart.runs.length > 0)
    return {
      verdict: 'look',
      say: `Eight or more in a row lie on one side of the mean, the last ${names(chart.runs.slice(-1))}: something has shifted.`,
    } as const;
  const off = Math.abs(chart.centre) > chart.centreReach;
  const mean = percent(chart.centre).replace(/^[+−]/, '');
  return off
    ? ({
        verdict: 'look',
        say: `The batches differ from each other by chance alone, but come out ${mean} too ${chart.centre > 0 ? 'heavy' : 'light'} on average. Correct the plan by that once, not after each batch; and not at all if you reckon the next batch’s foam with your own survival, which mends the same fault.`,
      } as const)
    : ({
        verdict: 'good',
        say: `The batches differ by chance alone, and on average they land, as far as ${landed.length} can tell (${percent(chart.centre)} ± ${(chart.centreReach * 100).toFixed(1)}). Leave the plan alone.`,
      } as const);
}

/** Predicted against measured wet density, on the line where they are equal. */
export function PredictedChart({
  landed,
  say,
}: {
  readonly landed: readonly Landed[];
  readonly say: Say;
}) {
  const unit = DENSITY[say.system];
  const factor = unit === 'kg/m3' ? 1 : 1 / 16.018463373960142;
  const all = landed.flatMap(({ planned, weighed }) => [planned * factor, weighed * factor]);
  const [low, high] = [Math.min(...all) * 0.95, Math.max(...all) * 1.05];
  return (
    <Plot
      words={`Planned against weighed wet density of ${landed.length} batches, from ${say(Math.min(...landed.map((l) => l.weighed)), 'density', { units: DENSITY })} to ${say(Math.max(...landed.map((l) => l.weighed)), 'density', { units: DENSITY })} weighed.`}
      caption="Planned against weighed. On the line the batch landed; above it, it came out heavy."
      x={[low, high]}
      y={[low, high]}
      xLabel={`planned, ${unit === 'kg/m3' ? 'kg/m³' : 'lb/ft³'}`}
      yLabel={`weighed, ${unit === 'kg/m3' ? 'kg/m³' : 'lb/ft³'}`}
    >
      {(axes) => (
        <>
          <path
            class="level"
            d={`M${axes.x(low)} ${axes.y(low)}L${axes.x(high)} ${axes.y(high)}`}
          />
          {landed.map(({ planned, weighed }) => (
            <Dot axes={axes} at={[planned * factor, weighed * factor]} label="" role={PLAIN} />
          ))}
        </>
      )}
    </Plot>
  );
}
