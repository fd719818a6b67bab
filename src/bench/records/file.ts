import { type Entries, isRecord } from '../entries.ts';
import { LIMITS } from './limits.ts';
import { broughtUp, openRecord } from './migrate.ts';
import { type BatchRecord, type Photo, RECORD_VERSION } from './record.ts';
import { FORMAT, PHOTO_SCHEMA } from './schema.ts';
import { quoted, sift, soundFields, unknownValues, wholeWhy } from './sift.ts';
import type { Batches } from './to-file.ts';
import { faultsOf } from './validate.ts';

/** Larger files are not opened, bytes. */
export const LARGEST_FILE = 64 * 1024 * 1024;

export interface BroughtIn extends Batches {
  /** What in the file could not be used, or cannot be read as an amount, one sentence each. */
  readonly refused: readonly string[];
}

export type ReadFile =
  | { readonly ok: true; readonly file: BroughtIn }
  | { readonly ok: false; readonly why: string };

/**
 * Allowance for the rest of a file beside its batches, photos and bench, and for the commas between
 * them, in characters.
 */
const HEAD = 1000;
const sizeOf = (x: unknown) => new TextEncoder().encode(JSON.stringify([[x]], null, 1)).length;

/**
 * An export, in as many files as needed: none is larger than the limit for importing. The bench
 * goes into the first.
 */
export function partsOf(
  { batches, photos, ...bench }: Batches,
  most = LARGEST_FILE,
): readonly Batches[] {
  const own = new Map<string, Photo[]>(batches.map(({ id }) => [id, []]));
  for (const photo of photos) own.get(photo.batch)?.push(photo);
  const parts: { batches: BatchRecord[]; photos: Photo[] }[] = [{ batches: [], photos: [] }];
  let size = HEAD + sizeOf(bench);
  for (const batch of batches) {
    const pictures = own.get(batch.id)!;
    const more = [batch, ...pictures].reduce((sum, x) => sum + sizeOf(x), 0);
    const part = parts.at(-1)!;
    if (part.batches.length > 0 && (size + more > most || part.batches.length >= LIMITS.batches)) {
      parts.push({ batches: [batch], photos: [...pictures] });
      size = HEAD + more;
      continue;
    }
    part.batches.push(batch);
    part.photos.push(...pictures);
    size += more;
  }
  return parts.map((part, i) => (i === 0 ? { ...part, ...bench } : part));
}

const no = (why: string): ReadFile => ({
  ok: false,
  why: `This file was not used: ${why}. Your batches are as they were.`,
});

/**
 * A batch without a version takes the file's. If the file has none either, a batch with readings is
 * of the present version; any other is of version 0, which had no version number.
 */
function versioned(item: unknown, ofFile: unknown): unknown {
  if (!isRecord(item) || item.version !== undefined) return item;
  return { ...item, version: ofFile ?? (item.readings === undefined ? 0 : RECORD_VERSION) };
}

/** The name of a batch of any version, whatever the rest of it is like. */
function nameIn(item: unknown): string {
  const name = isRecord(item) ? (item.name ?? item.title) : '';
  return typeof name === 'string' && name.trim() ? `, “${name.slice(0, 60)}”` : '';
}

