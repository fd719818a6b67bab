import { formatNumber } from '../../../core/quantity/format.ts';
import type { Say } from '../../../islands/engine/say.ts';

interface Props {
  /** Depth of mix, m, and the greatest pressure, Pa. */
  readonly depth: number;
  readonly pressure: number;
  /** Between supports, m; the bulge there, m, 0 where it is none to speak of. */
  readonly span: number;
  readonly bulge: number;
  /** How many spans the panel runs over along the side; none when it spans the depth. */
  readonly runs: number;
  /** Heights of the two rows of ties, m. */
  readonly lower: number;
  readonly upper: number;
  readonly say: Say;
}

const TOP = 26;
const DEEP = 160;
const FACE = 262;
/** The inside of the far wall. */
const WALL = 96;
/** A bulge is drawn so large that it can be seen. */
const DRAWN = 12;
/** Where the side stands in the picture of it from above. */
const PLAN = TOP + DEEP + 84;
const ALONG = { from: 20, to: 400 } as const;

/** A form cut through, with the pressure as a triangle; and its side from above, where that bulges. */
export function FormSection(props: Props) {
  const { depth, pressure, span, bulge, runs, lower, upper, say } = props;
  const y = (above: number) => TOP + DEEP * (1 - above / depth);
  const perMetre = runs > 0 ? (ALONG.to - ALONG.from) / (runs * span) : DEEP / depth;
  const drawn = bulge > 0 ? DRAWN : 0;
  const times = drawn && drawn / (bulge * perMetre);
  const size =
    times < 1
      ? `at ${formatNumber(100 * times, { significant: 2 })}\u00a0% of its size`
      : `${formatNumber(times, { significant: 1 })} times as large`;
  const length = (m: number) =>
    say(m, 'length', {
      units: m < 1 ? { metric: 'mm', us: 'in' } : { metric: 'm', us: 'ft' },
      significant: 2,
    });
  const bulges = drawn
    ? `bulges ${say(bulge, 'length', { significant: 2 })}`
    : 'does not bulge to speak of';
  const greatest = say(pressure, 'pressure', {
    units: { metric: 'kPa', us: 'psf' },
  });
  const words = `pressure from nothing at the top to ${greatest} at the bottom, ${length(depth)} down; its push acts ${length(depth / 3)} above the bottom; the panel ${bulges} ${runs > 0 ? `between battens ${length(span)} apart` : 'between bottom and top'}`;
  // A curve through the middle lies half as far out as the point it is drawn toward.
  const bend = runs > 0 ? '' : `Q${FACE + 2 * drawn} ${TOP + DEEP * 0.55} `;
  const outer = runs > 0 ? '' : `Q${FACE + 8 + 2 * drawn} ${TOP + DEEP * 0.55} `;
  const [foot, brow] = [`${FACE} ${TOP + DEEP}`, `${FACE + 8} ${TOP}`];
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${runs > 0 ? PLAN + 56 : TOP + DEEP + 26}`}
        role="img"
        aria-label={`Section of the form: ${words}.`}
      >
        {/* Behind mix and panel: so a tie ends at the panel, however far that bulges there. */}
        {[lower, upper]
          .filter((above) => above <= depth * 1.05)
          .map((above) => (
            <g>
              <path class="outline" d={`M${FACE} ${y(above)}h42`} />
              <circle class="marker" cx={FACE + 46} cy={y(above)} r="5" />
            </g>
          ))}
        <path class="foam" d={`M${WALL} ${TOP}H${FACE}${bend || 'L'}${foot}H${WALL}Z`} />
        <path class="head" d={`M${FACE} ${TOP}L${FACE - 110} ${TOP + DEEP}H${FACE}Z`} />
        {[0.25, 0.5, 0.75, 1].map((part) => (
          <path
            class="arrow thin"
            d={`M${FACE - 110 * part} ${TOP + DEEP * part - (part === 1 ? 8 : 0)}H${FACE - 4}m-6 -4l6 4 -6 4`}
          />
        ))}
        <path
          class="form"
          d={`M${FACE} ${TOP - 12}V${TOP}${bend || 'L'}${foot}h8${outer || 'L'}${brow}V${TOP - 12}Z`}
        />
        <path class="outline" d={`M${WALL} ${TOP - 12}V${TOP + DEEP}H${FACE + 20}`} />
        <path class="arrow" d={`M${FACE + 60} ${y(depth / 3)}h40m-8 -5l8 5 -8 5`} />
        <text class="strong" x={FACE + 106} y={y(depth / 3) + 5}>
          push
        </text>
        <path class="dim" d={`M${WALL - 12} ${TOP}V${TOP + DEEP}`} />
        <text x={WALL - 18} y={TOP + DEEP / 2} text-anchor="end">
          {length(depth)}
        </text>
        <text x={FACE - 110} y={TOP + DEEP + 20}>
          {greatest}
        </text>
        {runs > 0 && <FromAbove runs={runs} drawn={drawn} words={length(span)} />}
      </svg>
      <figcaption>
        The form cut through{runs > 0 && ', and its side from above'}. The triangle is the pressure;
        the dots are ties or clamps. The panel {bulges}
        {drawn > 0 && `, drawn ${size}`}.
      </figcaption>
    </figure>
  );
}

/** The panel from above, the mix behind it, out between its battens. */
function FromAbove({
  runs,
  drawn,
  words,
}: {
  readonly runs: number;
  readonly drawn: number;
  readonly words: string;
}) {
  const each = (ALONG.to - ALONG.from) / runs;
  const at = (i: number) => ALONG.from + i * each;
  const arcs = (shift: number, order: readonly number[], ends: 0 | 1) =>
    order
      .map((i) => `Q${at(i + 0.5)} ${PLAN + shift + 2 * drawn} ${at(i + ends)} ${PLAN + shift}`)
      .join('');
  const forth = Array.from({ length: runs }, (_, i) => i);
  return (
    <g>
      <path
        class="foam"
        d={`M${ALONG.from} ${PLAN - 34}V${PLAN}${arcs(0, forth, 1)}V${PLAN - 34}Z`}
      />
      <text class="soft" x={ALONG.from} y={PLAN - 41}>
        from above
      </text>
      <path
        class="form"
        d={`M${ALONG.from} ${PLAN}${arcs(0, forth, 1)}v8${arcs(8, forth.toReversed(), 0)}Z`}
      />
      {[...forth, runs].map((i) => (
        <rect class="form" x={at(i) - 6} y={PLAN + 8} width="12" height="14" />
      ))}
      <path class="dim" d={`M${at(0)} ${PLAN + 34}H${at(1)}`} />
      <text x={at(0.5)} y={PLAN + 50} text-anchor="middle">
        {words}
      </text>
    </g>
  );
}
