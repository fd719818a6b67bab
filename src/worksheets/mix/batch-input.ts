import { DomainError } from '../../core/domain-error.ts';
import type { DesignInput } from '../../core/mix/batch-design.ts';
import type { BinderPart } from '../../core/mix/binder.ts';
import { SAND_DENSITY } from '../../core/mix/densities.ts';
import type { Values } from '../../islands/fields.ts';
import type { batchFields } from './batch-fields.ts';

export type BatchValues = Values<typeof batchFields>;

/** What the fields say, as core takes it, but for the target. */
export function recipeOf(v: BatchValues): Omit<DesignInput, 'target'> {
  return {
    volume: v.volume,
    binder: binderOf(v),
    waterCement: v.waterCement,
    waterCementOf: v.counts,
    sand: {
      ratio: v.sandCement,
      density: SAND_DENSITY,
      moisture: v.moisture,
      absorption: v.absorption,
    },
    lightFiller:
      v.filler === 'some'
        ? {
            ratio: v.fillerRatio,
            density: v.fillerDensity,
            moisture: v.fillerMoisture,
            absorption: 0,
          }
        : undefined,
    fibre: v.fibreKind === 'none' ? undefined : { kind: v.fibreKind, share: v.fibreShare },
    pigment: { share: v.pigment },
    admixture: { share: v.admixture, waterShare: v.admixtureWater },
    foamDensity: v.foamDensity,
    convention: v.convention,
    survival: v.plannedSurvival,
  };
}

function binderOf(v: BatchValues): readonly BinderPart[] {
  if (v.cementKind === 'plain') return [{ kind: 'portland', share: 1, density: v.cementDensity }];
  const others = v.slag + v.ash + v.fume + v.limestone;
  if (others >= 1)
    throw new DomainError({
      quantity: 'slag',
      value: others,
      kind: 'ratio',
      allowed: { min: 0, max: 1, belowMax: true },
      because: 'no-cement',
    });
  return [
    { kind: 'portland', share: 1 - others, density: v.cementDensity },
    { kind: 'slag', share: v.slag },
    { kind: 'fly-ash', share: v.ash },
    { kind: 'silica-fume', share: v.fume },
    { kind: 'limestone', share: v.limestone },
  ];
}
