// No page is so heavy that a phone on a building site waits for it. All weights are compressed, in bytes.

/** @typedef {import('../weights.mjs').Weight} Weight */

export const MOST = {
  html: 20_000,
  css: 16_000,
  /** A page without worksheets. */
  prose: 3_000,
  /** A page with all its worksheets awake. */
  script: 50_300,
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
 * Pages with more to compute than others, and what they may weigh: about a hundredth more than they do, for
 * another machine may compress a little less well, and so that none gains weight unseen. Lowered when a page
 * loses some; a commit that raises one says what for.
 * @type {Readonly<Record<string, number>>}
 */
const HEAVIER = {
  // Eight worksheets on one page, the dose of the foam as it was answered, and whose plan is weighed.
  'first-batch/': 90_500,
  // One worksheet, with the dose as it was answered, and what the reader's own batches say of the foam that lives.
  'mix/proportion/': 62_600,
  // Two ways to count age, from typed days or a logger’s file, and two pictures with their words.
  'curing/temperature-and-age/': 53_750,
  // Two strengths against two frosts, with whose air it is and what its hours count as, and neither before 16 of them.
  'curing/frost/': 53_400,
  // Three readings of a water, and what it does to the set, by two standards.
  'water/fit-for-cement/': 53_150,
  // The rules of three countries, and growth found from the reader's own cubes.
  'curing/plan/': 53_550,
  // How long by drainage and by density, for foam of which a share is planned to die.
  'foam/time-in-hand/': 53_750,
  // Two worksheets of corrections; what is left of a foam is a file of its own, shared with the mix.
  'mix/correct/': 54_600,
  // The table of the bench sheet, the clock and what lies on the bench.
  'bench/': 59_150,
  // The whole of a batch, its log and its comparison.
  'bench/run/': 97_100,
  'batch-records/batch/': 80_300,
  'batch-records/learn/': 69_500,
  'batch-records/compare/': 67_700,
  'batch-records/': 69_350,
  'batch-records/keep/': 57_550,
  // Four worksheets, two of them with the carbonate balance.
  'water/softening/': 63_500,
  // The carbonate balance of a water, from its ions or its total.
  'water/balance/': 51_350,
  // Two waters into one, and the picture of it.
  'water/blending/': 54_900,
  // A strength from its cement, its density and its age, and what the reader's own batches say of it.
  'curing/strength/': 51_750,
  // How long it dries, by a rule and by diffusion, and the picture of both.
  'curing/drying-to-use/': 50_900,
  // When it may be stripped, by strength or by bars, and what strength the growth of the mix has by then.
  'demoulding/when-to-strip/': 51_650,
  // One part held in seven ways, beside one another, and its picture.
  'demoulding/handling/': 50_650,
  // Heat through a slab, a column or a ball, and its picture.
  'curing/heat-inside/': 68_000,
  // Three ways to a time of setting, what quickens it, and what is too cold, too hot or frozen to cast.
  'curing/set/': 59_450,
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
