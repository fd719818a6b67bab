import { useEffect, useRef, useState } from 'preact/hooks';
import type { Entries, KeptResults, System } from '../bench/entries.ts';
import { $entries, $kept, $units, $used } from '../bench/store.ts';
import { differs, useStored } from './use-stored.ts';

// The page was built with an empty bench in metric units. Each hook gives that back until the island
// has taken over, so that what is taken over is exactly what stands in the page.
const nothing = {};

export const useEntries = (keys?: readonly string[]): Entries =>
  useStored<Entries>($entries, nothing, keys);
export const useKept = (keys?: readonly string[]): KeptResults =>
  useStored<KeptResults>($kept, nothing, keys);
export const useUsed = () => useStored<Readonly<Record<string, string>>>($used, nothing);
export const useUnits = (): System => useStored<System>($units, 'metric');

/** Whether `useEntries` or `useKept` gave the empty bench the page was built with, and there is more. */
export const isUnread = <T extends Entries | KeptResults>(
  bench: T,
  store: { get(): T },
  keys: readonly string[],
): boolean => bench === nothing && differs(store.get(), bench, keys);

/** In ms without a change: then a text is read out, and what is typed in is looked at. */
const [SETTLES, PAUSE] = [1000, 900];

/** The latest `text`, a while after it last changed; empty until it first changes. */
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

/** Remembers which input is being typed in, draws at each key, and forgets it after a pause or when it is left. */
export function useTyping() {
  const [typed, setTyped] = useState<{ readonly input: string | undefined }>({ input: undefined });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const stop = () => {
    clearTimeout(timer.current);
    // Leaving a field that nothing was typed in draws nothing.
    setTyped((was) => (was.input === undefined ? was : { input: undefined }));
  };
  const start = (input: string) => {
    clearTimeout(timer.current);
    setTyped({ input });
    timer.current = setTimeout(stop, PAUSE);
  };
  return { input: typed.input, start, stop };
}
