import { persistentAtom } from '@nanostores/persistent';
import { type Entry, isEntry, isRecord } from './entries.ts';
import { localStore } from './local-store.ts';
import type { Correction } from './records/record.ts';
import { type Begun, isBegun } from './shapes.ts';
import { decode, KEYS } from './storage.ts';
// Opens the reader's store before anything reads it.
import './store.ts';

/** What one load of a batch is weighed by. */
export interface RunPlan {
  /** One load of the mixer: kg, m³. */
  readonly cement: number;
  readonly water: number;
  readonly sand: number;
  /** The sand is weighed damp; its water is deducted from the water to pour. */
  readonly damp?: boolean;
  /** Cement and its substitutes, kg; absent for cement alone. */
  readonly binder?: number;
  /** Other additions, kg each, that no step asks for; absent if none. */
  readonly other?: readonly { readonly name: string; readonly mass: number }[];
  readonly foamVolume: number;
  /** kg/m³ */
  readonly wetDensity: number;
  readonly baseDensity: number;
  readonly foamDensity: number;
  readonly loads: number;
  /** The most the mixer takes, m³. */
  readonly largestLoad: number;
  /**
   * The volume of the forms of all loads, and of one form if they are alike, m³; absent if a volume
   * was typed.
   */
  readonly forms?: number;
  readonly form?: number;
  /**
   * For several sizes: what the number of loads must divide, so that each piece is filled from one
   * load.
   */
  readonly evenLoads?: number;
  /** What the largest of several sizes holds, m³. */
  readonly largest?: number;
  /** The foaming solution for all loads, with waste, m³; absent if unknown. */
  readonly solution?: number;
  /** How much to make was typed. */
  readonly typed?: true;
  /** Nothing in it is the reader's own. */
  readonly example: boolean;
  /** How much it makes is still the invented example's, or rests on it. */
  readonly unsized?: true;
  /** Its wet density is the reader's target. */
  readonly aimed?: boolean;
}

/** What a correction changed in its batch, so that it can be undone. */
export interface Correcting {
  readonly name: 'foamAdded' | 'baseAdded';
  /** The correction as recorded, and the sum of what had been added by then. */
  readonly made?: Correction;
  readonly sum?: Entry;
  /** What was recorded there before; absent for nothing. */
  readonly before?: Entry;
  /** The weighing that called for it. */
  readonly full?: Entry;
  /**
   * Mix was taken out for it and is left over: what was recorded as left over before, and what was
   * recorded then.
   */
  readonly out?: { readonly before?: Entry; readonly wrote?: Entry };
}

/** The vessel of the foam: empty weight and volume. */
export interface FoamIn {
  readonly tare?: Entry;
  readonly vessel?: Entry;
}

/** What a batch is told of the one before it at the bench, the same day. */
export interface LoadBefore {
  readonly name: string;
  /** What its blend was weighed in. */
  readonly vessel: FoamIn;
  /** The reader's own amounts it was begun by. */
  readonly plan?: RunPlan;
}

/** The batch being run at the bench, and how far it has come. */
export interface Going extends Begun {
  /** When it was begun, ms. A foam clock started earlier belongs to another batch. */
  readonly begun?: number;
  /** Stopped; may be resumed. */
  readonly stopped?: true;
  /** The last correction, until it is undone. */
  readonly undo?: Correcting;
  /** The bucket full of its foam. The one on the bench may be another batch’s. */
  readonly foam?: Entry;
  /** The foam put in, by weight, while its volume follows from that. */
  readonly foamMass?: Entry;
  /**
   * What that foam was weighed in, once either was typed. The mix may be weighed in another vessel.
   */
  readonly foamIn?: FoamIn;
  /** The amounts it is weighed by. Later changes on the bench belong to another batch. */
  readonly plan?: RunPlan;
  readonly before?: LoadBefore;
}

const AMOUNTS = [
  'cement',
  'water',
  'sand',
  'foamVolume',
  'wetDensity',
  'baseDensity',
  'foamDensity',
  'loads',
  'largestLoad',
] as const satisfies readonly (keyof RunPlan)[];

const isPlan = (x: Partial<RunPlan>) =>
  AMOUNTS.every((name) => Number.isFinite(x[name])) &&
  [x.binder, x.forms, x.form, x.evenLoads, x.largest, x.solution].every(
    (it) => it === undefined || Number.isFinite(it),
  ) &&
  (x.other === undefined || (Array.isArray(x.other) && x.other.every(isPart)));

const isPart = (x: unknown) => isRecord(x) && typeof x.name === 'string' && Number.isFinite(x.mass);

const isCorrecting = (x: Partial<Correcting>) =>
  (x.name === 'foamAdded' || x.name === 'baseAdded') &&
  [x.sum, x.before, x.full, x.out?.before, x.out?.wrote].every(
    (entry) => entry === undefined || isEntry(entry),
  );

const isFoamIn = (x: unknown): x is FoamIn =>
  isRecord(x) &&
  Object.entries(x).every(
    ([name, entry]) => ['tare', 'vessel'].includes(name) && isEntry(entry, false),
  );

const isBefore = (x: unknown) =>
  isRecord(x) &&
  typeof x.name === 'string' &&
  isFoamIn(x.vessel) &&
  (x.plan === undefined || (isRecord(x.plan) && isPlan(x.plan)));

/** Parses a stored run, without the parts that cannot be read. */
function readGoing(stored: unknown): Going | undefined {
  if (!isBegun(stored)) return undefined;
  const { id, step, begun, stopped, undo, foam, foamMass, foamIn, plan, before } = stored as Going;
  return {
    id,
    step,
    ...(typeof begun === 'number' && { begun }),
    ...(stopped === true && { stopped }),
    ...(undo && isCorrecting(undo) && { undo }),
    ...(foam && isEntry(foam) && { foam }),
    ...(foamMass && isEntry(foamMass) && { foamMass }),
    ...(isFoamIn(foamIn) && { foamIn }),
    ...(plan && isPlan(plan) && { plan }),
    ...(isBefore(before) && { before }),
  };
}

/** Parses stored text that may be damaged. */
const parsed = (text: string): unknown => decode(text, (_): _ is unknown => true);

/** The run in progress, shared by all tabs: there is one bench. */
export const $going = persistentAtom<Going | undefined>(KEYS.run, undefined, {
  encode: (going) => JSON.stringify(going),
  decode: (text) => readGoing(parsed(text)),
});

/**
 * Whether the browser has stored the run as it stands. If not, only its record survives leaving the
 * page.
 */
export const isRunKept = (store = localStore()): boolean => store?.getItem(KEYS.run) != null;

/** The maximum number of stopped runs to offer. */
const MOST_LEFT = 3;

/** The runs that were stopped for another batch, the latest first. */
export const $left = persistentAtom<readonly Going[]>(KEYS.left, [], {
  encode: (left) => JSON.stringify(left),
  decode: (text) => {
    const left = parsed(text);
    return (Array.isArray(left) ? left : []).flatMap((one) => readGoing(one) ?? []);
  },
});

/** Begins or resumes a batch; the one stopped for it is left as it is. */
export function runInstead(next: Going): void {
  const now = $going.get();
  const all = [...(now ? [now] : []), ...$left.get()];
  const others = all.filter(({ id }, i) => id !== next.id && (i === 0 || id !== now?.id));
  $left.set(others.slice(0, MOST_LEFT));
  $going.set(next);
}
