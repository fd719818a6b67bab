import { ended } from '../islands/ended.ts';
import { namesApart, type Source, shortName, sourceOf, sources } from './library.ts';

/**
 * The list of sources is too long for one page, so it is divided by the first letter of each
 * source's name in the text.
 */
const PARTS = ['a', 'b-d', 'e-i', 'j-o', 'p-z'] as const;
type Part = (typeof PARTS)[number];

function partOf(key: string, source: Source): Part {
  const letter = /[a-z]/.exec(shortName(source, key).normalize('NFD').toLowerCase())?.[0] ?? 'a';
  return PARTS.find((part) => letter <= part.at(-1)!) ?? 'p-z';
}

/**
 * The path of a source, below the base path. The error on an unknown key names the page that used
 * it.
 */
export const sourcePath = (key: string, where: string): string =>
  `sources/${partOf(key, sourceOf(key, where))}/#${key}`;

export interface SourcePage {
  readonly id: string;
  /** Its letters: `B to D`. */
  readonly name: string;
  readonly entries: readonly (readonly [string, Source])[];
}

/** The pages of the list, each in alphabetical order. */
export const sourcePages: readonly SourcePage[] = PARTS.map((id) => ({
  id,
  name: id.toUpperCase().replace('-', ' to '),
  entries: [...sources]
    .filter(([key, source]) => partOf(key, source) === id)
    .map(([key, source]) => ({ key, source, name: shortName(source, key) }))
    .sort(
      (a, b) =>
        a.name.localeCompare(b.name, 'en', { numeric: true }) ||
        a.source.title.localeCompare(b.source.title, 'en'),
    )
    .map(({ key, source }) => [key, source] as const),
}));

/**
 * Unique names for sources in a list of links. If the titles are the same too, the publication is
 * added.
 */
export const linkNames: ReadonlyMap<string, string> = (() => {
  const keys = [...sources.keys()];
  const names = namesApart(keys, 'sources/');
  return new Map(
    keys.map((key, i) => {
      const name = names[i]!;
      const alike = names.indexOf(name) !== names.lastIndexOf(name);
      return [key, alike ? `${name}, ${sources.get(key)!.in ?? ''}` : name];
    }),
  );
})();

/** A source as the list prints it, beginning with the name it is sorted by. */
export function entryOf(key: string, source: Source): string {
  const { by, title, year } = source;
  const dated = year ? ` (${year})` : '';
  const name = shortName(source, key).replace(/, (?:from memory|no source)$/, '');
  const known = name.replace(` ${year}`, '');
  if ((by ?? title).toLowerCase().startsWith(known.toLowerCase()))
    return by ? `${ended(`${by}${dated}`)} ${title}` : `${title}${dated}`;
  // A standard is listed by its number, and common practice by those words.
  const named = known.charAt(0).toUpperCase() + known.slice(1);
  const author = by && !known.startsWith(by) ? ` ${ended(by)}` : '';
  const rest = title.startsWith(known) ? title.slice(known.length).replace(/^[:,.]? */, '') : title;
  return `${named}${dated}.${author} ${rest}`;
}

export const standings: Readonly<Record<Source['standing'], string>> = {
  read: 'Read in the source or in a copy of it.',
  'read second-hand': 'Read in a text that reports it.',
  'from memory': 'From memory: not seen while this was written. Check it before you rest on it.',
  'common practice': 'Common practice, no source.',
};
