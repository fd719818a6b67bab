import { formatQuantity } from '../../../core/quantity/format.ts';
import { KINDS, type Kind } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';

/**
 * A result with its ±, both rounded as the ± warrants: `630 ± 7 kg/m³`. Without one, three digits.
 */
export function withPm(
  say: Say,
  si: number,
  u: number | undefined,
  kind: Kind,
  units: Units = KINDS[kind].shown,
): string {
  if (u === undefined || !Number.isFinite(u) || u <= 0) return say(si, kind, { units });
  const how = { uncertainty: u };
  const { number, unit } = formatQuantity(si, kind, units[say.system], how);
  const pm = formatQuantity(u, kind, units[say.system], how).number;
  return `${number}\u00a0±\u00a0${pm}${unit && `\u00a0${unit}`}`;
}
