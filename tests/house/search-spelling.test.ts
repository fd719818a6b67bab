import { describe, expect, test } from 'vitest';
import { wordsIn } from '../../scripts/site/search.mjs';
import { nearest, respelt } from '../../src/components/site/search-spelling.ts';

/** The frequent first. */
const words = ['water', 'foam', 'density', 'cement', 'later', 'efflorescence', 'weight', 'lime'];

describe('a word that the handbook lacks', () => {
  test.each([
    ['densty', 'density'],
    ['desnity', 'density'],
    ['wieght', 'weight'],
    ['sement', 'cement'],
    ['eflorescense', 'efflorescence'],
  ])('%s is read as %s', (typed, read) => {
    expect(nearest(typed, words)).toBe(read);
  });

  test('is read as the more frequent of two as near', () => {
    expect(nearest('wafer', ['water', 'safer'])).toBe('water');
    expect(nearest('wafer', ['safer', 'water'])).toBe('safer');
  });

  test.each(['dinsety', 'xylophone', 'eflaroscense'])(
    '%s is left as it is where none is near enough',
    (typed) => {
      expect(nearest(typed, words)).toBeUndefined();
    },
  );

  test('a short word is left: one slip makes it another', () => {
    expect(nearest('lie', words)).toBeUndefined();
    expect(nearest('lame', words)).toBe('lime');
  });
});

test('a question keeps all that is known in it', () => {
  expect(respelt('Why is my foam densty so low?', ['densty'], words)).toBe(
    'Why is my foam density so low?',
  );
  expect(respelt('how much sement', ['sement'], words)).toBe('how much cement');
  expect(respelt('xylophone', ['xylophone'], words)).toBeUndefined();
});

test('the words of the pages are those a reader reads, the frequent first, a single one none', () => {
  const page =
    '<nav>menu menu menu</nav><main><p>Foam, foam &amp; “water”; wat<b>er</b></p><math>pqrs pqrs</math><p title="hidden hidden">FOAM once an an</p></main>';
  expect(wordsIn([page, '<main>water</main>'])).toEqual(['foam', 'water']);
});
