import { POWERS_2001, POWERS_BENTZ, powersVolumes } from '../../../core/finished/powers.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Plot } from '../../../islands/plots/Plot.tsx';
import { PERCENT } from '../../shared/words/amounts.ts';

type Paste = Omit<Parameters<typeof powersVolumes>[0], 'degree'>;

/** From the bottom up: what is solid first, the air last. */
export const PARTS = [
  ['inert', 'sand', 'sand'],
  ['unhydrated', 'unhydrated cement', 'cement'],
  ['gelSolids', 'gel solids', 'solution'],
  ['gelWater', 'gel water', 'gel-water'],
  ['capillaryWater', 'capillary water', 'water'],
  ['emptied', 'emptied pores', 'hollow'],
  ['air', 'foam’s air', 'foam'],
] as const;

export const SETS = { restated: POWERS_2001, bentz: POWERS_BENTZ } as const;
const STEPS = 24;
const LEAST_LABEL = 0.045;
/** Names closer than this run into one another, px. */
const APART = 17;

/** The volumes of the hardened concrete stacked, against how far the cement has reacted. */
export function VolumesPlot({
  paste,
  degree,
  most,
  say,
}: {
  readonly paste: Paste;
  readonly degree: number;
  readonly most: number;
  readonly say: Say;
}) {
  const at = (a: number) => powersVolumes({ ...paste, degree: a });
  const steps = Array.from({ length: STEPS + 1 }, (_, i) => {
    const a = (most * i) / STEPS;
    let below = 0;
    const volumes = at(a);
    const edges = PARTS.map(([key]) => {
      const from = below;
      below += volumes[key];
      return [from, below] as const;
    });
    return { a, edges };
  });
  // On the wider side of the line, never under it.
  const labelAt = degree > 0.5 * most ? degree - 0.02 : most;
  const { edges: labelled } = steps[Math.round((STEPS * labelAt) / most)]!;
  /** The parts thick enough to be named, the thinner of two that would collide left to the caption. */
  const names = (scale: (share: number) => number) => {
    const thick = PARTS.map(([key, name], part) => {
      const [low, high] = labelled[part]!;
      return { key, name, thickness: high - low, y: scale((low + high) / 2) };
    })
      .filter(({ thickness }) => thickness > LEAST_LABEL)
      .sort((a, b) => b.thickness - a.thickness);
    const placed: typeof thick = [];
    for (const part of thick)
      if (placed.every(({ y }) => Math.abs(y - part.y) >= APART)) placed.push(part);
    return placed;
  };
  const now = at(degree);
  const percent = (share: number) => say(share, 'ratio', { units: PERCENT, significant: 2 });
  const words = PARTS.filter(([key]) => now[key] > 0)
    .map(([key, name]) => `${name} ${percent(now[key])}`)
    .join(', ');
  return (
    <Plot
      words={`Volumes at a degree of hydration of ${degree.toFixed(2)}: ${words}.`}
      caption={`By volume, from the bottom: ${PARTS.filter(
        ([key]) => now[key] > 0 || key !== 'inert',
      )
        .map(([, name]) => name)
        .join(', ')}. The line stands at your degree; the picture ends where water or room does.`}
      x={[0, 1]}
      y={[0, 1]}
      xLabel="share of the cement that has reacted"
      yLabel="share of the volume"
    >
      {(axes) => {
        const [bottom, top] = axes.y.range() as [number, number];
        const line = `M${axes.x(degree)} ${bottom}V${top}`;
        return (
          <>
            {PARTS.map(([key, , fill], part) => {
              const floor = steps.map(({ a, edges }) => `${axes.x(a)} ${axes.y(edges[part]![0])}`);
              const roof = steps
                .map(({ a, edges }) => `${axes.x(a)} ${axes.y(Math.min(1, edges[part]![1]))}`)
                .reverse();
              return (
                <path
                  key={key}
                  class={fill === 'gel-water' ? 'water' : fill}
                  opacity={fill === 'gel-water' ? 0.55 : 1}
                  d={`M${floor.join('L')}L${roof.join('L')}Z`}
                />
              );
            })}
            {names(axes.y).map(({ key, name, y }) => (
              <text
                key={key}
                class={key === 'air' ? 'on-foam' : 'on-layer'}
                x={axes.x(labelAt) - 4}
                y={y + 5}
                text-anchor="end"
              >
                {name}
              </text>
            ))}
            <path class="halo" d={line} />
            <path class="arrow" d={line} />
          </>
        );
      }}
    </Plot>
  );
}
