import { demand } from '../domain-error.ts';
import { type BatchWeighed, type Particles, reconcile } from './reconcile.ts';
import { type Doubts, judgeBatch, type Possible, type Verdict } from './verdict.ts';

/**
 * One correction, SI: the density weighed, the mix taken out first, and the foam or base mix added.
 */
interface Corrected {
  /** kg/m³; 0: unknown. */
  readonly weighed: number;
  /** kg */
  readonly out?: number;
  /** m³ */
  readonly foam?: number;
  /** kg */
  readonly base?: number;
}

const sumOf = (amounts: readonly (number | undefined)[]) =>
  amounts.reduce<number>((sum, x = 0) => sum + x, 0);

/**
 * What part of a batch is in the mixer at the last weighing, if some of the mix was taken out
 * before it was corrected?
 *
 * What is taken out has the composition of everything in the mixer at the time. With m = B + ρf F
 * in the mixer, out_i leaves the share k = 1 − out_i/m of base mix B and foam F; later additions
 * are added to that. It had the volume out_i/ρ_i at its density. If the sums added differ from the
 * corrections, they are divided in the same proportions. No range is published: a balance of mass.
 *
 * @param batch all that went in, as `reconcile` takes it; `corrections` in their order
 * @returns `batch`: of what is in the mixer; `share` of the first amounts in it; `mass` kg and
 *   `volume` m³ taken out, undefined where the density of some of it is not known
 * @throws {DomainError} as much taken out as there is, or a density below nothing
 * @source navedtra-14071 (absolute volume)
 */
export function inMixer<B extends BatchWeighed & Particles>(
  batch: B,
  corrections: readonly Corrected[],
) {
  const mass = sumOf(corrections.map(({ out }) => out));
  if (mass === 0) return { batch, share: 1, mass, volume: 0 };
  const { cement, water, sand, foamVolume, foamDensity, leftOver } = batch;
  const { further = 0, furtherVolume = 0 } = batch;
  const first = cement + water + sand + further + foamDensity * foamVolume;
  const told = {
    foam: sumOf(corrections.map((c) => c.foam)),
    base: sumOf(corrections.map((c) => c.base)),
  };
  const part = (sum: number, of: number, x = 0) => (of > 0 ? (sum * x) / of : 0);
  let [share, foamAdded, baseAdded] = [1, 0, 0];
  let volume: number | undefined = 0;
  for (const { weighed, out = 0, foam, base } of corrections) {
    const there = share * first + baseAdded + foamDensity * foamAdded;
    demand('takenOut', out, 'mass', { min: 0, max: there, belowMax: true });
    demand('weighedBefore', weighed, 'density', { min: 0 });
    const kept = 1 - out / there;
    share *= kept;
    foamAdded = kept * foamAdded + part(batch.foamAdded, told.foam, foam);
    baseAdded = kept * baseAdded + part(batch.baseAdded, told.base, base);
    if (out > 0) volume = weighed > 0 && volume !== undefined ? volume + out / weighed : undefined;
  }
  return {
    batch: {
      ...batch,
      cement: share * cement,
      water: share * water,
      sand: share * sand,
      further: share * further,
      furtherVolume: share * furtherVolume,
      foamVolume: share * foamVolume,
      foamAdded: told.foam > 0 ? foamAdded : batch.foamAdded,
      baseAdded: told.base > 0 ? baseAdded : batch.baseAdded,
      ...(leftOver !== undefined && { leftOver: Math.max(0, leftOver - mass) }),
    },
    share,
    mass,
    volume,
  };
}

/** A verdict whose yield is undefined if the volume of what was taken out is unknown. */
export type VerdictCorrected = Omit<Verdict, 'yield'> & { readonly yield: number | undefined };

/**
 * `judgeBatch` for a batch of which some may have been taken out before it was corrected: for what
 * is in the mixer, with what was taken out included in its yield and its mass. No range is
 * published.
 * @param batch all that went in; `u` standard uncertainties of its readings; `corrections` in their
 *   order; `possible` what they can be
 * @throws {DomainError} as `judgeBatch` and `inMixer`
 * @source navedtra-14071 (absolute volume); jcgm-100 5.1.2 (first order)
 */
export function judgeCorrected(
  batch: BatchWeighed & Particles,
  u: Doubts,
  corrections: readonly Corrected[],
  possible?: Possible,
): VerdictCorrected {
  const { mass, volume } = inMixer(batch, corrections);
  const found = judgeBatch(batch, u, possible, (all) => reconcile(inMixer(all, corrections).batch));
  return {
    ...found,
    yield: volume === undefined ? undefined : found.yield + volume,
    massIn: found.massIn + mass,
  };
}
