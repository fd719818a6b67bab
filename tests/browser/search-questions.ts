/** A question as a maker would type it, and the page that must be among the first three found. */
export type Question = readonly [asked: string, page: string];

/** Half in the spelling of the United States; some with units; many are symptoms. */
export const questions: readonly Question[] = [
  // What went wrong.
  ['foam collapsed', 'foam/killers/'],
  ['foam keeps draining', 'foam/drainage/'],
  ['white crust on slab', 'finished-part/drying/'],
  ['skin burns cement', 'safety/skin-and-eyes/'],
  ['slab cracked', 'curing/drying-wind/'],
  ['concrete sank in form', 'foam/bad-foam/'],
  ['too heavy', 'mix/correct/'],
  ["won't set cold", 'curing/frost/'],
  ['why is my foam so wet', 'foam/weighing/'],
  ['form bulged at the bottom', 'placing/pressure/'],
  ['corner broke off when I stripped it', 'demoulding/when-to-strip/'],
  ['center of the block got hot', 'curing/heat-inside/'],
  ['how long before I take it out of the mold', 'demoulding/when-to-strip/'],
  ['piece stuck in the mold', 'demoulding/release/'],
  ['rain barrel has an odor', 'safety/stored-rainwater/'],
  ['soap scum no suds hard water', 'water/foam-and-soap/'],
  // With units.
  ['20 gpg', 'water/hardness/'],
  ['700 mg/L', 'water/fit-for-cement/'],
  ['80 g/L foam', 'foam/weighing/'],
  ['lb/ft3', 'finished-part/density/'],
  ['psi at 28 days', 'curing/strength/'],
  ['cost per cubic yard', 'mix/cost/'],
  ['94 lb', 'mix/cost/'],
  ['94 lb bag', 'mix/cost/'],
  ['90 psi compressor', 'safety/compressed-air/'],
  // How to, mostly in the spelling of the United States.
  ['when can I demold', 'demoulding/when-to-strip/'],
  ['how many gallons to fill my mold', 'placing/how-much/'],
  ['glass fiber dosage', 'mix/fibres/'],
  ['how much color can I add', 'mix/pigment/'],
  ['neutralize wash water', 'safety/washout/'],
  ['glycerin in foam', 'foam/glycerol/'],
  ['R-value insulation', 'finished-part/heat/'],
  ['can I use it for a load-bearing wall', 'finished-part/where-not/'],
  ['silica dust mask', 'safety/dust/'],
  ['can I stand on it', 'finished-part/where-not/'],
  ['pour down the sink', 'safety/washout/'],
  ['wash water down the drain', 'safety/washout/'],
  ['weigh foam in a liter jug', 'foam/weighing/'],
  // Where a figure comes from, and what it is held against.
  ['checks', 'checks/'],
  ['known wrong', 'checks/'],
  ['sources', 'sources/'],
  ['ACI 523.1R', 'sources/a/'],
  ['Spieweck', 'sources/p-z/'],
];
