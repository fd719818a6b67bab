import { expect, test } from 'vitest';
import { keysIn, sourcesIn } from '../../src/components/source-keys.ts';

test('every key of a comment is found, whichever line it stands on', () => {
  const code = `
/**
 * What it answers.
 * @source navedtra-14071 (absolute volume), astm-c869 Table 1;
 *   pca-cement
 * @throws {DomainError} never
 */
export const a = 1;
/** K. @source common-practice */`;
  expect(sourcesIn(code)).toEqual([
    'navedtra-14071 (absolute volume), astm-c869 Table 1; pca-cement',
    'common-practice',
  ]);
  expect(sourcesIn(code).flatMap(keysIn)).toEqual([
    'navedtra-14071',
    'astm-c869',
    'pca-cement',
    'common-practice',
  ]);
});
