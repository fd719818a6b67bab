import { z } from 'astro/zod';
import glossaryFile from '../../content/glossary.json';

const words = z.string().trim().min(1);
const standing = z.enum(['read', 'read second-hand', 'from memory', 'common practice']);
/** The properties of an entry in content/sources; no others are allowed. */
export const SOURCE = z.strictObject({
  title: words,
  by: words.optional(),
  year: z.int().optional(),
  in: words.optional(),
  standing,
  note: words.optional(),
});
const CAUTION = z.strictObject({
  title: words,
  /** The harm and the precaution in a line or two, shown beside a worksheet. */
  short: words,
  harm: words,
  precaution: words,
  first: words,
  decides: words,
  sources: z.array(words),
});
const TERM = z.strictObject({
  term: words,
  means: words,
  also: z.array(words).min(1).optional(),
  see: words.optional(),
});

export type Source = Readonly<z.infer<typeof SOURCE>>;
type Caution = Readonly<z.infer<typeof CAUTION>>;

/**
 * Validates an entry of a file in `content`. An invalid one fails the build, which names where it
 * is.
 */
export function checked<T>(form: z.ZodType<T>, entry: unknown, where: string): T {
  const found = form.safeParse(entry);
  if (found.success) return found.data;
  const wrong = found.error.issues.map(({ path, message }) =>
    [path.join('.'), message].filter(Boolean).join(': '),
  );
  throw new Error(`${where}: ${wrong.join('; ')}`);
}
const sourceFiles = import.meta.glob<Record<string, unknown>>('../../content/sources/*.json', {
  eager: true,
  import: 'default',
});
const cautionFiles = import.meta.glob<unknown>('../../content/cautions/*.json', {
  eager: true,
  import: 'default',
});

/** All entries by their key. Throws when two files claim the same key. */
export function byKey<Entry>(
  files: Readonly<Record<string, Readonly<Record<string, Entry>>>>,
): ReadonlyMap<string, Entry> {
  const all = new Map<string, Entry>();
  for (const [file, entries] of Object.entries(files))
    for (const [key, entry] of Object.entries(entries)) {
      if (all.has(key)) throw new Error(`${file}: source '${key}' is already defined elsewhere`);
      all.set(key, entry);
    }
  return all;
}

/** Every source by its key. */
export const sources: ReadonlyMap<string, Source> = new Map(
  [...byKey(sourceFiles)].map(([key, entry]) => [
    key,
    checked(SOURCE, entry, `content/sources, '${key}'`),
  ]),
);

/** Every caution by its id. */
export const cautions: ReadonlyMap<string, Caution> = new Map(
  Object.entries(cautionFiles).map(([file, entry]) => {
    const id = file.replace(/^.*\/|\.json$/g, '');
    return [id, checked(CAUTION, entry, `content/cautions/${id}.json`)];
  }),
);

export const terms = glossaryFile.map((entry, i) =>
  checked(TERM, entry, `content/glossary.json, '${entry.term ?? i}'`),
);

/** The source with this key; an unknown key fails the build and names the page that used it. */
export function sourceOf(key: string, where: string): Source {
  const source = sources.get(key);
  if (!source) throw new Error(`${where}: there is no source '${key}' in content/sources`);
  return source;
}

/** The caution with this id; an unknown id fails the build and names the page that used it. */
export function cautionOf(id: string, where: string): Caution {
  const caution = cautions.get(id);
  if (!caution) throw new Error(`${where}: there is no caution '${id}' in content/cautions`);
  for (const key of caution.sources) sourceOf(key, `content/cautions/${id}.json`);
  return caution;
}

const shown = new WeakMap<Request, Set<string>>();

/** The cautions shown so far on a page, identified by its request. */
export function shownOn(page: Request): Set<string> {
  const found = shown.get(page) ?? new Set();
  shown.set(page, found);
  return found;
}

/** Standards are known by their number, whoever wrote them: `astm-c138`, `aci-523-1r`. */
const STANDARD = /^(astm|aci|en|iso|din|is|api|asme|iapws|jcgm)-([a-z]?\d+[a-z]?(?:-\d+[a-z]?)*)/;

function designation([, body, number]: readonly string[]): string {
  const plain = `${body} ${number}`.toUpperCase();
  // ACI writes the number of a report as 523.1R, and the year after a hyphen: 229R-99.
  return body === 'aci' ? plain.replace(/-(?=\dR?\b)/, '.') : plain;
}

/** Whether a source goes by the number of a standard, which must not wrap. */
export const isStandard = (key: string): boolean => STANDARD.test(key);

/** A short name for a source in the text: `Tanaka 2001`. */
export function shortName(source: Source, key: string): string {
  if (source.standing === 'common practice') return 'common practice, no source';
  const standard = STANDARD.exec(key);
  const who = standard
    ? designation(standard)
    : (source.by?.split(/[,;]| and /)[0]?.trim() ?? source.title);
  const name = standard ? who : `${who}${source.year ? ` ${source.year}` : ''}`;
  return source.standing === 'from memory' ? `${name}, from memory` : name;
}

const MEMORY = /, from memory$/;

/**
 * A name with the title, for sources that share a short name: `OSHA: Compressed air in marine
 * terminals`.
 */
function titledName(source: Source, key: string): string {
  const { title, standing } = source;
  if (standing === 'common practice')
    return /common practice/i.test(title) ? title : `${title} (common practice, no source)`;
  const name = shortName(source, key).replace(MEMORY, '');
  return `${name}: ${title}${standing === 'from memory' ? ', from memory' : ''}`;
}

/** The short name of each source, with its title if two of these keys share the name. */
export function namesApart(keys: readonly string[], where: string): readonly string[] {
  const short = keys.map((key) => shortName(sourceOf(key, where), key));
  return short.map((name, i) =>
    short.indexOf(name) === short.lastIndexOf(name)
      ? name
      : titledName(sourceOf(keys[i]!, where), keys[i]!),
  );
}
