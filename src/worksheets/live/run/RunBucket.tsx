import { useState } from 'preact/hooks';
import { same } from '../../../bench/entries.ts';
import { carriedReadings, vesselOf } from '../../../bench/records/carried.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Folded } from '../../../islands/parts/Folded.tsx';
import { RecordFields, type Written } from '../records/RecordFields.tsx';
import { isCarried } from './run-load-before.ts';
import type { StepProps } from './run-plan.ts';
import { runReadings } from './run-readings.ts';

const BUCKET = ['tare', 'vessel'] as const;

/**
 * A bucket's empty weight and volume in words, with their origin; undefined while either is
 * missing.
 */
function bucketWords(
  { record }: Written,
  before: StepProps['before'],
  say: Say,
): string | undefined {
  const [tare, vessel] = BUCKET.map(runReadings(record, say).at);
  if (tare === undefined || vessel === undefined) return undefined;
  const has = vesselOf(record.readings);
  const from = isCarried(before, has)
    ? `, as for “${before!.name}”`
    : same(has, vesselOf(carriedReadings(record)))
      ? ', as on the bench'
      : '';
  return `Bucket: ${say(tare, 'mass', { plain: true })} empty, ${say(vessel, 'volume')}${from}`;
}

/**
 * The fields of a bucket, folded if it was known when the step began, as a field must not move
 * while typing.
 */
export function BucketFields({
  editor,
  before,
  say,
}: {
  readonly editor: Written;
  readonly before: StepProps['before'];
  readonly say: Say;
}) {
  const words = bucketWords(editor, before, say);
  const [known] = useState(words !== undefined);
  const fields = <RecordFields editor={editor} names={BUCKET} say={say} />;
  if (!known) return fields;
  return (
    <Folded name={words ?? 'Bucket'} needed={!words}>
      {fields}
    </Folded>
  );
}
