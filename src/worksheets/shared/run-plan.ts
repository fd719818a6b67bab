import { type Entries, type KeptResults, keptValue } from '../../bench/entries.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { isOwnResult } from '../../bench/records/own-result.ts';
import type { Correcting, RunPlan } from '../../bench/run.ts';
import type { Say } from '../../islands/engine/say.ts';
import proportion from '../mix/proportion.tsx';
import { LITRES } from './amounts.ts';
import { planHeld } from './PlanHeld.tsx';
import { run } from './run.ts';
import { jointsOf, jointsOfTyped, jointsOfUnlike } from './whole-pieces.ts';

/** What a step at the bench is given. */
export interface StepProps {
  readonly editor: Editor;
  readonly plan: RunPlan | undefined;
  readonly say: Say;
  /** It is only written up: nothing is asked to be mixed or placed. */
  readonly over?: boolean;
  /** The last correction, which may be taken back until the bucket is weighed again. */
  readonly undo: Correcting | undefined;
  readonly setUndo: (undo: Correcting | undefined) => void;
}

const AIM = 'mix.planned';

/**
 * The amounts of one load, as “What goes into the batch?” has them; undefined while it has no answer, or another
 * worksheet holds the plan.
 */
export function runPlan(entries: Entries, kept: KeptResults, say: Say): RunPlan | undefined {
  const batch = run(proportion, entries, kept, say);
  const { result, reading } = batch;
  if (!result || !reading.values || planHeld(batch, kept, say)) return undefined;
  const { each, count } = result.loads;
  const origin = reading.fields.volume?.origin;
  // A volume typed in has no forms behind it.
  const held = (key: string) => (origin === 'kept' ? keptValue(kept[key]) : undefined);
  const [forms, form] = [held('batch.net'), held('part.volume')];
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
    ...(forms && { forms, ...(form && { form }) }),
    ...(origin === 'yours' && { typed: true as const }),
    example: !reading.own,
    aimed: isOwnResult(AIM, entries, {
      ...kept,
      [AIM]: { waits: true, from: '', by: proportion.id },
    }),
  };
}

/** What the forms hold by the plan, in words; of several loads, each fills its share of them. */
export function formsPlanned({ forms, form, loads }: RunPlan, say: Say): string | undefined {
  if (!forms) return undefined;
  const litres = (volume: number) => say(volume, 'volume', { units: LITRES });
  const count = form ? Math.round(forms / form) : 1;
  const pieces = form && count > 1 ? `: ${count} of ${litres(form)}` : '';
  const all = `${litres(forms)}${pieces}`;
  return loads > 1 ? `${litres(forms / loads)} a load; in all ${all}` : all;
}

/** That some pieces are filled from two loads, where the plan has them so. */
export function jointsPlanned(plan: RunPlan): string | undefined {
  const { forms, form, loads, largestLoad } = plan;
  if (plan.typed) return jointsOfTyped(loads)?.say;
  if (!forms || loads === 1) return undefined;
  if (!form) return jointsOfUnlike(loads).say;
  const { cement, water, sand, foamVolume, foamDensity, wetDensity } = plan;
  const mass = cement + water + sand + foamVolume * foamDensity;
  const volume = (loads * mass) / wetDensity;
  const pieces = Math.round(forms / form);
  return jointsOf({ pieces, alike: true, loads, volume, largestLoad })?.say;
}
