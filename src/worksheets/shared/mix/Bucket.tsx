import { KINDS } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { WIDTH } from '../../../islands/plots/scale.ts';
import { PERCENT } from '../words/amounts.ts';

interface Part {
  readonly name: string;
  readonly fill: 'cement' | 'sand' | 'filler' | 'pigment' | 'fibre' | 'water' | 'solution' | 'foam';
  /** m³ */
  readonly volume: number;
}

interface Props {
  readonly title: string;
  readonly parts: readonly Part[];
  readonly say: Say;
}

const TOP = 14;
const DEEP = 250;
/** Half the width of the bucket at a depth below its rim. */
const half = (depth: number) => 80 - depth * 0.09;
const MIDDLE = 90;
/** The left edge of the labels: the longest just fits on a phone. */
const LABELS = 189;
const LEAST_LABEL = 19;

/**
 * A picture of a bucket with the parts of the batch as layers by volume, in the order given, from
 * the bottom.
 */
export function Bucket({ title, parts, say }: Props) {
  const present = parts.filter(({ volume }) => volume > 0);
  const total = present.reduce((sum, { volume }) => sum + volume, 0);
  let floor = TOP + DEEP;
  const layers = present.map((part) => {
    const share = part.volume / total;
    const bottom = floor;
    floor -= share * DEEP;
    return { ...part, share, bottom, top: floor };
  });
  const unit = handy(total, 'volume', KINDS.volume.shown[say.system]);
  const how = { units: { metric: unit, us: unit }, steady: true };
  const words = layers.map(
    ({ name, volume, share }) =>
      `${name} ${say(volume, 'volume', how)}, ${say(share, 'ratio', { units: PERCENT, decimals: 0 })}`,
  );
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${DEEP + 2 * TOP}`}
        role="img"
        aria-label={`${title}: ${words.join('; ')}.`}
      >
        {layers.map(({ fill, top, bottom }) => (
          <path
            class={fill}
            d={`M${MIDDLE - half(top - TOP)} ${top}H${MIDDLE + half(top - TOP)}L${MIDDLE + half(bottom - TOP)} ${bottom}H${MIDDLE - half(bottom - TOP)}Z`}
          />
        ))}
        {layers
          .filter(({ fill }) => fill === 'foam')
          .map(({ top, bottom }) => (
            <path class="bubble" d={bubbles(top, bottom).map(circle).join('')} />
          ))}
        <path
          class="outline"
          d={`M${MIDDLE - half(0)} ${TOP}L${MIDDLE - half(DEEP)} ${TOP + DEEP}H${MIDDLE + half(DEEP)}L${MIDDLE + half(0)} ${TOP}`}
        />
        <path
          class="outline"
          d={`M${MIDDLE - half(0) - 7} ${TOP}h14M${MIDDLE + half(0) - 7} ${TOP}h14`}
        />
        {spread(layers).map(({ top, bottom, at, fill }, i) => (
          <g>
            <path
              class="leader"
              d={`M${MIDDLE + half((top + bottom) / 2 - TOP) + 3} ${(top + bottom) / 2}L${LABELS - 7} ${at}H${LABELS}`}
            />
            <rect class={`${fill} swatch`} x={LABELS + 3} y={at - 7} width="14" height="14" />
            <text x={LABELS + 22} y={at + 5}>
              {words[i]}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        {title}: {say(total, 'volume', how)} in all.
      </figcaption>
    </figure>
  );
}

/**
 * The height of each label: in the middle of its layer, or higher if it would touch the one below.
 */
function spread<T extends { readonly top: number; readonly bottom: number }>(layers: readonly T[]) {
  let last = Number.POSITIVE_INFINITY;
  return layers.map((layer) => {
    const at = Math.min((layer.top + layer.bottom) / 2, last - LEAST_LABEL);
    last = at;
    return { ...layer, at };
  });
}

/**
 * A circle as one arc with an invisible gap. One path of all bubbles is much shorter than an
 * element for each.
 */
const circle = ([x, y, r]: readonly [number, number, number]) =>
  `M${x - r} ${y}a${r} ${r} 0 1 1 0 .1`;

const even = (x: number) => 2 * Math.round(x / 2);

/** Bubbles scattered over a layer, always the same ones, so that the figure does not flicker. */
function bubbles(top: number, bottom: number): (readonly [number, number, number])[] {
  const found: [number, number, number][] = [];
  let seed = 7;
  const chance = () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  for (let i = 0; i < 150; i++) {
    // Even numbers keep the markup short: the figure is part of the page.
    const r = even(3 + chance() * 7);
    const y = even(TOP + chance() * DEEP);
    const x = even(MIDDLE + (chance() * 2 - 1) * (half(y - TOP) - r - 2));
    const inside = y - r > top + 1 && y + r < bottom - 1;
    if (inside && found.every(([a, b, c]) => Math.hypot(a - x, b - y) > r + c))
      found.push([x, y, r]);
  }
  return found;
}
