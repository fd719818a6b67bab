import { HOUR } from '../../../core/quantity/constants.ts';
import { formatQuantity } from '../../../core/quantity/format.ts';
import type { OffersProps } from '../../../islands/fields.ts';
import { useEntries } from '../../../islands/hooks.ts';
import { AHEAD } from './since.ts';
import { useMinute } from './use-minute.ts';

const CAST_AT = 'curing.castAt';

/**
 * How long ago a local date and time such as `2026-05-08T14:00` was, h; undefined where that is no time to count
 * from. Rounded down: a part may be younger than it seems, never older.
 */
export function hoursSince(castAt: string | undefined, now = Date.now()): number | undefined {
  const hours = Math.floor((now - Date.parse(castAt ?? '')) / (100 * HOUR)) / 10;
  return hours > 0 && hours * HOUR <= AHEAD ? hours : undefined;
}

/** Beside how long ago it was cast: the time since the casting that lies on the bench. */
export function SinceCast({ onText }: OffersProps) {
  useMinute();
  const hours = hoursSince(useEntries([CAST_AT])[CAST_AT]?.t);
  if (hours === undefined) return null;
  const { text } = formatQuantity(hours * HOUR, 'time', 'h', { decimals: 1 });
  return (
    <p class="offers">
      <button type="button" onClick={() => onText(text)}>
        Use {text} since “Cast at”
      </button>
    </p>
  );
}