/** Whether a text that is not JSON is a table: its first line has several cells. */
function isTable(text: string): boolean {
  const start = text.replace(/^\ufeff/, '');
  const [line = ''] = start.slice(0, 4000).split(/[\r\n]/, 1);
  return !/^\s*[{[]/.test(start) && /^[^,;\t]*([,;\t])[^,;\t]*[,;\t]/.test(line);
}

/**
 * Reads a file of batches of any version. The whole file is refused if it is too large, not JSON or
 * in another format. A part of a batch, a batch or a photo that does not fit is left out and named.
 */
export function readFile(text: string): ReadFile {
  if (text.length > LARGEST_FILE)
    return no(`it is larger than ${LARGEST_FILE / 1024 / 1024} MB, the most that is opened`);
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    if (isTable(text))
      return no(
        'it is a table. Tables cannot be brought in, only the JSON file that was taken out',
      );
    return no('it is not JSON, or was cut short on the way');
  }
  if (!isRecord(file)) return no('it holds no batches');
  if (file.format !== FORMAT) return no('it is not a file of batches from this handbook');
  const version = file.version;
  if (typeof version === 'number' && version > RECORD_VERSION)
    return no(`it was made by a later version (${version}) of this handbook`);
  if (!Array.isArray(file.batches)) return no('it holds no list of batches');
  if (file.batches.length > LIMITS.batches)
    return no(`it holds more than ${LIMITS.batches} batches`);

  const refused: string[] = [];
  const batches = new Map<string, BatchRecord>();
  for (const [i, given] of file.batches.entries()) {
    const item = versioned(given, version);
    const left = [...unknownValues(item)];
    const which = `Batch ${i + 1} of the file${nameIn(item)}`;
    let why: string | undefined;
    const opened = openRecord(item, (whole) => {
      why = wholeWhy(whole);
      if (why) return whole;
      const found = sift(whole);
      left.push(...found.left);
      return found.record;
    });
    if (!opened.ok) refused.push(`${which} was left out whole: ${why ?? opened.why}.`);
    else if (batches.has(opened.record.id))
      refused.push(`${which} was left out whole: it has the same id as an earlier one.`);
    else {
      batches.set(opened.record.id, opened.record);
      refused.push(...left.map((why) => `${which}: ${why}`));
    }
  }
  const photos = readPhotos(file.photos, batches, refused);
  const { bench: lay = {}, kept: left = {} } = file;
  const old = file.bench && Number.isInteger(version) && Number(version) > 0;
  const laid = old ? broughtUp({ bench: lay, kept: left }, Number(version)) : file;
  const bench = readBench<Entries>('bench', laid.bench, refused);
  const kept = readBench<BatchRecord['kept']>('kept', laid.kept, refused);
  return {
    ok: true,
    file: {
      batches: [...batches.values()],
      photos,
      ...(bench && { bench }),
      ...(bench && kept && { kept }),
      refused,
    },
  };
}

function readPhotos(
  raw: unknown,
  batches: ReadonlyMap<string, BatchRecord>,
  refused: string[],
): Photo[] {
  if (raw === undefined) return [];
  if (!Array.isArray(raw)) {
    refused.push('The photos of the file are no list.');
    return [];
  }
  const photos = new Map<string, Photo>();
  for (const [i, item] of raw.entries()) {
    const owner = isRecord(item) ? batches.get(item.batch as string) : undefined;
    const which = `Photo ${i + 1} of the file${nameIn(owner)}`;
    const [fault] = faultsOf(item, PHOTO_SCHEMA);
    if (fault) {
      refused.push(`${which} was left out: ${photoWhy(item, fault.at)}.`);
      continue;
    }
    const photo = item as Photo;
    if (owner?.photos.some(({ id }) => id === photo.id))
      photos.set(`${photo.batch}/${photo.id}`, photo);
    else refused.push(`${which} was left out: it belongs to none of its batches.`);
  }
  return [...photos.values()];
}

/** Why a photo cannot be imported, in plain words, from its first faulty part. */
function photoWhy(item: unknown, at: string): string {
  const data = isRecord(item) && at === 'data' ? item.data : undefined;
  if (typeof data !== 'string') return 'it is not written as the format asks';
  return data.length > LIMITS.photo ? 'it is larger than 100 kB' : 'it is no JPEG';
}

function readBench<T>(part: 'bench' | 'kept', raw: unknown, refused: string[]): T | undefined {
  if (raw === undefined) return undefined;
  const { sound, lost } = isRecord(raw) ? soundFields(raw, part) : { sound: undefined, lost: [] };
  if (!sound || Object.keys(sound).length > LIMITS.benchEntries) {
    refused.push(`The bench of the file was left out: it is not written as the format asks.`);
    return undefined;
  }
  refused.push(
    ...lost.map(
      (key) =>
        `The bench of the file comes without ${quoted(key)}: not written as the format asks.`,
    ),
  );
  return sound as T;
}
