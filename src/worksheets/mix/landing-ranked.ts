import type { Landing } from '../../core/mix/landing.ts';

interface Shares {
  /**
   * Of the foam’s density: from its scale, from the volume of the bucket it was weighed in, from
   * anything else, and all together.
   */
  readonly scale: number;
  readonly bucket: number;
  readonly found: number;
  readonly density: number;
  /** Of the foam’s volume: how full the buckets were, the volume of the same bucket, and both together. */
  readonly fill: number;
  readonly sameBucket: number;
  readonly volume: number;
}

/**
 * What each reading brings alone, largest first; the foam parted into scale, filling and bucket. A bucket
 * larger than it is taken for holds more foam, and lighter foam: in the mix the two add up.
 */
export function ranked({ wetDensity: { parts } }: Landing, share: Shares) {
  const [cement, water, sand, foamVolume, foamDensity, gasLost, cementDensity] = parts as number[];
  const of = (whole: number, part: number, all: number) => (all > 0 ? (whole * part) / all : 0);
  const bucket =
    of(foamVolume!, share.sameBucket, share.volume) + of(foamDensity!, share.bucket, share.density);
  return [
    { label: 'Cement weighed', size: cement! },
    { label: 'Water weighed', size: water! },
    { label: 'Sand weighed', size: sand! },
    { label: 'Foam measured out', size: of(foamVolume!, share.fill, share.volume) },
    { label: 'Scale for the foam', size: of(foamDensity!, share.scale, share.density) },
    { label: 'Foam density as found', size: of(foamDensity!, share.found, share.density) },
    { label: 'Volume of the bucket', size: bucket },
    { label: 'Gas lost while blending', size: gasLost! },
    { label: 'Density of the cement', size: cementDensity! },
  ]
    .filter(({ size }) => size > 0)
    .sort((a, b) => b.size - a.size);
}
