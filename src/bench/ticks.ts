import { persistentMap } from '@nanostores/persistent';
import { KEYS } from './storage.ts';
// It opens the reader's store before anything reads it.
import './store.ts';

/** Lines ticked on the check list, each with the day it was ticked: tomorrow's batch begins anew. */
export const $ticks = persistentMap<Record<string, string>>(KEYS.ticks, {});
