import { percent } from '~/components/prose/percent.ts';
import { linearTraverse, RANDOM_PACKING, SPACING_LIMIT } from '~/core/finished/air-voids.ts';
import {
  chordVariation,
  EQUAL_SPHERE_CHORD_VARIATION,
  traverseUncertainty,
} from '~/core/finished/chords.ts';
import { DEMO_CHORDS } from '~/worksheets/finished/bubble-fields.ts';

/** The line across the demo's face, and what of it lay in the bubbles it met, m. */
export const traverse = 0.048;
export const inBubbles = DEMO_CHORDS.reduce((sum, chord) => sum + chord, 0) / 1000;
export const voids = DEMO_CHORDS.length;
const found = linearTraverse({
  traverse,
  air: inBubbles,
  paste: traverse - inBubbles,
  voids,
});
const variation = chordVariation(DEMO_CHORDS);

/** By chance alone, so many bubbles met: percentage points. */
const sureTo = (voids: number) =>
  (100 * traverseUncertainty({ airContent: found.airContent, voids, variation })).toFixed(0);

export const { meanChord } = found;
export const airContent = percent(found.airContent);
export const plusMinus = { asCounted: sureTo(voids), fourTimesAsMany: sureTo(4 * voids) };

/** The standard deviation of the chords, of their mean: theirs, and of equal spheres. */
export const deviation = {
  found: Math.sqrt(variation),
  equalSpheres: Math.sqrt(EQUAL_SPHERE_CHORD_VARIATION),
};

/** Air above which the spacing means nothing, and above which no heap of equal spheres is so full. */
export const spacingLimit = percent(SPACING_LIMIT);
export const packing = percent(RANDOM_PACKING);
