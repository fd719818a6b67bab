import type { Kept } from '../../bench/entries.ts';
import { justOver, justUnder } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import { oneUnit } from '../shared/words/one-unit.ts';

/** A row of “How much must I make?”, in m. */
export interface PieceRow {
  readonly shape: 'slab' | 'block' | 'cylinder' | 'ring';
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly height: number;
  readonly diameter: number;
  readonly inner: number;
}

/** What is cast, for whoever holds the sheet: `12 slabs, 450 × 300 × 60 mm`. */
export const piecesInWords = (rows: readonly PieceRow[], say: Say): string =>
  rows
    .map((row) => `${row.count} ${row.shape}${row.count === 1 ? '' : 's'}, ${measures(row, say)}`)
    .join('; ');

/** The same, as far as a worksheet that found the volume counted them: `6 pieces`. */
export const countInWords = (volume: Kept | undefined, count: Kept | undefined): string =>
  volume && count && 'v' in count && count.from === volume.from
    ? `${count.v} ${count.v === 1 ? 'piece' : 'pieces'}`
    : '';

/** A piece smaller than this, m³, is sooner a slip of a unit: a decilitre. A choice: no source. */
const TINY = 1e-4;

/** A side below this, m, is probably one too: centimetres, or a point for a comma. A choice, no source. */
const THIN = 0.01;

/** And above this volume, m³: such a piece weighs 300 kg and takes a day of loads. A choice, no source. */
const HUGE = 0.5;

/** What may well be small: a hole for a bolt, an end that tapers off. */
const SMALL = ['innerDiameter', 'thinEnd', 'topDiameter'];

interface Sided {
  readonly shape: string;
  readonly length?: number;
  readonly width?: number;
  readonly thickness?: number;
}

/** No slab is thicker than it is long and wide: that is a block. */
const onEnd = ({ shape, length = 0, width = 0, thickness = 0 }: Sided) =>
  shape === 'slab' && thickness > Math.max(length, width);

/** Whether a form's size is probably a slip of a unit. Volume in m³, sides in m; a side of 0 does not exist. */
export const maybeSlip = (volume: number, form: Sided): boolean =>
  volume < TINY ||
  volume > justOver(HUGE) ||
  onEnd(form) ||
  Object.entries(form).some(
    ([name, side]) =>
      typeof side === 'number' && side > 0 && side < justUnder(THIN) && !SMALL.includes(name),
  );

export const CHECK_MEASURES = 'check each measure, its unit and its decimal point.';

/** How much to make for what the forms hold, m³: both in the unit of what is made. */
export function makeWords(total: number, net: number, say: Say): string {
  const { units } = oneUnit('volume', [total], say);
  return `Make ${say(total, 'volume')} to fill ${say(net, 'volume', { units, steady: true })} of form.`;
}

function measures(row: PieceRow, say: Say): string {
  const long = (metres: number) => say(metres, 'length', { plain: true, significant: 4 });
  const bare = (metres: number) => long(metres).replace(/\u00a0.*/, '');
  const { shape, length, width, thickness, height, diameter, inner } = row;
  if (shape === 'slab' || shape === 'block')
    return `${bare(length)} × ${bare(width)} × ${long(shape === 'slab' ? thickness : height)}`;
  const hole = shape === 'ring' ? ` (${bare(inner)} inside)` : '';
  return `${bare(diameter)}${hole} across, ${long(height)} high`;
}
