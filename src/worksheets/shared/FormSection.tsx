import type { Say } from '../../islands/engine/say.ts';

interface Props {
  /** Depth of mix, m, and the greatest pressure, Pa. */
  readonly depth: number;
  readonly pressure: number;
  /** Between supports, m; the bulge there, m. */
  readonly span: number;
  readonly bulge: number;
  /** Heights of the two rows of ties, m. */
  readonly lower: number;
  readonly upper: number;
  readonly say: Say;
}

const TOP = 30;
const DEEP = 200;
const FACE = 262;
/** The inside of the far wall. */
const WALL = 96;
/** The bulge is drawn so large that it can be seen. */
const DRAWN = 14;

/** A form cut through: the pressure as a triangle, its push, the panel bulging between its battens. */
export function FormSection({ depth, pressure, span, bulge, lower, upper, say }: Props) {
  const y = (above: number) => TOP + DEEP * (1 - above / depth);
  const times = bulge > 0 ? DRAWN / ((bulge / depth) * DEEP) : 1;
  const round = times >= 1 ? Number(times.toPrecision(1)) : Number(times.toPrecision(2));
  const spans = Math.max(1, Math.min(12, Math.round(depth / span)));
  const length = (m: number) =>
    say(m, 'length', {
      units: m < 1 ? { metric: 'mm', us: 'in' } : { metric: 'm', us: 'ft' },
      significant: 2,
    });
  const words = `pressure from nothing at the top to ${say(pressure, 'pressure', { units: { metric: 'kPa', us: 'psf' }, significant: 2 })} at the bottom, ${length(depth)} down; its push acts ${length(depth / 3)} above the bottom; the panel bulges ${say(bulge, 'length', { units: { metric: 'mm', us: 'in' }, significant: 2 })}`;
  const bulges = (shift: number, reverse = false) => {
    const parts = Array.from({ length: spans }, (_, i) => {
      const [from, to] = [TOP + (DEEP * i) / spans, TOP + (DEEP * (i + 1)) / spans];
      const size = (DRAWN * (from + to - 2 * TOP)) / DEEP;
      return { from, to, bend: `Q${FACE + shift + size} ${(from + to) / 2}` };
    });
    return (reverse ? [...parts].reverse() : parts)
      .map(({ from, to, bend }) => `${bend} ${FACE + shift} ${reverse ? from : to}`)
      .join('');
  };
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${TOP + DEEP + 24}`}
        role="img"
        aria-label={`Section of the form: ${words}.`}
      >
        <path class="foam" d={`M${WALL} ${TOP}H${FACE}${bulges(0)}H${WALL}Z`} />
        <path class="head" d={`M${FACE} ${TOP}L${FACE - 110} ${TOP + DEEP}H${FACE}Z`} />
        {[0.25, 0.5, 0.75, 1].map((part) => (
          <path
            class="arrow thin"
            d={`M${FACE - 110 * part} ${TOP + DEEP * part - (part === 1 ? 8 : 0)}H${FACE - 4}m-6 -4l6 4 -6 4`}
          />
        ))}
        <path
          class="form"
          d={`M${FACE} ${TOP - 12}V${TOP}${bulges(0)}h8${bulges(8, true)}V${TOP - 12}Z`}
        />
        <path class="outline" d={`M${WALL} ${TOP - 12}V${TOP + DEEP}H${FACE + 20}`} />
        {[lower, upper]
          .filter((above) => above <= depth * 1.05)
          .map((above) => (
            <g>
              <path class="outline" d={`M${FACE + 16} ${y(above)}h26`} />
              <circle class="marker" cx={FACE + 46} cy={y(above)} r="5" />
            </g>
          ))}
        <path class="arrow" d={`M${FACE + 60} ${y(depth / 3)}h40m-8 -5l8 5 -8 5`} />
        <text class="strong" x={FACE + 104} y={y(depth / 3) + 5}>
          push
        </text>
        <path class="dim" d={`M${WALL - 12} ${TOP}V${TOP + DEEP}`} />
        <text x={WALL - 18} y={TOP + DEEP / 2} text-anchor="end">
          {length(depth)}
        </text>
        <text x={FACE - 110} y={TOP + DEEP + 20}>
          {say(pressure, 'pressure', { units: { metric: 'kPa', us: 'psf' }, significant: 2 })}
        </text>
      </svg>
      <figcaption>
        The form cut through. The triangle is the pressure; the dots are ties or clamps. The panel’s
        bulge is drawn {round} times as large as it is.
      </figcaption>
    </figure>
  );
}
