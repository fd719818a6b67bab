import { expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { mixRefusals } from '../../../src/worksheets/shared/mix/mix-refusals.ts';
import { targetRefusals } from '../../../src/worksheets/shared/mix/target-refusals.ts';
import { sheets } from '../all.ts';

const say = speaker('metric');

test.each(['heavier-than-base-mix', 'lighter-than-foam', 'paste-robs-foam'] as const)(
  '%s is refused in one sentence, or in that of a mix that is there',
  (code) => {
    const error = new DomainError({
      ...{ quantity: 'of', value: 600, kind: 'density', because: code },
      allowed: { min: 80, max: 500 },
    });
    const words = sheets.flatMap(({ refusals = {} }) => refusals[code]?.(error, say) ?? []);
    expect(words.length).toBeGreaterThan(6);
    const known = [mixRefusals, ...['The target', 'The planned density'].map(targetRefusals)].map(
      (of: Partial<typeof mixRefusals>) => of[code]?.(error, say),
    );
    expect(words.filter((word) => !known.includes(word))).toEqual([]);
  },
);
