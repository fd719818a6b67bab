import { demandNotNegative } from './bounds.ts';
import { type TemperatureHistory, temperatureAt, temperatureHistory } from './history.ts';

/**
 * Duration of the step from the last reading to its forecast, s: too short for a part to feel. A
 * choice.
 * @source common-practice
 */
export const STEP = 1;

/**
 * A history continued by a forecast, on the history's clock.
 *
 * `forecast` has its own times from `begins`, s on the history's clock (the history's end if
 * absent). Readings replace the part of the forecast before the last of them, and the forecast
 * holds from there on, so that a forecast of few points is not read as a slow drift towards the
 * next. If it begins later, a straight line bridges the stretch between. Gaps of both are kept. No
 * range: bookkeeping.
 * @throws {DomainError} for a beginning before the history's own.
 * @source common-practice
 */
export function carriedOn(of: {
  readonly history: TemperatureHistory;
  readonly forecast: TemperatureHistory;
  readonly begins?: number;
}): TemperatureHistory {
  const { history, forecast } = of;
  const end = history.times[history.times.length - 1]!;
  const begins = of.begins ?? end;
  demandNotNegative('begins', begins - history.times[0]!, 'time');
  const ahead = forecast.times.map((time) => time + begins).filter((time) => time > end);
  const from = end + STEP;
  const later =
    begins <= end && ahead.length > 0 ? [from, ...ahead.filter((time) => time > from)] : ahead;
  const joined = temperatureHistory({
    times: [...history.times, ...later],
    temperatures: [
      ...history.temperatures,
      ...later.map((time) => temperatureAt(forecast, time - begins)),
    ],
  });
  const gaps = forecast.gaps
    .map(({ from, to }) => ({ from: from + begins, to: to + begins }))
    .filter(({ to }) => to > end);
  return { ...joined, gaps: [...history.gaps, ...gaps] };
}
