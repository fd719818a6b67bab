import { type Entries, type Kept, type KeptResults, keptValue } from '../../../bench/entries.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { isOwnResult } from '../../../bench/records/own-result.ts';
import type { Correcting, LoadBefore, RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { BATCH_VOLUME, TYPED_VOLUME } from '../../shared/mix/batch-volume.ts';
import { FURTHER, FURTHER_NAMES } from '../../shared/mix/further.ts';
import {
  alikePiece,
  jointsOf,
  jointsOfTyped,
  jointsOfUnlike,
} from '../../shared/mix/whole-pieces.ts';
import { worked } from '../worked.ts';
import { planHeld } from './PlanHeld.tsx';
import { planMass } from './run-base.ts';

/** The props of a step at the bench. */
export interface StepProps {
  readonly editor: Editor;
  readonly plan: RunPlan | undefined;
  readonly say: Say;
  /** The batch is only recorded: nothing is to be mixed or placed. */
  readonly over?: boolean;
  /** The batch mixed before it on the same day. */
  readonly before?: LoadBefore | undefined;
  /** The last correction, which can be undone until the bucket is weighed again. */
  readonly undo: Correcting | undefined;
  readonly setUndo: (undo: Correcting | undefined) => void;
}

const AIM = 'mix.planned';

/**
 * The origin of a batch's volume: a typed one has no known forms; otherwise they may be the
 * example's.
 */
function behind(origin: string | undefined, kept: KeptResults) {
  if (origin === 'yours') return { typed: true as const };
  const held = (key: string) => (origin === 'kept' ? kept[key] : undefined);
  const [forms, evenLoads, largest] = ['batch.net', 'batch.evenLoads', 'batch.largest'].map((key) =>
    keptValue(held(key)),
  );
  const form = origin === 'kept' ? alikePiece(kept) : undefined;
  const all = held(BATCH_VOLUME.takes);
  return {
    ...(!(all && 'v' in all && !all.example) && { unsized: true as const }),
    ...(forms && {
      forms,
      ...(form ? { form } : { ...(evenLoads && { evenLoads }), ...(largest && { largest }) }),
    }),
  };
}

/** The bench key of the whole batch's own volume. */
const VOLUME = 'batch.volume';

/**
 * The amounts of one load, from the results of “What goes into the whole batch?”; undefined if some
 * are missing.
 */
function wholeBatchPlan(
  entries: Entries,
  kept: KeptResults,
  { by }: Kept,
  largestLoad: number,
): RunPlan | undefined {
  const all = (name: string) => {
    const found = kept[`mix.${name}`];
    return found?.by === by ? (keptValue(found) ?? Number.NaN) : Number.NaN;
  };
  const loads = all('loads');
  const each = (name: string) => all(name) / loads;
  const [cement, water, sand, foam] = [
    each('portland'),
    each('water'),
    each('sand'),
    each('foamMass'),
  ];
  const binder = each('cement');
  const other = FURTHER_NAMES.flatMap((name) => {
    const mass = each(name);
    return mass > 0 ? [{ name: FURTHER[name], mass }] : [];
  });
  const foamVolume = each('foamVolume');
  const plan = {
    ...{ cement, water, sand, foamVolume, loads, largestLoad },
    wetDensity: all('planned'),
    baseDensity: all('baseDensity'),
    foamDensity: foam / foamVolume || 0,
  };
  if (!Object.values({ ...plan, binder }).every(Number.isFinite)) return undefined;
  return {
    ...plan,
    ...(all('sandFree') > 0 && { damp: true }),
    ...(binder > cement && { binder }),
    ...(other.length > 0 && { other }),
    ...behind((entries[VOLUME]?.t ?? entries[TYPED_VOLUME]?.t) ? 'yours' : 'kept', kept),
    example: false,
    aimed: isOwnResult(AIM, entries, kept),
  };
}

/**
 * The amounts of one load by “What goes into the batch?”, or by the worksheet that holds the plan
 * instead; undefined while that has no answer.
 */
export function runPlan(entries: Entries, kept: KeptResults, say: Say): RunPlan | undefined {
  const batch = worked(proportionPlan, entries, kept, say);
  const { result, reading } = batch;
  if (!result || !reading.values) return undefined;
  const holder = planHeld(batch, kept, say);
  if (holder) return wholeBatchPlan(entries, kept, holder, reading.values.load);
  const { each, count } = result.loads;
  return {
    cement: each.cement,
    water: each.water,
    sand: each.sand,
    foamVolume: each.foamVolume,
    wetDensity: result.mix.wetDensity,
    baseDensity: result.mix.baseDensity,
    foamDensity: result.mix.foamMass / result.mix.foamVolume || 0,
    loads: count,
    largestLoad: reading.values.load,
    solution: result.solution.solutionVolume,
    ...behind(reading.fields.volume?.origin, kept),
    example: !reading.own,
    aimed: isOwnResult(AIM, entries, {
      ...kept,
      [AIM]: { waits: true, from: '', by: proportionPlan.id },
    }),
  };
}

/** The number of pieces, if all have one known size; else 1. */
const piecesOf = ({ forms = 0, form }: RunPlan) => (form ? Math.round(forms / form) : 1);

/** In words: the volume of the forms by the plan; of several loads, the share of each. */
export function formsPlanned(plan: RunPlan, say: Say): string | undefined {
  const { forms, form, loads } = plan;
  if (!forms) return undefined;
  const litres = (volume: number) => say(volume, 'volume');
  const count = piecesOf(plan);
  const pieces = form && count > 1 ? `: ${count} of ${litres(form)}` : '';
  const all = `${litres(forms)}${pieces}`;
  return loads > 1 ? `${litres(forms / loads)} a load; in all ${all}` : all;
}

/** Relative shortfall below which forms count as full. Common practice, no source. */
const AS_FULL = 0.01;

/** The message that the mix, m³, is less than the load's share of the forms. */
export function formsShort(mix: number, plan: RunPlan, say: Say): string | undefined {
  const wanted = (plan.forms ?? 0) / plan.loads;
  if (plan.unsized || mix >= (1 - AS_FULL) * wanted) return undefined;
  const [there, forms] = [mix, wanted].map((volume) => say(volume, 'volume'));
  const hold =
    plan.form && piecesOf(plan) === 1
      ? `the form takes ${forms}${plan.loads > 1 ? ' of each load' : ''}: it comes out short`
      : `the forms of a load hold ${forms}: fill whole pieces first`;
  return `There are ${there} of it, and ${hold}.`;
}

/** The message that some pieces are filled from two loads, if the plan makes it so. */
export function jointsPlanned(plan: RunPlan): string | undefined {
  const { forms, form, loads, largestLoad } = plan;
  if (plan.typed) return jointsOfTyped(loads)?.say;
  if (!forms || loads === 1) return undefined;
  const volume = (loads * planMass(plan)) / plan.wetDensity;
  if (!form) return jointsOfUnlike({ ...plan, volume })?.say;
  return jointsOf({ pieces: piecesOf(plan), alike: true, loads, volume, largestLoad })?.say;
}
