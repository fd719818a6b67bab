import { useEffect, useState } from 'preact/hooks';
import { fromFragment, toFragment } from '../../bench/link.ts';
import { localStore } from '../../bench/local-store.ts';
import { notify } from '../../bench/notices.ts';
import { pageAt } from '../../bench/page-at.ts';
import { $entries, $units, onBench, setUnits } from '../../bench/store.ts';
import { swapBench } from '../../bench/swap-bench.ts';
import { useEntries, useUnits } from '../../islands/hooks.ts';
import { keepFocus } from '../../islands/parts/keep-focus.ts';

/** The id of the element that stays when there is nothing left to clear. */
const HOLDS = 'bench-holds';

/**
 * What is on the bench: the number of entries, a link that carries them, and a button to clear
 * them.
 */
export default function BenchContents() {
  const entries = useEntries();
  const system = useUnits();
  const [copied, setCopied] = useState('');
  useEffect(() => {
    takeFromLink();
    // A link followed in a tab that shows this page only changes the fragment.
    addEventListener('hashchange', takeFromLink);
    return () => removeEventListener('hashchange', takeFromLink);
  }, []);
  const count = Object.values(entries).filter(({ t, rows }) => t !== undefined || rows).length;
  const link = () => {
    const { origin, pathname } = location;
    const path = pathname.includes('/bench/') ? pageAt('first-batch/') : pathname;
    const fragment = toFragment(onBench(), system);
    return fragment && `${origin}${path}${fragment}`;
  };
  const copy = async () => {
    const text = link();
    if (!text) {
      setCopied(
        'This is more than a link can carry. Save it as a batch and take that out as a file, in Batch records.',
      );
      return;
    }
    try {
      await navigator.clipboard.writeText(text);
      setCopied('Copied. The link holds your readings; nothing was sent anywhere.');
    } catch {
      setCopied(`Copy this: ${text}`);
    }
  };
  const clear = (event: MouseEvent) => {
    keepFocus(event, HOLDS);
    const back = swapBench({ entries: {} });
    notify('cleared', 'The bench is clear: every field shows the example again.', [
      { label: 'Put it back', run: back, undoes: true },
    ]);
  };
  return (
    <div class="bench-contents">
      <p role="status" id={HOLDS} tabIndex={-1}>
        {count === 0
          ? `Nothing of yours is on the bench. ${localStore() ? 'Every field shows the invented example until you type in it.' : 'This browser stores nothing for this site, so what you type stays on the page where you type it.'}`
          : `${count} ${count === 1 ? 'reading of yours is' : 'readings of yours are'} on the bench, kept in this browser; the rest is the invented example. Units: ${system === 'us' ? 'US customary' : 'metric'}.`}
      </p>
      <p class="records-line">
        <button type="button" onClick={copy} disabled={count === 0}>
          Copy a link with this batch
        </button>
        <button type="button" onClick={clear} disabled={count === 0}>
          Clear the bench
        </button>
      </p>
      <p role="status" class="copied">
        {copied}
      </p>
    </div>
  );
}

/** Takes a batch from a link: at once onto an empty bench, after a question otherwise. */
function takeFromLink(): void {
  const carried = fromFragment(location.hash);
  if (!carried) return;
  history.replaceState(null, '', location.pathname + location.search);
  if (!carried.ok) {
    notify('link', carried.why);
    return;
  }
  const { entries, kept, units } = carried;
  const take = (told: string, back: string) => {
    const system = $units.get();
    const swapBack = swapBench({ entries, kept });
    setUnits(units);
    const run = () => {
      swapBack();
      setUnits(system);
    };
    notify('link', told, [{ label: back, run, undoes: true }]);
  };
  const count = Object.keys(entries).length;
  const taken = `A batch of ${count} ${count === 1 ? 'reading' : 'readings'} came with the link`;
  if (Object.keys($entries.get()).length === 0) {
    take(`${taken} and is on the bench.`, 'Take it off again');
    return;
  }
  notify('link', `${taken}. Your bench holds other readings.`, [
    {
      label: 'Use the link’s batch',
      run: () => take('The link’s batch is on the bench.', 'Put my readings back'),
    },
  ]);
}
