import type { Landing } from '../../core/mix/landing.ts';

/** What each reading brings alone, largest first; the foam’s density parted into scale and bucket. */
export function ranked(
  { wetDensity: { parts } }: Landing,
  share: {
    readonly scaleShare: number;
    readonly bucketShare: number;
    readonly densityShare: number;
  },
) {
  const [cement, water, sand, foamVolume, foamDensity, gasLost, cementDensity] = parts as number[];
  const ofDensity = (of: number) =>
    share.densityShare > 0 ? (foamDensity! * of) / share.densityShare : 0;
  return [
    { label: 'Cement weighed', size: cement! },
    { label: 'Water weighed', size: water! },
    { label: 'Sand weighed', size: sand! },
    { label: 'Foam measured out', size: foamVolume! },
    { label: 'Scale for the foam', size: ofDensity(share.scaleShare) },
    { label: 'Volume of the bucket', size: ofDensity(share.bucketShare) },
    { label: 'Gas lost while blending', size: gasLost! },
    { label: 'Density of the cement', size: cementDensity! },
  ]
    .filter(({ size }) => size > 0)
    .sort((a, b) => b.size - a.size);
}
