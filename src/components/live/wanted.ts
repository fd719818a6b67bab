import { $entries, $kept, $units } from '../../bench/store.ts';
import { type AnyWorksheet, entryKeys, takenKeys } from '../../islands/worksheet.ts';

const TOUCHES = ['pointerover', 'pointerdown', 'focusin', 'input', 'change'] as const;

/**
 * Waits until a worksheet has something to work out that the page does not show already: the reader
 * reaches for it, has readings of its fields on the bench, or reads in other units.
 */
export function wanted(place: HTMLElement, sheet: AnyWorksheet): Promise<void> {
  const [entered, taken] = [entryKeys(sheet), takenKeys(sheet)];
  const differs = () =>
    $units.get() !== 'metric' ||
    entered.some((key) => $entries.get()[key]) ||
    taken.some((key) => $kept.get()[key]);
  return new Promise((resolve) => {
    const stops: (() => void)[] = [];
    const done = () => {
      for (const stop of stops) stop();
      resolve();
    };
    const look = () => {
      if (differs()) done();
    };
    for (const touch of TOUCHES) {
      place.addEventListener(touch, done);
      stops.push(() => place.removeEventListener(touch, done));
    }
    stops.push($units.listen(look), $entries.listen(look), $kept.listen(look));
    look();
  });
}
