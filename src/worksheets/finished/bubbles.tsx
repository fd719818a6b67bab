import {
  linearTraverse,
  pointCount,
  RANDOM_PACKING,
  SPACING_LIMIT,
} from '../../core/finished/air-voids.ts';
import {
  againstDesign,
  chordHistogram,
  chordVariation,
  EQUAL_SPHERE_CHORD_VARIATION,
  pointUncertainty,
  traverseUncertainty,
} from '../../core/finished/chords.ts';
import { toUnit } from '../../core/quantity/convert.ts';
import { SLIVER } from '../../core/quantity/dust.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { bubbleFields } from './bubble-fields.ts';
import { ChordBars } from './drawn/ChordBars.tsx';

/** A quantity per millimetre or inch, in words. */
const perLength = (si: number, { system }: Say) =>
  `${formatNumber(si / toUnit(1, 'length', KINDS.length.shown[system]), { significant: 3 })} per ${KINDS.length.shown[system]}`;

/** A ± over this share of the air, or of the rest, is too wide for a comparison to tell anything. A choice. */
const TELLING = 1 / 4;

/** Bars of the histogram. */
const BINS = 12;

export default worksheet({
  id: 'bubbles',
  question: 'How much air is in it, and how fine?',
  fields: bubbleFields,
  folded: 'Sand',
  work: (v) => {
    const along = v.method === 'line';
    const list = along ? v.chords.map(({ chord }) => chord) : [];
    const across = list.reduce((sum, chord) => sum + chord, 0);
    // Chords that are the whole line may miss it by their last digits.
    const air = Math.abs(across - v.traverse) < SLIVER * across ? v.traverse : across;
    const found = along
      ? linearTraverse({
          traverse: v.traverse,
          air,
          paste: Math.max(0, v.traverse * (1 - v.inert) - air),
          voids: list.length,
        })
      : pointCount({
          stops: v.stops,
          airStops: v.airStops,
          pasteStops: Math.max(0, Math.round(v.stops * (1 - v.inert)) - v.airStops),
          interval: v.interval,
          voids: v.voids,
        });
    const uncertainty = along
      ? traverseUncertainty({
          airContent: found.airContent,
          voids: list.length,
          variation: list.length > 1 ? chordVariation(list) : EQUAL_SPHERE_CHORD_VARIATION,
        })
      : pointUncertainty({ airContent: found.airContent, stops: v.stops });
    const longest = list.reduce((most, chord) => Math.max(most, chord), 0);
    return {
      found,
      uncertainty,
      // All air, or none of the spread: chance says nothing then.
      against:
        uncertainty > 0
          ? againstDesign({ found: found.airContent, designed: v.designed, uncertainty })
          : undefined,
      bins: along ? chordHistogram(list, longest / (BINS - 0.001)) : undefined,
    };
  },
  results: {
    air: {
      label: 'Air found',
      kind: 'ratio',
      of: (r) => r.found.airContent,
      units: PERCENT,
      significant: 2,
      note: 'of the volume',
    },
    plusMinus: {
      label: 'Sure by chance alone to ±',
      kind: 'count',
      of: (r) => 100 * r.uncertainty,
      significant: 2,
      note: 'percentage points, one standard uncertainty',
    },
    difference: {
      label: 'Found, less designed',
      kind: 'count',
      of: (r) => r.against && 100 * r.against.difference,
      sure: true,
      aboutZero: 'any',
      scatter: (r) => 100 * r.uncertainty,
      note: 'percentage points',
    },
    chord: {
      label: 'Mean chord',
      kind: 'length',
      of: (r) => r.found.meanChord,
    },
    diameter: {
      label: 'Width of the bubbles, if all were alike',
      kind: 'length',
      of: (r) => 1.5 * r.found.meanChord,
      significant: 2,
    },
    spacing: {
      label: 'Spacing factor',
      kind: 'length',
      of: (r) => r.found.spacingFactor,
      significant: 2,
      note: 'of little meaning at such air: see below',
    },
  },
  judge: (r, { designed }, say) => {
    const percent = (x: number) => say(x, 'ratio', { units: PERCENT, significant: 2 });
    if (!r.against)
      return {
        verdict: 'look',
        say: 'Everything counted was air. Count again where there is paste too.',
      };
    const { difference, inUncertainties } = r.against;
    const points = `${formatNumber(100 * Math.abs(difference), { uncertainty: 100 * r.uncertainty })} percentage points`;
    const times = formatNumber(Math.abs(inUncertainties), { significant: 2 });
    const { airContent } = r.found;
    if (
      Math.abs(inUncertainties) <= 2 &&
      r.uncertainty > TELLING * Math.min(airContent, 1 - airContent)
    )
      return {
        verdict: 'look',
        say: `Count more: too few bubbles to tell. By chance alone ${percent(airContent)} is sure only to ±${formatNumber(100 * r.uncertainty, { significant: 2 })} percentage points, which would agree with much more and much less than the ${percent(designed)} it was designed for.`,
      };
    if (Math.abs(inUncertainties) <= 2)
      return {
        verdict: 'good',
        say: `${percent(airContent)} agrees with the ${percent(designed)} it was designed for, as far as so many bubbles can tell.`,
      };
    return {
      verdict: 'look',
      say:
        difference < 0
          ? `${points} less air than designed, ${times} times what chance explains: foam broke in the mixer, or the face was smeared and small bubbles were missed.`
          : `${points} more air than designed, ${times} times what chance explains: air was stirred in, or torn edges were counted as bubbles.`,
    };
  },
  notes: ({ found }, _, say) => [
    `Surface of the bubbles to their volume: ${perLength(found.specificSurface, say)}.`,
    ...(found.airContent > SPACING_LIMIT
      ? [
          'The spacing factor was made for ordinary concrete with a few per cent of air: how far paste lies from the nearest bubble. Above half air the bubbles all but touch, and it says no more than that the walls are thin.',
        ]
      : []),
    ...(found.airContent > RANDOM_PACKING
      ? [
          'Spheres cannot be packed at random into more than about 64\u00a0%: above that the bubbles are many-sided, and no formula of spheres holds well.',
        ]
      : []),
    'Chance is not all: a smeared face, chips at the edges and bubbles too small for the eye are not in the ±.',
  ],
  blames: {
    air: 'chords',
    paste: 'traverse',
    pasteStops: 'airStops',
    found: 'traverse',
    chord: 'chords',
    bins: 'chords',
    width: 'chords',
  },
  working: [
    {
      tex: String.raw`A = \frac{T_a}{T_t}\ \text{or}\ \frac{S_a}{S_t},\quad \bar l = \frac{A}{n},\quad \alpha = \frac{4}{\bar l}`,
      put: ({ found }, _, say) =>
        `A = ${say(found.airContent, 'ratio', { units: PERCENT })}, mean chord ${say(found.meanChord, 'length')}, α = ${perLength(found.specificSurface, say)}`,
    },
    {
      tex: String.raw`\begin{gathered}\bar L = \frac{p}{4n}\ \left(\tfrac pA \le 4.342\right),\\ \bar L = \tfrac{3}{\alpha}\left[1.4\left(1+\tfrac pA\right)^{1/3} - 1\right]\end{gathered}`,
      put: ({ found }, _, say) =>
        `p/A = ${formatNumber(found.pasteAirRatio, { significant: 3 })}, so the ${found.branch === 'thin-walls' ? 'first' : 'second'}: ${say(found.spacingFactor, 'length', { significant: 2 })}`,
    },
  ],
  figure: ({ result, say }) =>
    result.bins ? <ChordBars bins={result.bins} mean={result.found.meanChord} say={say} /> : null,
  cautions: ['cement-dust', 'not-load-bearing'],
  defers: ['Where air must be proved, a laboratory and the named standard with its polished face.'],
  sources: ['astm-c457', 'random-packing', 'chord-statistics', 'jcgm-100'],
});
