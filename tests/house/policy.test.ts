import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { tightened } from '../../scripts/site/policy.mjs';

const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const page = (policy: string) =>
  `<html><head><meta http-equiv="content-security-policy" content="${policy}"><script>theme()</script><script type="module" src="/a.js"></script></head></html>`;

test('a policy allows the script that stands in its page, and no other', () => {
  const [own, other] = [hash('theme()'), hash('anything()')];
  expect(tightened(page(`script-src 'self' ${other} ${own}; style-src 'self' ${hash('')};`))).toBe(
    page(`script-src 'self' ${own}; style-src 'self';`),
  );
});
