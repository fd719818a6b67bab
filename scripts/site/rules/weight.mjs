// No page is so heavy that a phone on a building site waits for it. All weights are compressed, in bytes.

/** @typedef {import('../weights.mjs').Weight} Weight */

export const MOST = {
  html: 20_000,
  css: 16_000,
  /** A page without worksheets. */
  prose: 3_000,
  /** A page with all its worksheets awake. */
  script: 49_300,
  /** What home needs before it can be read: its HTML and CSS. */
  home: 14_000,
  /** All that is kept for use without a network. */
  kept: 3_000_000,
};

/** What a page with worksheets ought to weigh, heat and landing a little more. Most do not yet: see the README. */
export const WANTED = {
  script: 30_000,
  heavy: 40_000,
  heavyPages: ['curing/heat-inside/', 'mix/how-close/'],
};

/**
 * Pages with more to compute than others, and what they may weigh: some thousandths more than they do, for the names
 * of files alone move that by a few bytes, and another machine may compress a little less well; and so that none gains
 * weight unseen. Lowered when a page loses some; a commit that raises one says what for.
 * @type {Readonly<Record<string, number>>}
 */
const HEAVIER = {
  // Eight worksheets on one page, the dose as it was answered, whose plan is weighed, and where the foam is assumed.
  'first-batch/': 93_950,
  // One worksheet, with the dose as it was answered, and what the reader's own batches say of the foam, or that none do.
  'mix/proportion/': 61_950,
  // Two ways to count age, from typed days or a logger’s file, nights nobody read, and two pictures with their words.
  'curing/temperature-and-age/': 55_600,
  // Two strengths against two frosts, with whose air it is and what its hours count as, and neither before 16 of them.
  'curing/frost/': 54_450,
  // The rules of three countries, growth found from the reader's own cubes, and the set that European class 1 wants.
  'curing/plan/': 55_500,
  // How long by drainage and by density, for foam of which a share is planned to die, and how sure its rate is.
  'foam/time-in-hand/': 55_750,
  // The odds of landing by trials, with what the reader's foam is known to.
  'mix/how-close/': 49_600,
  // Two worksheets of corrections; what is left of a foam is a file of its own, shared with the mix.
  'mix/correct/': 56_700,
  // The table of the bench sheet, the clock and what lies on the bench.
  'bench/': 61_200,
  // The whole of a batch, its log and its comparison, and which of its readings cannot be.
  'bench/run/': 96_100,
  'batch-records/batch/': 82_850,
  'batch-records/learn/': 70_850,
  'batch-records/compare/': 74_000,
  'batch-records/': 70_250,
  'batch-records/keep/': 58_750,
  // Four worksheets, two of them with the carbonate balance, and what pH or soda no foam bears.
  'water/softening/': 63_400,
  // The carbonate balance of a water, from its ions or its total, each species of it, and what pH no foam bears.
  'water/balance/': 52_200,
  // Two waters into one, the picture of it, and the pH of each and of both.
  'water/blending/': 55_350,
  // Three worksheets of air: what a compressor gives, what a hole lets through, and what a receiver holds.
  'foam/air/': 50_650,
  // When it may be stripped, by strength or by bars, what strength the mix has by then, and whether a jerk uses it up.
  'demoulding/when-to-strip/': 52_450,
  // What strength there is and will be, by three ways to know it, with the age that the clock and unread nights allow.
  'curing/strength/': 51_350,
  // All of a lifting job, row by row, with what is said of one lift.
  'demoulding/lift/': 49_900,
  // One part held in seven ways, beside one another, and its picture.
  'demoulding/handling/': 52_450,
  // Heat through a slab, a column or a ball, into a room that may warm by itself, and its picture.
  'curing/heat-inside/': 63_900,
  // Three ways to a time of setting, what quickens it, what more water does, and what is too cold, too hot or frozen.
  'curing/set/': 51_800,
};

/**
 * @param {readonly Weight[]} weights
 * @param {number} kept
 * @returns {string[]}
 */
export function weightFaults(weights, kept) {
  const faults = weights.flatMap(({ path, html, css, js, islands }) => {
    const script = islands === 0 ? MOST.prose : (HEAVIER[path] ?? MOST.script);
    return [
      ...over(`${path}: its HTML`, html, MOST.html),
      ...over(`${path}: its CSS`, css, MOST.css),
      ...over(`${path}: its JavaScript`, js, script),
      ...(path === '' ? over('home: its HTML and CSS', html + css, MOST.home) : []),
    ];
  });
  return [...faults, ...over('what is kept for use without a network', kept, MOST.kept)];
}

/**
 * @param {string} what
 * @param {number} bytes
 * @param {number} most
 */
const over = (what, bytes, most) =>
  bytes > most ? [`${what} weighs ${bytes} B compressed, more than ${most}`] : [];
