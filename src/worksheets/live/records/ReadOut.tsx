import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { DRAWN } from '../../../islands/as-left.ts';
import { ended } from '../../../islands/ended.ts';
import { useSettled } from '../../../islands/hooks.ts';

/** The elements announced: verdicts, problems that are not alerts, and marked elements. */
const LINES = '.verdict, .problem:not([role]), [data-heard]';

/** Announces to screen readers what is new in its part of the page, once it has settled. */
export function ReadOut() {
  const place = useRef<HTMLParagraphElement>(null);
  const heard = useRef<readonly string[]>([]);
  const [shown, show] = useState('');
  // A running clock in the same part does not change these lines, so that it does not delay them.
  const settled = useSettled(shown);
  // Before painting, so that what is typed right after counts as new.
  useLayoutEffect(() => {
    const part = place.current!.parentElement!;
    const lines = () =>
      [...part.querySelectorAll(LINES)].map((line) => ended(line.textContent.trim()));
    heard.current = lines();
    // The final line break distinguishes a part without lines from one not read yet.
    const look = () => show(`${lines().join('\n')}\n`);
    // Other changes, such as by a translation tool, are not followed: rendering for them would undo
    // them in a loop.
    const drawn = part.closest('[data-island]');
    drawn?.addEventListener(DRAWN, look);
    return () => drawn?.removeEventListener(DRAWN, look);
  }, []);
  return (
    <p class="unseen" role="status" ref={place}>
      {useMemo(() => {
        const now = settled.split('\n');
        const fresh = now.filter((line) => !heard.current.includes(line));
        if (settled) heard.current = now;
        return fresh.join(' ');
      }, [settled])}
    </p>
  );
}
