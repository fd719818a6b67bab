import { type Source, sourceOf, sources } from './library.ts';

/** The list of sources is too long for one page: it is cut by the first letter of who wrote each. */
const PARTS = ['a', 'b-d', 'e-i', 'j-o', 'p-z'] as const;
type Part = (typeof PARTS)[number];

/** What a source is listed under: who wrote it, or its title. */
const listedUnder = ({ by, title }: Source) => `${by ?? title} ${title}`;

function partOf(source: Source): Part {
  const letter = /[a-z]/.exec(listedUnder(source).normalize('NFD').toLowerCase())?.[0] ?? 'a';
  return PARTS.find((part) => letter <= part.at(-1)!) ?? 'p-z';
}

/** Where a source stands, below the base path; an unknown key names the page that used it. */
export const sourcePath = (key: string, where: string): string =>
  `sources/${partOf(sourceOf(key, where))}/#${key}`;

export interface SourcePage {
  readonly id: string;
  /** The letters it holds: `B to D`. */
  readonly name: string;
  readonly entries: readonly (readonly [string, Source])[];
}

/** The pages of the list, each in the order of the alphabet. */
export const sourcePages: readonly SourcePage[] = PARTS.map((id) => ({
  id,
  name: id.toUpperCase().replace('-', ' to '),
  entries: [...sources]
    .filter(([, source]) => partOf(source) === id)
    .sort(([, a], [, b]) => listedUnder(a).localeCompare(listedUnder(b), 'en')),
}));

export const standings: Readonly<Record<Source['standing'], string>> = {
  read: 'Read in the source or in a copy of it.',
  'read second-hand': 'Read in a text that reports it.',
  'from memory': 'From memory: not seen while this was written. Check it before you rest on it.',
  'common practice': 'Common practice, no source.',
};
