/** A bucket as it was weighed, or the ± of that: kg and m³. */
interface Weighing {
  readonly tare: number;
  readonly full: number;
  readonly vessel: number;
}

/** The ± of a wet density, kg/m³. */
export const densityDoubt = ({ tare, full, vessel }: Weighing, pm: Weighing): number =>
  Math.hypot(pm.full, pm.tare, (pm.vessel * (full - tare)) / vessel) / vessel;
