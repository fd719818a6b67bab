import { demand } from '../domain-error.ts';

/**
 * Share of the rain on a roof that reaches the butt: the rest wets it, splashes and blows off.
 * @source common-practice
 */
export const RUN_OFF = 0.8;

/**
 * Rain that reaches a butt from a roof.
 *
 * `roof` is the plan area, m²; `rain` the depth that falls, m; `runOff` the share that arrives;
 * `firstFlush` the depth diverted at the start, m. `volume` in m³: roof · (rain − firstFlush) ·
 * runOff, zero during the first flush. `rainFor` is its inverse. No range is published: it is a
 * balance.
 *
 * @throws {DomainError} for a negative depth, an area that is not positive, or a share outside (0,
 *   1].
 * @source definition; common-practice for the share
 */
export function rainCaught(roof: {
  readonly roof: number;
  readonly rain: number;
  readonly runOff?: number;
  readonly firstFlush?: number;
}): number {
  const { rain, runOff, firstFlush } = checked(roof);
  demand('rain', rain, 'length', { min: 0 });
  return roof.roof * Math.max(0, rain - firstFlush) * runOff;
}

/**
 * Depth of rain, m, that fills a `volume` (m³) from that roof, including the first flush.
 *
 * @throws {DomainError} as `rainCaught`, and for a negative volume.
 * @source definition; common-practice for the share
 */
export function rainFor(butt: {
  readonly volume: number;
  readonly roof: number;
  readonly runOff?: number;
  readonly firstFlush?: number;
}): number {
  const { runOff, firstFlush } = checked(butt);
  demand('volume', butt.volume, 'volume', { min: 0 });
  return butt.volume === 0 ? 0 : butt.volume / (butt.roof * runOff) + firstFlush;
}

function checked<T extends { roof: number; runOff?: number; firstFlush?: number }>(given: T) {
  const { roof, runOff = RUN_OFF, firstFlush = 0 } = given;
  demand('roof', roof, 'area', { min: 0, aboveMin: true });
  demand('runOff', runOff, 'ratio', { min: 0, aboveMin: true, max: 1 });
  demand('firstFlush', firstFlush, 'length', { min: 0 });
  return { ...given, runOff, firstFlush };
}
