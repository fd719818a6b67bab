import { readingValue } from '../../../bench/records/reading-value.ts';
import { canBe, READINGS, type ReadingName, type Stage } from '../../../bench/records/readings.ts';
import { type BatchRecord, type Correction, stageOf } from '../../../bench/records/record.ts';
import { fromUnit } from '../../../core/quantity/convert.ts';
import { refused } from '../../../islands/engine/problems.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { dayInWords } from '../../shared/time/moments.ts';
import { ADDED_FOAM } from '../../shared/words/amounts.ts';

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  mixed: 'Mixed',
  cast: 'Cast',
  cured: 'Cured',
  stripped: 'Stripped',
  dried: 'Weighed dry',
  tested: 'Tested',
};

/** The name of a batch, or its day; marked as invented, however it was renamed. */
export function nameOf(record: BatchRecord): string {
  const name = record.name || `Batch of ${dayInWords(record.date)}`;
  return record.invented && !/invented/i.test(name) ? `${name} (invented)` : name;
}

/** The most names in one sentence. */
export const MOST_NAMES = 6;

/** The names of batches; of many the first ones, and how many more. */
export const namesInWords = (names: readonly string[]): string =>
  `${names
    .slice(0, MOST_NAMES)
    .map((name) => `“${name}”`)
    .join(', ')}${names.length > MOST_NAMES ? ` and ${names.length - MOST_NAMES} more` : ''}`;

/**
 * How far a batch has come, with its day: called cast only once something of the casting is written
 * down.
 */
export function progressOf(record: BatchRecord): string {
  const stage = stageOf(record);
  const day = dayInWords(record.date);
  if (stage === undefined) return `${day}, not mixed yet`;
  if (stage === 'cast') return `cast ${day}`;
  return `${stage === 'mixed' ? '' : 'cast '}${day}, ${STAGE_NAMES[stage].toLowerCase()}`;
}

/** The corrections of a batch in order, each with the density weighed and the amount added. */
export const correctionWords = ({ corrections }: BatchRecord, say: Say): string =>
  corrections.map((made) => oneCorrection(made, say)).join('; ');

/** One correction in words. */
export function oneCorrection({ weighed, out, foam, base }: Correction, say: Say): string {
  const mix = weighed ? say(weighed, 'density') : 'density not known';
  const density = out ? `${mix}, ${say(out, 'mass', { significant: 2 })} taken out` : mix;
  if (foam !== undefined)
    return `${density}, then ${say(foam, 'volume', { units: ADDED_FOAM, significant: 2 })} of foam added`;
  if (base === undefined) return density;
  return `${density}, then ${say(base, 'mass', { significant: 2 })} of base mix added`;
}

/** The names of the quantities of a correction that core may refuse. */
export const OF_CORRECTION: Readonly<Record<string, string>> = {
  takenOut: 'Mix taken out',
  weighedBefore: 'Wet density before a correction',
};

/** The words for a dry state, by how the piece was dried. */
export const dryWords = (dried: string | undefined): string =>
  dried === 'oven' ? 'oven-dry' : dried === 'air' ? 'air-dry' : 'dry state not written down';

/** A full bucket that is no heavier than the empty one, in a sentence. */
export function belowTare(
  label: string,
  full: number | undefined,
  tare: number | undefined,
  say: Say,
): string | undefined {
  if (full === undefined || tare === undefined || full > tare) return undefined;
  const mass = (si: number) => say(si, 'mass', { plain: true });
  return `${label}: read ${mass(full)}; it must be more than the bucket weighs empty, ${mass(tare)}.`;
}

/**
 * The wet density of the blend, kg/m³; undefined until its bucket is weighed with a possible
 * result.
 */
export function blendDensity(at: (name: ReadingName) => number | undefined): number | undefined {
  const [tare, full, vessel] = [at('tare'), at('full'), at('vessel')];
  return tare !== undefined && full !== undefined && full > tare && vessel
    ? (full - tare) / vessel
    : undefined;
}

const blended = (record: BatchRecord) => blendDensity((name) => readingValue(record, name));

/** The same of a saved batch, as last weighed; undefined also for a density that no mix has. */
export function weighedDensity(record: BatchRecord): number | undefined {
  const wet = blended(record);
  return wet !== undefined && canBe(READINGS.planned, wet) ? wet : undefined;
}

/** A sentence about a bucket whose readings give a density that no mix has. */
export function noSuchMix(record: BatchRecord, say: Say): string | undefined {
  const value = blended(record);
  if (value === undefined || canBe(READINGS.planned, value)) return undefined;
  const { kind, unit, from, to } = READINGS.planned;
  const allowed = { min: fromUnit(from, kind, unit), max: fromUnit(to, kind, unit) };
  return `${refused({ quantity: 'Wet density', value, kind, allowed }, undefined, say)} Look at the bucket’s weights, its volume and their units.`;
}

/** Wet density as first weighed, kg/m³, before any correction; undefined if not known. */
export const landedDensity = (record: BatchRecord): number | undefined =>
  (record.corrections[0]?.weighed ?? weighedDensity(record)) || undefined;
