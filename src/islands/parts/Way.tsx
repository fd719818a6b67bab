import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pageAt } from '../../bench/page-at.ts';

/**
 * The page of each worksheet, from the table that the build writes; fetched when a link first needs
 * it.
 */
let pages: Promise<Readonly<Record<string, string>>> | undefined;
const fetched = async () => (await fetch(pageAt('worksheet-pages.json'))).json();

/**
 * Where a worksheet is: further up or down this page, or on its own page; undefined until known.
 */
export function useWay(id: string | undefined): string | undefined {
  const [way, setWay] = useState<string>();
  useEffect(() => {
    const at = `#${id}-question`;
    let late = false;
    if (!id) setWay(undefined);
    else if (document.querySelector(at)) setWay(at);
    else {
      pages ??= fetched();
      pages.then(
        // Another worksheet may be asked for by then, or none.
        (all) => late || setWay(all[id] && pageAt(all[id] + at)),
        // Without the table the words stand without a link.
        () => {
          pages = undefined;
        },
      );
    }
    return () => {
      late = true;
    };
  }, [id]);
  return way;
}

/** Text that links to a worksheet. */
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
