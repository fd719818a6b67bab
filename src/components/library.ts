import glossaryFile from '../../content/glossary.json';

export interface Source {
  readonly title: string;
  readonly by?: string;
  readonly year?: number;
  readonly in?: string;
  readonly standing: 'read' | 'read second-hand' | 'from memory' | 'common practice';
  readonly note?: string;
}

export interface Caution {
  readonly title: string;
  /** The harm and the precaution in a line or two, for beside a worksheet. */
  readonly short: string;
  readonly harm: string;
  readonly precaution: string;
  readonly first: string;
  readonly decides: string;
  readonly sources: readonly string[];
}

export interface Term {
  readonly term: string;
  readonly means: string;
  readonly also?: readonly string[];
  readonly see?: string;
}

const sourceFiles = import.meta.glob<Record<string, Source>>('../../content/sources/*.json', {
  eager: true,
  import: 'default',
});
const cautionFiles = import.meta.glob<Caution>('../../content/cautions/*.json', {
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
export const sources = byKey(sourceFiles);

const cautions: ReadonlyMap<string, Caution> = new Map(
  Object.entries(cautionFiles).map(([file, caution]) => [
    file.replace(/^.*\/|\.json$/g, ''),
    caution,
  ]),
);

export const terms = glossaryFile as readonly Term[];

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

/** The cautions that a page, known by its request, has shown so far. */
export function shownOn(page: Request): Set<string> {
  const found = shown.get(page) ?? new Set();
  shown.set(page, found);
  return found;
}

/** Standards are known by their number, whoever wrote them: `astm-c138`, `aci-523-1r`. */
const STANDARD = /^(astm|aci|en|iso|din|is|api|asme|iapws|jcgm)-([a-z]?\d+[a-z]?(?:-\d+[a-z]?)*)/;

function designation([, body, number]: readonly string[]): string {
  const plain = `${body} ${number}`.toUpperCase();
  // ACI numbers its reports 523.1R and adds a year behind a hyphen: 229R-99.
  return body === 'aci' ? plain.replace(/-(?=\dR?\b)/, '.') : plain;
}

/** Whether a source goes by the number of a standard, which stays on one line. */
export const isStandard = (key: string): boolean => STANDARD.test(key);

/** A short way to name a source in the text: `Tanaka 2001`. */
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

/** A name that tells a source from another of the same short name: `OSHA: Compressed air in marine terminals`. */
function titledName(source: Source, key: string): string {
  const { title, standing } = source;
  if (standing === 'common practice')
    return /common practice/i.test(title) ? title : `${title} (common practice, no source)`;
  const name = shortName(source, key).replace(MEMORY, '');
  return `${name}: ${title}${standing === 'from memory' ? ', from memory' : ''}`;
}

/** Each source by its short name, and by its title too where two of these keys share that. */
export function namesApart(keys: readonly string[], where: string): readonly string[] {
  const short = keys.map((key) => shortName(sourceOf(key, where), key));
  return short.map((name, i) =>
    short.indexOf(name) === short.lastIndexOf(name)
      ? name
      : titledName(sourceOf(keys[i]!, where), keys[i]!),
  );
}
