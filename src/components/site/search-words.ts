/** Words that say nothing about the subject of a question. */
const IDLE = new Set(
  `a about after again all also am an and any are as at be been before but by came can cannot come
  could did do does doing each for from get gets getting got had has have having how i if in into is
  it its just like make many me much my no not of off on one or our please should so some something
  than that the their them then there these they this those to up use used using was we went were what when
  where which while who whose why will with without would you your
  arent cant didnt doesnt dont hasnt havent isnt wasnt wont wouldnt keep keeps kept still want wants
  need needs`.split(/\s+/),
);

/** American spellings and the British ones that the text uses; sulfur is spelt as chemists do. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/^demold/, 'demould'],
  [/^unmold/, 'demould'],
  [/^mold/, 'mould'],
  [/^fiber/, 'fibre'],
  [/^(col|od|vap|harb|fav|lab(?!orat))or/, '$1our'],
  [/^((?:milli|kilo)?)liter/, '$1litre'],
  [/^(centi|milli|kilo)meter(s?)$/, '$1metre$2'],
  [/^center/, 'centre'],
  [/^gray/, 'grey'],
  [/^aluminum/, 'aluminium'],
  [/^sulph/, 'sulf'],
  [/^plow/, 'plough'],
  [/^(.{3,})iz(e[ds]?|ing|er|ers|ation)$/, '$1is$2'],
  [/^(.{3,})yz(e[ds]?|ing)$/, '$1ys$2'],
];

/**
 * Synonyms among units and makers' words; any member of a family stands for all. Do not add a word
 * that no page holds: the index would answer it with pages whose words begin alike. Make it a
 * keyword of its page instead.
 */
const FAMILIES: readonly (readonly string[])[] = [
  ['gallon', 'gallons', 'gal'],
  ['pound', 'pounds', 'lb', 'lbs'],
  ['lb/ft³', 'lb/ft3', 'pcf'],
  ['kg/m³', 'kg/m3'],
  ['yard', 'yd³', 'yd3'],
  ['gpg', 'grains'],
  ['glycerol', 'glycerine', 'glycerin'],
  ['smell', 'smells', 'odour', 'stink', 'stinks'],
  ['sink', 'sank', 'sunk', 'sinks', 'sinking'],
  ['break', 'broke', 'broken', 'snapped'],
  ['freeze', 'froze', 'frozen', 'frost'],
  ['burn', 'burns', 'burnt', 'burned', 'burning'],
  ['stick', 'sticks', 'stuck', 'sticking'],
  ['collapse', 'collapsed', 'collapses', 'collapsing'],
  ['crack', 'cracks', 'cracked', 'cracking'],
  ['drain', 'drains', 'drained', 'draining', 'drainage'],
  ['bulge', 'bulges', 'bulged', 'bulging'],
  ['weigh', 'weighs', 'weighed', 'weighing'],
  ['mould', 'moulds', 'form', 'forms'],
  ['strip', 'strips', 'stripped', 'stripping', 'demould', 'demoulding', 'demoulded'],
  ['efflorescence', 'crust'],
  ['suds', 'lather'],
  ['dose', 'dosage'],
  // The unit, or the instrument that measures.
  ['metre', 'metres', 'meter', 'meters'],
];

export const inBritish = (word: string) =>
  SPELLINGS.reduce((text, [american, british]) => text.replace(american, british), word);

/** The question in lower case, as words. */
export const plain = (asked: string): readonly string[] =>
  asked
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/(\d)\s+%/g, '$1%')
    .split(/[^\p{L}\p{N}/°³²%.:-]+/u)
    .map((word) => word.replace(/^[-.:/]+|[-.:/]+$/g, ''))
    .filter(Boolean);

/**
 * The significant words of a question, each with its synonyms. A number counts only if there is
 * nothing else: too many pages hold it.
 */
export function wordsOf(asked: string): readonly (readonly string[])[] {
  const all = plain(asked);
  const telling = all.filter((word) => !IDLE.has(word));
  const words = telling.filter((word) => /\p{L}/u.test(word));
  const kept = words.length > 0 ? words : telling.length > 0 ? telling : all;
  return [...new Set(kept.map(inBritish))].map((word) => {
    const family = FAMILIES.find((names) => names.includes(word)) ?? [];
    return [...new Set([word, ...family])];
  });
}

/**
 * The last letter a word shares with its inflections, doubled or not, and the endings that may
 * follow.
 */
const ENDING =
  /^(.)(\1?(e?s|e?d|en|i?ers?|i?est|ors?|ures?|ings?|y|ly|ies|ied|i?al|ally|ate[ds]?|ating|ations?|ions?|ity|i?ties|ments?|ness|ful|[ai]ble|[ai]bility|ive|ic|an[ct]e?|en[ct]e?)|e)?$/;

/**
 * Whether a word from the index is the one asked for, begins with it, or differs from it only in
 * its ending. The index answers an unknown word with one that merely begins alike: “per” for
 * “perlite”.
 */
export function isMeant(word: string, found: string): boolean {
  const bare = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
  const wanted = bare(word);
  const parts = [found, ...found.split(/[^\p{L}\p{N}]+|(?<=\p{Ll})(?=\p{Lu})/u)].map(bare);
  return parts.some((part) => {
    if (part.startsWith(wanted)) return true;
    for (let last = 1; part.startsWith(wanted.slice(0, last + 1)); last++)
      if (ENDING.test(wanted.slice(last)) && ENDING.test(part.slice(last))) return true;
    return false;
  });
}
