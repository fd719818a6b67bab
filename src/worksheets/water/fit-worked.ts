import { alkaliesOf, type Judged, judgeMixingWater } from '../../core/water/fitness.ts';
import { CONSTITUENTS, type Constituent } from '../../core/water/mixing-water-limits.ts';
import type { Values } from '../../islands/fields.ts';
import type { PlusMinus } from '../../islands/worksheet.ts';
import { saysAtMost } from '../shared/words/spelt.ts';
import type { fitFields } from './fit-fields.ts';

type Asked = Values<typeof fitFields>;

/** Natural waters rarely hold more and are then generally fit. @source steinour-pca-119 */
export const NATURAL = 2;
/** Ions that a report names: all of them count as dissolved. */
const IONS = ['chloride', 'sulfate', 'sodium', 'potassium', 'nitrate'] as const;
/** How far the ions may add up to more than is dissolved in all before a reading is doubted. A choice. */
const READS_OVER = 1.1;

/** A line of the report against one limit. */
export interface Line extends Omit<Judged, 'verdict'> {
  /** 'coarse' where the report says only less than something above the limit. */
  readonly verdict: Judged['verdict'] | 'coarse';
  /** Whether the value is the most it can be. */
  readonly upTo: boolean;
}

/** What a report holds of each constituent, kg/m³: silence left out, and sodium and potassium as alkalis. */
function reported({
  sodium,
  potassium,
  ...others
}: { readonly [of in Constituent | 'sodium' | 'potassium']?: number | undefined }) {
  const alkalies =
    sodium === undefined || potassium === undefined ? undefined : alkaliesOf({ sodium, potassium });
  return Object.fromEntries(
    CONSTITUENTS.map((of) => [of, of === 'alkalies' ? alkalies : others[of]]).filter(
      ([, value]) => value !== undefined,
    ),
  ) as Partial<Record<Constituent, number>>;
}

/** A report against each limit, once as the most and once as the least that it may mean. */
export function fitWorked(
  v: Asked,
  _: PlusMinus<typeof fitFields>,
  typed: (field: keyof Asked) => string = () => '',
) {
  // What is reported as less than a figure may be anything below it.
  const told = (name: keyof Asked) => saysAtMost(typed(name));
  const most = reported(v);
  const least = reported(
    Object.fromEntries(
      Object.entries(v).map(([name, value]) => [name, told(name as keyof Asked) ? 0 : value]),
    ),
  );
  const atLeast = judgeMixingWater(least, v.use);
  const named = IONS.reduce((sum, of) => sum + (told(of) ? 0 : (v[of] ?? 0)), 0);
  const solids = told('dissolvedSolids') ? undefined : v.dissolvedSolids;
  const judged = judgeMixingWater(most, v.use).map((line, i): Line => {
    const { verdict, value } = atLeast[i]!;
    return {
      ...line,
      verdict: line.verdict === verdict ? verdict : 'coarse',
      upTo: line.value !== value,
    };
  });
  const count = (verdict: Line['verdict']) =>
    judged.filter((line) => line.verdict === verdict).length;
  return {
    judged,
    alkalies: most.alkalies,
    named,
    // At least as much is dissolved as the ions named add up to.
    solids: solids === undefined && named <= NATURAL ? undefined : Math.max(solids ?? 0, named),
    doubted: named > READS_OVER * (v.dissolvedSolids ?? Infinity),
    beyond: count('beyond'),
    unknown: count('unknown'),
  };
}
