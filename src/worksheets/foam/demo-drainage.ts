/** The demo scenario's readings of a draining bucket, invented: minutes, and kilograms run out of 1.6. */
export const demoDrainage = {
  foam: 1.6,
  readings: [
    [2, 0.04],
    [4, 0.12],
    [6, 0.2],
    [8, 0.28],
    [10, 0.38],
    [15, 0.57],
    [20, 0.75],
    [30, 0.98],
  ],
  /** And of a jar of the foamed mix, invented: minutes since blending, and kg/m³. */
  jar: [
    [0, 600],
    [5, 606],
    [15, 616],
  ],
} as const;

/** As they would be typed, in a unit `times` smaller. */
export const typedReadings = (times = 1): string =>
  demoDrainage.readings
    .map(([minutes, drained]) => `${minutes}\t${Number((drained * times).toPrecision(3))}`)
    .join('\n');
