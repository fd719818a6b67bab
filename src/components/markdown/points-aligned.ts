/** A number, with a unit or without, and nothing else: 118 %, 8.5 h, 0.15. */
const NUMBER = /^([+\u2212]?[\d\u202f]+)(?:[.,]\d+)?(?:\u00a0(\S+))?$/;

const TABLE = /(<div class="scroll"[^>]*>\s*<table>)([\s\S]*?)(?=<\/table>)/g;
/** A row, but not that of the head. */
const ROW = /<tr>(?!\s*<th scope="col")[\s\S]*?<\/tr>/g;
const CELL = /(<t[hd]\b[^>]*>)([\s\S]*?)(?=<\/t[hd]>)/g;

const number = (cell: string) => NUMBER.exec(cell.replace(/<[^>]*>/g, '').trim());

/**
 * Sets spaces as wide as a digit before the numbers of a column that share a unit, so that their
 * points stand below each other. The tables of worksheets do so themselves.
 */
export const pointsAligned = (html: string): string =>
  html.replace(TABLE, (_, open: string, body: string) => {
    const leads = new Map<number, { units: Set<string | undefined>; most: number }>();
    for (const [row] of body.matchAll(ROW))
      for (const [i, [, , cell]] of [...row.matchAll(CELL)].entries()) {
        const found = number(cell!);
        if (!found) continue;
        const { units, most } = leads.get(i) ?? { units: new Set(), most: 0 };
        leads.set(i, { units: units.add(found[2]), most: Math.max(most, found[1]!.length) });
      }
    const rows = body.replace(ROW, (row) => {
      let i = 0;
      return row.replace(CELL, (all, tag: string, cell: string) => {
        const column = leads.get(i++);
        const found = number(cell);
        if (!found || column?.units.size !== 1) return all;
        return tag + '\u2007'.repeat(column.most - found[1]!.length) + cell;
      });
    });
    return open + rows;
  });
