import { useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Store<T> {
  get(): T;
  listen(hear: (now: T, before?: T) => void): () => void;
}

/** Whether a store differs from what the page was built with, under any of the keys. */
export function differs<T>(now: T, built: T, keys?: readonly (keyof T)[]): boolean {
  if (typeof now !== 'object' || now === null || typeof built !== 'object' || built === null)
    return now !== built;
  const all = keys ?? (Object.keys({ ...built, ...now }) as (keyof T)[]);
  return all.some((key) => now[key] !== built[key]);
}

/**
 * The content of a store; until hydration, what the page was built with. Redraws when the store
 * changes, or, with keys, when one of these does. It does so one task later, so that the worksheet
 * being typed in draws first.
 */
export function useStored<T>(store: Store<T>, built: T, keys?: readonly (keyof T)[]): T {
  const [, draw] = useState({});
  const read = useRef(false);
  const held = read.current ? store.get() : built;
  const drawn = useRef(held);
  drawn.current = held;
  // In the layout effect, so that no key press falls between the built page and the first read.
  useLayoutEffect(() => {
    read.current = true;
    // Do not draw twice if the store matches the page.
    if (differs(store.get(), built, keys)) draw({});
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = store.listen((now, before) => {
      if (keys && !keys.some((key) => now[key] !== before?.[key])) return;
      timer ??= setTimeout(() => {
        timer = undefined;
        if (drawn.current !== store.get()) draw({});
      });
    });
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, []);
  return held;
}
