import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { DRAWN } from '../../../islands/as-left.ts';
import { ended } from '../../../islands/ended.ts';
import { useSettled } from '../../../islands/hooks.ts';

/** What is read out of a page: verdicts, problems that are no alert, and what is marked. */
const LINES = '.verdict, .problem:not([role]), [data-heard]';

/** What a screen reader hears of the part of a page it stands in: what is new there, once that has settled. */
export function ReadOut() {
  const place = useRef<HTMLParagraphElement>(null);
  const heard = useRef<readonly string[]>([]);
  const [shown, show] = useState('');
  // A clock that goes on in the same part leaves the lines alone, and keeps nothing waiting.
  const settled = useSettled(shown);
  // At once: what is typed before the page is drawn is new too.
  useLayoutEffect(() => {
    const part = place.current!.parentElement!;
    const lines = () =>
      [...part.querySelectorAll(LINES)].map((line) => ended(line.textContent.trim()));
    heard.current = lines();
    // The break behind the last tells a part without lines from one that is not read yet.
    const look = () => show(`${lines().join('\n')}\n`);
    // Whatever else changes there, a translation say, is nothing new; and to draw for it would undo it without end.
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
