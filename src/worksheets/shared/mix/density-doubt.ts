/** The weighing of a bucket, or the ± of its readings: kg and m³. */
interface Weighing {
  readonly tare: number;
  readonly full: number;
  readonly vessel: number;
}

/** The ± of the density found by a weighing, kg/m³, from the ± of its readings, `pm`. */
export const densityDoubt = ({ tare, full, vessel }: Weighing, pm: Weighing): number =>
  Math.hypot(pm.full, pm.tare, (pm.vessel * (full - tare)) / vessel) / vessel;
