import { type BatchRecord, content, type Difference, differences } from './record.ts';

/** What bringing a batch in would do. */
export type Change =
  /** Not here yet. */
  | { readonly what: 'new'; readonly record: BatchRecord }
  /** Here already, and the same. */
  | { readonly what: 'same'; readonly record: BatchRecord }
  /** The same batch is here under another id. */
  | { readonly what: 'twin'; readonly record: BatchRecord; readonly here: BatchRecord }
  /** Here with other content. */
  | {
      readonly what: 'changed';
      readonly record: BatchRecord;
      readonly here: BatchRecord;
      readonly differences: readonly Difference[];
    };

/** Whether a changed batch takes the place of the one here, is left out, or is kept beside it. */
export type Choice = 'take' | 'leave' | 'both';

/** What would change if these batches were brought in. Nothing changes yet. */
export function planMerge(
  here: readonly BatchRecord[],
  coming: readonly BatchRecord[],
): readonly Change[] {
  const byId = new Map(here.map((record) => [record.id, record]));
  const byContent = new Map(here.map((record) => [content(record), record]));
  return coming.map((record): Change => {
    const mine = byId.get(record.id);
    if (mine) {
      const found = differences(mine, record);
      return content(mine) === content(record)
        ? { what: 'same', record }
        : { what: 'changed', record, here: mine, differences: found };
    }
    const twin = byContent.get(content(record));
    return twin ? { what: 'twin', record, here: twin } : { what: 'new', record };
  });
}

/** The records to store for a plan and its choices: new ones as they are, taken ones a revision on. */
export function toStore(
  plan: readonly Change[],
  choiceOf: (id: string) => Choice,
  idFor: (record: BatchRecord) => string,
): readonly BatchRecord[] {
  return plan.flatMap((change): BatchRecord[] => {
    if (change.what === 'new') return [change.record];
    if (change.what !== 'changed') return [];
    const choice = choiceOf(change.record.id);
    if (choice === 'leave') return [];
    if (choice === 'both')
      return [
        {
          ...change.record,
          id: idFor(change.record),
          name: `${change.record.name} (brought in)`.slice(0, 120),
          // A photo belongs to one batch.
          photos: [],
        },
      ];
    return [
      { ...change.record, revision: Math.max(change.record.revision, change.here.revision) + 1 },
    ];
  });
}
