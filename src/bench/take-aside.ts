import { localStore } from './local-store.ts';
import { KEYS } from './storage.ts';
import { takeOut } from './take-out.ts';

/** Downloads everything that could not be read, as stored, under its original keys. */
export function takeAside(store = localStore()): void {
  const aside = Object.entries({ ...store }).filter(([key]) => key.startsWith(KEYS.aside));
  const found = aside.map(([key, text]) => [key.slice(KEYS.aside.length), text]);
  takeOut('set-aside.json', JSON.stringify(Object.fromEntries(found), null, 2), 'application/json');
}
