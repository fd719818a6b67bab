import { useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Store<T> {
  get(): T;
  listen(hear: (now: T, before?: T) => void): () => void;
}

/** Whether a store holds something else than the page was built with, under any of the keys. */
export function differs<T>(now: T, built: T, keys?: readonly (keyof T)[]): boolean {
  if (typeof now !== 'object' || now === null || typeof built !== 'object' || built === null)
    return now !== built;
  const all = keys ?? (Object.keys({ ...built, ...now }) as (keyof T)[]);
  return all.some((key) => now[key] !== built[key]);
}

/**
 * What a store holds, and what the page was built with until the island has taken over; draws again when it changes, or, with keys, when something under one of them does.
 * It does so a task later: the worksheet that is typed in has drawn by then, the others wait for it.
 */
export function useStored<T>(store: Store<T>, built: T, keys?: readonly (keyof T)[]): T {
  const [, draw] = useState({});
  const read = useRef(false);
  const held = read.current ? store.get() : built;
  const drawn = useRef(held);
  drawn.current = held;
  // With the drawing, so that no key falls between what was built and what was read.
  useLayoutEffect(() => {
    read.current = true;
    // What holds nothing else than the page does is not drawn twice.
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
