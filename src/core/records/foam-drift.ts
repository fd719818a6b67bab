import { demand } from '../domain-error.ts';

/** The time over which a drift is stated, s. @source common-practice */
const DRIFT_OVER = 600;

/**
 * By what share does the foam's density change in ten minutes of standing?
 *
 * (ρ₂/ρ₁)^(600 s/t) − 1.
 *
 * @param first and later density as weighed, kg/m³; `time` between the two, s
 * @returns a share; negative when liquid drains and the foam above it grows lighter. No range is
 *   published; a steady rate between the two weighings is assumed.
 * @throws {DomainError} a density or a time that is not positive
 * @source common-practice (two weighings of one foam)
 */
export function foamDrift({
  first,
  later,
  time,
}: {
  readonly first: number;
  readonly later: number;
  readonly time: number;
}): number {
  demand('first', first, 'density', { min: 0, aboveMin: true });
  demand('later', later, 'density', { min: 0, aboveMin: true });
  demand('time', time, 'time', { min: 0, aboveMin: true });
  return (later / first) ** (DRIFT_OVER / time) - 1;
}

/**
 * What share of its liquid does a foam lose in a minute, when its density changes by `drift` in
 * ten?
 *
 * 1 − (1 + drift)^(60 s/600 s). The shrinkage of the foam meanwhile is left out: a share ρf/ρw of
 * the answer, 8 % at 80 kg/m³. No range is published; a steady rate is assumed.
 * @param drift share in ten minutes, as `foamDrift` gives it, −1 to 0
 * @returns a share of the liquid
 * @throws {DomainError} a drift outside −1…0: such a foam does not drain
 * @source common-practice (a steady rate)
 */
export function drainedPerMinute({ drift }: { readonly drift: number }): number {
  demand('drift', drift, 'ratio', { min: -1, max: 0 });
  return 1 - (1 + drift) ** (60 / DRIFT_OVER);
}
