import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Editor } from '../../../src/bench/records/editor.ts';
import { blankRecord, today } from '../../../src/bench/records/record.ts';
import { CastOn, castDoubt } from '../../../src/worksheets/live/records/CastOn.tsx';

test('a day still to come is doubted, today and any before are not', () => {
  expect(castDoubt('2026-05-09', '2026-05-08')).toContain(
    'read 2026-05-09, which is still to come',
  );
  expect(castDoubt('2026-05-08', '2026-05-08')).toBeUndefined();
  expect(castDoubt('2025-12-31', '2026-05-08')).toBeUndefined();
});

test('the doubt stands at the field', () => {
  const field = (date: string) =>
    renderToString(h(CastOn, { editor: new Editor(blankRecord({ date }), () => {}) }));
  const far = field('9998-01-01');
  expect(far).toContain('aria-invalid="true"');
  expect(far).toMatch(/aria-describedby="record-date-problem".*id="record-date-problem"/);
  expect(field(today())).not.toContain('problem');
});
