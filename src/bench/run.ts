import { persistentAtom } from '@nanostores/persistent';
import { type Entry, isEntry, isRecord } from './entries.ts';
import { localStore } from './local-store.ts';
import type { Correction } from './records/record.ts';
import { type Begun, isBegun } from './shapes.ts';
import { decode, KEYS } from './storage.ts';
// It opens the reader's store before anything reads it.
import './store.ts';

/** What one load of a batch is weighed by. */
export interface RunPlan {
  /** One load of the mixer: kg, m³. */
  readonly cement: number;
  readonly water: number;
  readonly sand: number;
  /** The sand is weighed as damp as it lies, its water taken off what is poured. */
  readonly damp?: boolean;
  /** Cement and what stands in for it, kg; absent for cement alone. */
  readonly binder?: number;
  /** What else goes in, kg each, which no step asks for; absent for nothing. */
  readonly other?: readonly { readonly name: string; readonly mass: number }[];
  readonly foamVolume: number;
  /** kg/m³ */
  readonly wetDensity: number;
  readonly baseDensity: number;
  readonly foamDensity: number;
  readonly loads: number;
  /** The most the mixer takes, m³. */
  readonly largestLoad: number;
  /** What the forms of all loads hold, and one of them where they are alike, m³; absent where a volume was typed. */
  readonly forms?: number;
  readonly form?: number;
  /** Of several sizes: what the loads must divide for each piece to be filled from one. */
  readonly evenLoads?: number;
  /** The foaming solution for all loads, with what is wasted, m³; absent where it is not known. */
  readonly solution?: number;
  /** How much to make was typed. */
  readonly typed?: true;
  /** Nothing of it is the reader's own. */
  readonly example: boolean;
  /** How much it makes is still the invented example's, or rests on it. */
  readonly unsized?: true;
  /** Its wet density is what the reader aimed at. */
  readonly aimed?: boolean;
}

/** What a correction changed in its batch, for when it was not made after all. */
export interface Correcting {
  readonly name: 'foamAdded' | 'baseAdded';
  /** The correction as it was written down, and the sum of what was added by then. */
  readonly made?: Correction;
  readonly sum?: Entry;
  /** What was written there before; absent for nothing. */
  readonly before?: Entry;
  /** The weighing that asked for it. */
  readonly full?: Entry;
  /** Some of the mix was taken out for it, and is left over: what was left over before, and what was written then. */
  readonly out?: { readonly before?: Entry; readonly wrote?: Entry };
}

/** The vessel of the foam: empty, and its volume. */
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

/** The batch that is run at the bench, and how far it has come. */
export interface Going extends Begun {
  /** When it was begun, ms: a foam clock started before that is another batch's. */
  readonly begun?: number;
  /** Left, and may be gone on with. */
  readonly stopped?: true;
  /** The last correction, until it is taken back. */
  readonly undo?: Correcting;
  /** The bucket full of its foam: the one on the bench may be another batch’s. */
  readonly foam?: Entry;
  /** The foam put in, by weight, while its volume comes of that. */
  readonly foamMass?: Entry;
  /** What that foam was weighed in, once either was typed: the blend may be weighed in another. */
  readonly foamIn?: FoamIn;
  /** The amounts it is weighed by: what changes on the bench from then on is another batch’s. */
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
  [x.binder, x.forms, x.form, x.evenLoads, x.solution].every(
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

/** What is stored of a run, without what of it cannot be read. */
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

/** Text of the store that may be torn. */
const parsed = (text: string): unknown => decode(text, (_): _ is unknown => true);

/** The run that is going, in all tabs: there is one bench. */
export const $going = persistentAtom<Going | undefined>(KEYS.run, undefined, {
  encode: (going) => JSON.stringify(going),
  decode: (text) => readGoing(parsed(text)),
});

/** Whether the browser has kept the run as it stands; if not, only its record outlives the page. */
export const isRunKept = (store = localStore()): boolean => store?.getItem(KEYS.run) != null;

/** More are not offered to be gone on with. */
const MOST_LEFT = 3;

/** The runs that were stopped for another batch, the latest first. */
export const $left = persistentAtom<readonly Going[]>(KEYS.left, [], {
  encode: (left) => JSON.stringify(left),
  decode: (text) => {
    const left = parsed(text);
    return (Array.isArray(left) ? left : []).flatMap((one) => readGoing(one) ?? []);
  },
});

/** A batch is begun or gone on with; the one that was stopped for it is left as it is. */
export function runInstead(next: Going): void {
  const now = $going.get();
  const all = [...(now ? [now] : []), ...$left.get()];
  const others = all.filter(({ id }, i) => id !== next.id && (i === 0 || id !== now?.id));
  $left.set(others.slice(0, MOST_LEFT));
  $going.set(next);
}
