import { useEffect, useRef, useState } from 'preact/hooks';

/** What is read out of a page: verdicts, problems that are no alert, and what is marked. */
const LINES = '.verdict, .problem:not([role]), [data-heard]';

/** What a screen reader hears of the part of a page it stands in: what is new there, once that has settled. */
export function ReadOut() {
  const [text, hear] = useState('');
  const place = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    const part = place.current!.parentElement!;
    const lines = () =>
      [...part.querySelectorAll(LINES)].map((line) =>
        line.textContent.trim().replace(/[^.?!]$/, '$&.'),
      );
    let timer: ReturnType<typeof setTimeout> | undefined;
    let heard = lines();
    let shown = heard;
    // A clock that goes on in the same part keeps nothing waiting.
    const watch = new MutationObserver(() => {
      const now = lines();
      if (now.join('\n') === shown.join('\n')) return;
      shown = now;
      clearTimeout(timer);
      timer = setTimeout(() => {
        hear(shown.filter((line) => !heard.includes(line)).join(' '));
        heard = shown;
      }, 1000);
    });
    watch.observe(part, { childList: true, characterData: true, subtree: true });
    return () => {
      watch.disconnect();
      clearTimeout(timer);
    };
  }, []);
  return (
    <p class="unseen" role="status" ref={place}>
      {text}
    </p>
  );
}
