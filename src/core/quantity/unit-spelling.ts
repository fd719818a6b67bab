import { KINDS, type Kind, type Unit } from './kinds.ts';

/**
 * One spelling for every way of typing the same unit: `kg/m³`, `kg/m^3` and `kg per m3` agree, and
 * so do `W/(m·K)` and `W/(m K)`, and `gal (US)` and `US gal`. Case is kept, because it tells mPa
 * from MPa.
 * @source none: reading, by the spellings people type
 */
export function normalise(unit: string): string {
  return (
    unit
      .replace(/[º˚]/g, '°')
      .replace(/[′’‘`´]/g, "'")
      .replace(/[″”“]/g, '"')
      // Superscript and subscript digits become plain ones, ℃ becomes °C.
      .normalize('NFKC')
      .replace(/\u2212/g, '-')
      .replace(/μ/g, 'u')
      .replace(/[⁄∕]/g, '/')
      .replace(/\^|\*\*/g, '')
      .replace(/[()[\]·⋅∙•*]/g, ' ')
      .replace(/\bU\.\s*S\./gi, 'US')
      .replace(/\.(?=\s|$)/g, '')
      .replace(/\./g, ' ')
      .replace(/\bdeg(?:ree)?s?(?:\s+|(?=[CFde]H?\b)|$)/gi, '°')
      .replace(/°\s+/g, '°')
      .replace(/\s+as\s+/gi, ' ')
      .replace(/\s+per\s+/gi, '/')
      .replace(/\s*\/\s*/g, '/')
      .replace(/\s+/g, ' ')
      .trim()
      .replace(/^(.+) (US|UK|imp)$/i, '$2 $1')
  );
}

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit>;
  /** Case-insensitive; a spelling that two units share is left out. */
  readonly folded: ReadonlyMap<string, readonly { spelling: string; unit: Unit }[]>;
}

/** One or more words, which may be in the plural. */
const WORD = /^[a-z ]*[a-z]{3}$/;

/**
 * Every normalised spelling of a unit, words in the plural too. One with spaces may also be typed
 * without.
 * @source none: reading, by the spellings people type
 */
export function spellings(unit: Unit): string[] {
  const named = [unit.symbol, unit.id, ...unit.aliases].map(normalise);
  const all = [...named, ...named.filter((name) => WORD.test(name)).map((name) => `${name}s`)];
  const closed = all.map((spelling) => spelling.replace(/ /g, ''));
  // The id of a plain number is not a unit: nobody types it after a number.
  return [...new Set([...all, ...closed])].filter((spelling) => spelling && spelling !== '1');
}

const tables = new Map<Kind, Spellings>();

function table(kind: Kind): Spellings {
  const known = tables.get(kind);
  if (known) return known;
  const exact = new Map<string, Unit>();
  const folded = new Map<string, { spelling: string; unit: Unit }[]>();
  for (const unit of KINDS[kind].units)
    for (const spelling of spellings(unit)) {
      exact.set(spelling, unit);
      const key = spelling.toLowerCase();
      folded.set(key, [...(folded.get(key) ?? []), { spelling, unit }]);
    }
  const made = { exact, folded };
  tables.set(kind, made);
  return made;
}

/** A correct symbol with the prefix milli or mega, which differ only in case. */
const PREFIXED = /^[mM](?:Pa|mol|bar|[gLlJWNm])(?![a-z])/;

function foldedUnit(kind: Kind, typed: string): Unit | undefined {
  const found = (table(kind).folded.get(typed.toLowerCase()) ?? []).filter(
    ({ spelling }) => !(PREFIXED.test(typed) && spelling[0] !== typed[0]),
  );
  const units = new Set(found.map(({ unit }) => unit));
  return units.size === 1 ? found[0]!.unit : undefined;
}

/** No unit is longer, so a pasted page is not searched for one. */
export const LONGEST = 60;

/**
 * The unit of `kind` that a reader typed. An exact spelling wins, in this kind and then in others
 * (`°F` after a hardness is a temperature, so no unit of this kind). After that case is ignored,
 * unless that would turn milli into mega or match two units. `°f` after a hardness is the French
 * degree, from memory. No range: any text.
 * @source si-brochure 3 (case tells the prefixes milli and mega apart)
 */
export function findUnit(text: string, kind: Kind): Unit | undefined {
  if (text.length > LONGEST) return undefined;
  const typed = normalise(text);
  // In France a degree of hardness is `°f`; behind a temperature it is Fahrenheit's.
  if (typed === '°f' && kind === 'hardness') return table(kind).exact.get('°fH');
  const searches: ((kind: Kind) => Unit | undefined)[] = [
    (k) => table(k).exact.get(typed),
    (k) => foldedUnit(k, typed),
  ];
  for (const search of searches)
    for (const candidate of [kind, ...(Object.keys(KINDS) as Kind[])]) {
      const unit = search(candidate);
      if (unit) return candidate === kind ? unit : undefined;
    }
  return undefined;
}
