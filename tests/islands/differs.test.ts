import { describe, expect, test } from 'vitest';
import { differs } from '~/islands/use-stored.ts';

interface Bench {
  readonly [key: string]: object | undefined;
}
const reading = {};
const none: Bench = {};

describe('a store and what the page was built with', () => {
  test('differ by what lies under a key that is asked for', () => {
    expect(differs<Bench>({ 'foam.full': reading }, none, ['foam.full'])).toBe(true);
    expect(differs<Bench>({ 'foam.full': reading }, none, ['mix.target'])).toBe(false);
  });

  test('differ by any key where none is asked for, one taken off too', () => {
    expect(differs<Bench>({}, none)).toBe(false);
    expect(differs<Bench>({ 'foam.full': reading }, none)).toBe(true);
    expect(differs<Bench>({}, { 'foam.full': reading })).toBe(true);
    expect(differs<Bench>({ 'foam.full': reading }, { 'foam.full': reading })).toBe(false);
  });

  test('differ by value where they hold no keys', () => {
    expect(differs('us', 'metric')).toBe(true);
    expect(differs('us', 'us')).toBe(false);
    expect(differs<Bench | undefined>(undefined, undefined)).toBe(false);
    expect(differs<Bench | undefined>({}, undefined)).toBe(true);
    expect(differs<Bench | undefined>(undefined, {})).toBe(true);
  });
});
