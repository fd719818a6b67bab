import { useStore } from '@nanostores/preact';
import type { MapStore } from 'nanostores';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Entries, KeptResults, System } from '../bench/entries.ts';
import { $learned, type LearnedSummary, NOTHING_LEARNED } from '../bench/learned.ts';
import { $entries, $kept, $units, $used } from '../bench/store.ts';

// The page was built with an empty bench in metric units. Each store gives that back until the
// island has taken over, so that what is taken over is exactly what stands in the page.
const nothing = {};

export const useEntries = (keys?: readonly string[]): Entries => useBench($entries, keys);
export const useKept = (keys?: readonly string[]): KeptResults => useBench($kept, keys);

/** Whether what these hooks gave is still the empty bench the page was built with. */
export const isUnread = (bench: Entries | KeptResults): boolean => bench === nothing;

/**
 * What lies on the bench; draws again when something under one of the keys changes, or anything without
 * keys. It does so a task later: the worksheet that is typed in has drawn by then, the others wait for it.
 */
function useBench<T extends object>(store: MapStore<T>, keys?: readonly string[]): T {
  const [read, setRead] = useState(false);
  const [, draw] = useState({});
  const bench = read ? store.get() : (nothing as T);
  const drawn = useRef(bench);
  drawn.current = bench;
  useEffect(() => {
    setRead(true);
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = store.listen((now, before) => {
      const changed = (key: string) => now[key as keyof T] !== before?.[key as keyof T];
      if (keys && !keys.some(changed)) return;
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
  return bench;
}

export const useUsed = (): Readonly<Record<string, string>> =>
  useStore($used, { ssr: () => nothing });
export const useUnits = (): System => useStore($units, { ssr: () => 'metric' as System });

export const useLearned = (): LearnedSummary => useStore($learned, { ssr: () => NOTHING_LEARNED });

/** The latest `text`, a while after it last changed; empty until it first changes. */
export function useSettled(text: string, wait = 1000): string {
  const [settled, settle] = useState('');
  const first = useRef(text);
  useEffect(() => {
    if (text === first.current) return;
    first.current = '';
    const timer = setTimeout(() => settle(text), wait);
    return () => clearTimeout(timer);
  }, [text, wait]);
  return settled;
}

/** Remembers which input is being typed in, draws at each key, and forgets it after a pause or when it is left. */
export function useTyping(pause = 900) {
  const [typed, setTyped] = useState<{ readonly input: string | undefined }>({ input: undefined });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const stop = () => {
    clearTimeout(timer.current);
    setTyped({ input: undefined });
  };
  const start = (input: string) => {
    clearTimeout(timer.current);
    setTyped({ input });
    timer.current = setTimeout(stop, pause);
  };
  return { input: typed.input, start, stop };
}
