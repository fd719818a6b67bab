import { correctionTable } from '../../core/mix/correction-table.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Values } from '../../islands/fields.ts';
import { inTable } from '../shared/mix/correction-advice.ts';
import { baseCell, correctionColumns } from '../shared/words/one-unit.ts';
import type { bucketsFields } from './buckets-fields.ts';
import type { bucketsWorked } from './buckets-worked.ts';
import { roundReadings } from './round-readings.ts';

type Worked = ReturnType<typeof bucketsWorked>;

/** What a table says in the place of foam that is no longer any. */
const freshFirst = ({ foamVolume }: { readonly foamVolume: number }, gone: boolean) =>
  gone && foamVolume > 0 ? 'fresh foam first' : undefined;

/** Each bucket corrected by itself: its number, what it weighs, what to add. */
export function bucketRows({ each, weighing, gone }: Worked, say: Say): string[][] {
  const cells = each.map(({ density, fix }) => inTable(fix, weighing(density), say));
  const { foam, foamMass, base } = correctionColumns(cells, say);
  return each.map(({ density }, i) => {
    const line = [`${i + 1}`, say(density, 'density')];
    const { fix, instead, first } = cells[i]!;
    if (instead) return [...line, instead];
    const fresh = freshFirst(fix, gone);
    if (fresh) return [...line, fresh, '—'];
    return [
      ...line,
      fix.foamVolume > 0
        ? `${first}${say(fix.foamVolume, 'volume', foam)} (${say(fix.foamMass, 'mass', foamMass)})`
        : '—',
      baseCell(fix, () => `${first}${say(fix.baseMass, 'mass', base)}`),
    ];
  });
}

/** All of it corrected, for any reading about the target that a bucket of it may give. */
export function readingRows(
  { common, all, each, together, gone }: Worked,
  v: Values<typeof bucketsFields>,
  say: Say,
): string[][] {
  const { step, densities } = roundReadings(v, say);
  const { tare, vessel } = v;
  const table = correctionTable({ ...common, massInHand: all.mass, tare, vessel, densities });
  const cells = table.map((row) => inTable(row, together(row.density), say));
  const { foam, foamMass, base } = correctionColumns(cells, say);
  return table.map((row, i) => {
    const line = [say(row.reading, 'mass', step), say(row.density, 'density')];
    const { fix, instead, first } = cells[i]!;
    if (instead) return [...line, instead];
    const fresh = freshFirst(fix, gone);
    if (fresh) return [...line, fresh, '—', '—'];
    if (first && each.length > 1) return [...line, 'each by itself: no room'];
    return [
      ...line,
      fix.foamVolume > 0 ? `${first}${say(fix.foamVolume, 'volume', foam)}` : '—',
      fix.foamMass > 0 ? say(fix.foamMass, 'mass', foamMass) : '—',
      baseCell(fix, () => `${first}${say(fix.baseMass, 'mass', base)}`),
    ];
  });
}
