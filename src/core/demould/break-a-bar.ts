import { demand } from '../domain-error.ts';
import { fromReadings, type Reading } from '../finished/readings.ts';
import type { Note } from '../note.ts';
import { STANDARD_GRAVITY } from '../quantity/constants.ts';
import { justOver, justUnder, SLIVER } from '../quantity/dust.ts';

/** The readings of one broken bar, each with its standard uncertainty. */
export interface BarReadings {
  /** Between the supports, m. */
  readonly span: Reading;
  /** Width, m. */
  readonly breadth: Reading;
  /** Height as tested, m. */
  readonly depth: Reading;
  /** Length of the whole bar, m; its ends overhang equally. */
  readonly length: Reading;
  /** Mass of the bar, kg. */
  readonly barMass: Reading;
  /** Mass hung from it when it broke: bucket and contents, hook, spreader, kg. */
  readonly hung: Reading;
}

export interface BrokenBar {
  /** Flexural strength, Pa. */
  readonly strength: number;
  /** Standard uncertainty from the readings alone, Pa. */
  readonly uncertainty: number;
  /** The part of the strength that the bar's own weight used, Pa. */
  readonly ownWeight: number;
  /** The share of the variance that each reading contributes, 0–1. */
  readonly shares: Readonly<Record<keyof BarReadings, number>>;
  readonly notes: readonly Note[];
}

/**
 * The heaviest load to hang in a bucket, kg; a test above it is for a laboratory. A choice. Common
 * practice, no source.
 * @source common-practice
 */
export const BUCKET_MOST = 25;

/**
 * How far outside the middle third a break may lie, as a share of the span, before the result is
 * discarded. From memory.
 * @source astm-c78
 */
const OUTSIDE_THIRD_ALLOWED = 0.05;

/**
 * How strong in bending is the bar that broke? f = 6 M/(b d²), M the moment of the load and of the
 * bar's own weight.
 *
 * Centre: F·span/4, taken at the middle wherever it broke. Third points: F·span/6 within the middle
 * third; outside it F·a/2 with a from the break to the nearer support. Own weight at distance x
 * from the middle: w[(span/2)² − x² − overhang²]/2. Without own weight these are the formulas of
 * the standard beam tests, 3FL/(2bd²), FL/(bd²) and 3Fa/(bd²), from memory; a bucket test is not a
 * standard test. No range is published; the notes say what the standard tests would discard.
 * @param bar readings, SI
 * @param loading `centre` or `thirds`
 * @param brokeAt from the middle of the span to the break, to either side, m, not negative; used
 *   for `thirds`
 * @returns Pa; note `outside-third` for a break outside the middle third, `throw-out` beyond 5 % of
 *   the span outside it, `short-span` for a span under three depths
 * @throws {DomainError} for a length not above 0, a negative mass or distance, a bar shorter than
 *   the span or a break outside it
 * @source astm-c78
 * @source astm-c293
 * @source beam-statics
 */
export function breakABar(bar: BarReadings, loading: 'centre' | 'thirds', brokeAt = 0): BrokenBar {
  for (const [name, { value, uncertainty }] of Object.entries(bar)) {
    const kind = name === 'barMass' || name === 'hung' ? 'mass' : 'length';
    demand(name, value, kind, { min: 0, aboveMin: kind === 'length' });
    demand(name, uncertainty, kind, { min: 0 }, 'negative-uncertainty');
  }
  const span = bar.span.value;
  demand('length', bar.length.value, 'length', { min: span }, 'shorter-than-span');
  demand('brokeAt', brokeAt, 'length', { min: 0, max: span / 2, belowMax: true });
  const x = loading === 'centre' ? 0 : brokeAt;
  type Values = Readonly<Record<keyof BarReadings, number>>;
  const own = (r: Values) => {
    const w = (r.barMass * STANDARD_GRAVITY) / r.length;
    const overhang = (r.length - r.span) / 2;
    return inBending(r, (w * ((r.span / 2) ** 2 - x ** 2 - overhang ** 2)) / 2);
  };
  const load = (r: Values) => {
    const force = r.hung * STANDARD_GRAVITY;
    const arm = loading === 'centre' ? r.span / 2 : Math.min(r.span / 3, r.span / 2 - x);
    return inBending(r, (force * arm) / 2);
  };
  const { value, uncertainty, shares } = fromReadings<keyof BarReadings>(
    { ...bar },
    (r) => own(r) + load(r),
  );
  const beyond = (allowed: number) => x > justOver((1 / 6 + allowed) * span, SLIVER);
  const notes: Note[] = [];
  if (beyond(OUTSIDE_THIRD_ALLOWED)) notes.push({ code: 'throw-out', of: 'brokeAt' });
  else if (beyond(0)) notes.push({ code: 'outside-third', of: 'brokeAt' });
  if (span < justUnder(3 * bar.depth.value, SLIVER)) notes.push({ code: 'short-span', of: 'span' });
  const values = Object.fromEntries(Object.entries(bar).map(([k, r]) => [k, r.value])) as Values;
  return { strength: value, uncertainty, ownWeight: own(values), shares, notes };
}

function inBending(
  r: { readonly breadth: number; readonly depth: number },
  moment: number,
): number {
  return (6 * moment) / (r.breadth * r.depth ** 2);
}
