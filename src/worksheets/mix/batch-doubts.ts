import type { Design } from '../../core/mix/batch-design.ts';
import { pigmentMass } from '../../core/mix/pigment.ts';
import { justOver, SLIVER } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import type { BatchValues } from './batch-input.ts';
import { fibreDoubt } from './fibre-doubt.ts';
import { loadsDoubt, mixDoubts } from './mix-doubts.ts';
import { pigmentDoubt } from './pigment-doubt.ts';

/**
 * The highest usual share of each powder that replaces cement, if it is the only one. For several,
 * their shares of these maxima add up. Common practice, no source; limestone: the maximum of CEM II,
 * EN 197-1.
 */
const MOST_INSTEAD: Readonly<Record<string, number>> = {
  slag: 0.7,
  'fly-ash': 0.5,
  'silica-fume': 0.15,
  limestone: 0.35,
};

function blendDoubt({ binder, cementitious }: Design): Judgement | undefined {
  const full = binder.reduce(
    (sum, { kind, mass }) => sum + mass / cementitious / (MOST_INSTEAD[kind] ?? Infinity),
    0,
  );
  if (full <= justOver(1, SLIVER)) return undefined;
  return {
    verdict: 'look',
    say: 'Too little cement for its stand-ins: usual at most are 70\u00a0% of slag, 50\u00a0% of fly ash, 15\u00a0% of silica fume or 35\u00a0% of limestone, and less of each in a blend. It sets late and stays weak for long: cast a small piece first.',
  };
}

/** What is strange about a whole batch. */
export function batchDoubts(
  design: Design,
  v: BatchValues,
  say: Say,
): readonly (Judgement | undefined)[] {
  const { mix, fibre, cementitious } = design;
  return [
    v.fibreKind === 'none' ? undefined : fibreDoubt(v.fibreKind, v.fibreShare, say),
    ...mixDoubts(
      mix,
      v.foamDensity,
      say,
      fibre > 0 ? 'Without its fibre the mix weighs' : undefined,
    ),
    loadsDoubt(v),
    blendDoubt(design),
    pigmentDoubt(pigmentMass({ cementitious, share: v.pigment }), say),
  ];
}
