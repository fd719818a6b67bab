import { useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Store<T> {
  get(): T;
  listen(hear: (now: T, before?: T) => void): () => void;
}

/**
 * What a store holds, and what the page was built with until the island has taken over; draws again when it changes, or, with keys, when something under one of them does.
 * It does so a task later: the worksheet that is typed in has drawn by then, the others wait for it.
 */
export function useStored<T>(store: Store<T>, built: T, keys?: readonly (keyof T)[]): T {
  const [read, setRead] = useState(false);
  const [, draw] = useState({});
  const held = read ? store.get() : built;
  const drawn = useRef(held);
  drawn.current = held;
  // With the drawing, so that no key falls between what was built and what was read.
  useLayoutEffect(() => {
    setRead(true);
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
