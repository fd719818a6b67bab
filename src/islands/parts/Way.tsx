import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pageAt } from '../../bench/page-at.ts';

/** The page of each worksheet, as the build wrote it down: asked for once one is to be shown the way to. */
let pages: Promise<Readonly<Record<string, string>>> | undefined;
const fetched = async () => (await fetch(pageAt('worksheet-pages.json'))).json();

/** Where a worksheet stands: further up or down this page, or on its own; undefined until that is known. */
export function useWay(id: string | undefined): string | undefined {
  const [way, setWay] = useState<string>();
  useEffect(() => {
    const at = `#${id}-question`;
    if (!id) setWay(undefined);
    else if (document.querySelector(at)) setWay(at);
    else {
      pages ??= fetched();
      pages.then(
        (all) => setWay(all[id] && pageAt(all[id] + at)),
        // Without it the words stand alone.
        () => {
          pages = undefined;
        },
      );
    }
  }, [id]);
  return way;
}

/** Words that lead to a worksheet. */
export function Way({
  to,
  children,
}: {
  readonly to: string | undefined;
  readonly children: ComponentChildren;
}) {
  const way = useWay(to);
  return way ? <a href={way}>{children}</a> : children;
}
