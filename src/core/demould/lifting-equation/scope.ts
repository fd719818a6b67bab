/** What the reader says about the job. Absent means not stated. */
export interface JobFacts {
  readonly bothHands?: boolean;
  readonly seatedOrKneeling?: boolean;
  readonly crampedSpace?: boolean;
  readonly shovelOrBarrow?: boolean;
  readonly unstableLoad?: boolean;
  /** Hours of work in the day. */
  readonly hours?: number;
  /** Air temperature, K. */
  readonly temperature?: number;
  /** Relative humidity, 0–1. */
  readonly humidity?: number;
  /** Friction between sole and floor. */
  readonly friction?: number;
  /** How fast the hands go, m/s. */
  readonly speed?: number;
}

/** Bounds of the method. Manual p. 6. @source niosh-lifting-1994 */
const SCOPE = {
  hours: 8,
  temperature: { min: 292.15, max: 299.15 },
  humidity: { min: 0.35, max: 0.5 },
  friction: 0.4,
  /** About 30 in/s, m/s. */
  speed: 0.762,
} as const;

/**
 * Is this job within the range of the lifting equation? The reasons it is not, as short codes;
 * empty if nothing stated rules it out. The method also does not cover carrying, pushing and
 * lifting by two people. `unstable-load` and `cramped-space` are from memory; the others were read
 * on p. 6.
 * @source niosh-lifting-1994 p. 6
 */
export function outsideScope(job: JobFacts): readonly string[] {
  const reasons: readonly [boolean, string][] = [
    [job.bothHands === false, 'one-hand'],
    [job.seatedOrKneeling === true, 'seated-or-kneeling'],
    [job.crampedSpace === true, 'cramped-space'],
    [job.shovelOrBarrow === true, 'shovel-or-barrow'],
    [job.unstableLoad === true, 'unstable-load'],
    [above(job.hours, SCOPE.hours), 'long-day'],
    [outside(job.temperature, SCOPE.temperature), 'temperature'],
    [outside(job.humidity, SCOPE.humidity), 'humidity'],
    [below(job.friction, SCOPE.friction), 'slippery-floor'],
    [above(job.speed, SCOPE.speed), 'fast'],
  ];
  return reasons.filter(([applies]) => applies).map(([, code]) => code);
}

// What was not stated rules nothing out.
const above = (said: number | undefined, most: number) => (said ?? -Infinity) > most;
const below = (said: number | undefined, least: number) => (said ?? Infinity) < least;
const outside = (
  said: number | undefined,
  { min, max }: { readonly min: number; readonly max: number },
) => below(said, min) || above(said, max);

/**
 * What two people can lift together as a share of the sum of what each could lift alone: practice
 * counts well short of the sum, here two thirds. Common practice, no source; the lifting equation
 * does not cover lifts by two.
 * @source common-practice
 */
export const TWO_PEOPLE_SHARE = 2 / 3;

/**
 * The limit for two people lifting together, kg, by practice: 2 · share · limit of one. No range is
 * published.
 * @param weightLimit for one, kg, 0 or more
 * @source common-practice
 */
export function twoPeopleLimit(weightLimit: number, share: number = TWO_PEOPLE_SHARE): number {
  return 2 * share * weightLimit;
}
