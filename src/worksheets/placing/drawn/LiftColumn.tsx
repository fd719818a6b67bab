import type { Say } from '../../../islands/engine/say.ts';

interface Props {
  /** From the surface down: m and kg/m³. */
  readonly profile: readonly { readonly depth: number; readonly density: number }[];
  readonly say: Say;
}

const TOP = 26;
const DEEP = 220;
const WIDE = 120;

/** A lift seen from the side, its shade the density: the darkest is the bottom, whatever it is. */
export function LiftColumn({ profile, say }: Props) {
  const [first, last] = [profile[0]!, profile.at(-1)!];
  const y = (depth: number) => TOP + (depth / last.depth) * DEEP;
  const span = last.density - first.density;
  const shade = (density: number) =>
    0.15 + (span > 0 ? (0.7 * (density - first.density)) / span : 0);
  const length = (si: number) =>
    say(si, 'length', {
      units: { metric: si < 1 ? 'mm' : 'm', us: si < 0.3 ? 'in' : 'ft' },
      plain: true,
      significant: 3,
    });
  const dense = (si: number) => say(si, 'density', { significant: 4 });
  const marks = [0, 0.5, 1].map((part) => profile[Math.round(part * (profile.length - 1))]!);
  const words = marks.map(({ depth, density }) => `${length(depth)} down ${dense(density)}`);
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${TOP + DEEP + 18}`}
        role="img"
        aria-label={`Density down the lift: ${words.join(', ')}.`}
      >
        {profile.slice(1).map(({ depth, density }, i) => (
          <rect
            class="shade"
            x="60"
            width={WIDE}
            y={y(profile[i]!.depth)}
            height={y(depth) - y(profile[i]!.depth) + 0.4}
            fill-opacity={shade(density)}
          />
        ))}
        <path class="outline" d={`M60 8V${TOP + DEEP}H${60 + WIDE}V8`} />
        {marks.map(({ depth, density }) => (
          <g>
            <path class="leader" d={`M${60 + WIDE} ${y(depth)}h26`} />
            <text x={60 + WIDE + 32} y={y(depth) + 5}>
              {length(depth)}: {dense(density)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        Depth and density down the lift. The shade runs from the least dense here to the densest:{' '}
        {say(span, 'density', { significant: 2 })} apart.
      </figcaption>
    </figure>
  );
}
