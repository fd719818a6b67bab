import { persistentMap } from '@nanostores/persistent';
import { KEYS } from './storage.ts';
// Opens the reader's store before anything reads it.
import './store.ts';

/** Ticked lines of the check list, each with its day: tomorrow's batch starts with a fresh list. */
export const $ticks = persistentMap<Record<string, string>>(KEYS.ticks, {});
