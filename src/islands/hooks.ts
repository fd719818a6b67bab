import { useEffect, useRef, useState } from 'preact/hooks';
import type { Entries, KeptResults, System } from '../bench/entries.ts';
import { $entries, $kept, $units, $used } from '../bench/store.ts';
import { differs, useStored } from './use-stored.ts';

// The page was built with an empty bench in metric units. Until hydration each hook returns exactly
// that, so that the markup matches.
const nothing = {};

export const useEntries = (keys?: readonly string[]): Entries =>
  useStored<Entries>($entries, nothing, keys);
export const useKept = (keys?: readonly string[]): KeptResults =>
  useStored<KeptResults>($kept, nothing, keys);
export const useUsed = () => useStored<Readonly<Record<string, string>>>($used, nothing);
export const useUnits = (): System => useStored<System>($units, 'metric');

/**
 * Whether `useEntries` or `useKept` returned the empty bench of the built page although there is
 * more.
 */
export const isUnread = <T extends Entries | KeptResults>(
  bench: T,
  store: { get(): T },
  keys: readonly string[],
): boolean => bench === nothing && differs(store.get(), bench, keys);

/** Debounce times in ms: before a text is read out, and before typed input is judged. */
const [SETTLES, PAUSE] = [1000, 900];

/** The latest `text`, debounced; empty until it first changes. */
export function useSettled(text: string): string {
  const [settled, settle] = useState('');
  const first = useRef(text);
  useEffect(() => {
    if (text === first.current) return;
    first.current = '';
    const timer = setTimeout(() => settle(text), SETTLES);
    return () => clearTimeout(timer);
  }, [text]);
  return settled;
}

/**
 * Tracks which input is being typed in; redraws at each key press, and clears after a pause or on
 * blur.
 */
export function useTyping() {
  const [typed, setTyped] = useState<{ readonly input: string | undefined }>({ input: undefined });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const stop = () => {
    clearTimeout(timer.current);
    // Leaving a field in which nothing was typed must not redraw.
    setTyped((was) => (was.input === undefined ? was : { input: undefined }));
  };
  const start = (input: string) => {
    clearTimeout(timer.current);
    setTyped({ input });
    timer.current = setTimeout(stop, PAUSE);
  };
  return { input: typed.input, start, stop };
}
