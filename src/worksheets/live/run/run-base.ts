import type { RunPlan } from '../../../bench/run.ts';
import { ifAllowed } from '../../../core/domain-error.ts';
import { baseMix } from '../../../core/mix/base-mix.ts';
import { correctMix } from '../../../core/mix/correct.ts';
import { plannedWith } from '../../../core/mix/planned-with.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { foamMeasures } from '../../shared/mix/buckets.ts';
import { FOAM, PERCENT } from '../../shared/words/amounts.ts';
import type { RunReadings } from './run-readings.ts';

/** The base mix in the mixer: kg and kg/m³. */
export interface BaseIn {
  readonly mass: number;
  readonly density: number;
  /** How much of it was entered; the rest is taken from the plan. */
  readonly weighed: 'all' | 'some' | 'none';
}

const BASE = ['cement', 'water', 'sand'] as const;

/** The mass of a plan's ingredients other than cement, water, sand and foam, kg. */
export const otherMass = (plan: RunPlan | undefined): number =>
  (plan?.other ?? []).reduce((sum, { mass }) => sum + mass, 0);

/** The mass of a load, kg. */
export const planMass = (plan: RunPlan): number =>
  plan.cement + plan.water + plan.sand + otherMass(plan) + plan.foamVolume * plan.foamDensity;

/**
 * The cement density and survival that a plan was proportioned with, found from its amounts, as
 * older plans do not store them.
 */
const withPlan = (plan: RunPlan | undefined) =>
  plan && ifAllowed(() => plannedWith({ ...plan, sand: plan.sand + otherMass(plan) }));

/**
 * The base mix in the mixer, from amounts weighed in, else planned; undefined if one of them, sand
 * included, is neither, as part of a base mix would need only part of its foam. Ingredients without
 * a step are taken as planned.
 */
export function baseIn(
  { at, cementDensity: saved }: RunReadings,
  plan: RunPlan | undefined,
): BaseIn | undefined {
  const [cement, water, sand] = BASE.map((name) => at(name) ?? plan?.[name]);
  if (!cement || water === undefined || sand === undefined) return undefined;
  const rest = sand + otherMass(plan);
  const names = BASE.filter((name) => name !== 'sand' || plan?.sand);
  const written = names.filter((name) => at(name) !== undefined).length;
  const cementDensity = withPlan(plan)?.cementDensity ?? saved;
  const base = ifAllowed(() =>
    baseMix({
      waterCement: water / cement,
      sandCement: rest / cement,
      ...(cementDensity && { cementDensity }),
    }),
  );
  return (
    base && {
      mass: cement + water + rest,
      density: base.density,
      weighed: written === 0 ? 'none' : written < names.length ? 'some' : 'all',
    }
  );
}

/**
 * How much foam the base mix in the mixer needs, m³, and what that is based on; or why no amount is
 * given.
 */
export type FoamWanted =
  /**
   * `mix`: the resulting volume, m³, at `density`, kg/m³; `measures`: the foam by weight and in
   * buckets.
   */
  | {
      readonly is: 'amount';
      readonly volume: number;
      readonly mix: number;
      readonly density: number;
      readonly say: string;
      readonly measures: string;
    }
  | { readonly is: 'refused'; readonly say: string }
  | { readonly is: 'unknown' };

const BASE_WORDS = {
  all: 'the base mix you weighed in',
  some: 'the base mix as far as you weighed it in, the rest as planned,',
  none: 'the base mix as planned',
} as const;

export function foamWanted(readings: RunReadings, plan: RunPlan | undefined, say: Say): FoamWanted {
  const { at, problem } = readings;
  const wrong = (['cement', 'water', 'sand', 'foamDensity', 'planned'] as const)
    .map(problem)
    .find((found) => found !== undefined);
  if (wrong) return { is: 'refused', say: `No foam can be named yet. ${wrong}` };
  const base = baseIn(readings, plan);
  const foamDensity = at('foamDensity') ?? plan?.foamDensity;
  const target = at('planned') ?? plan?.wetDensity;
  if (!base || !foamDensity || !target) return { is: 'unknown' };
  const wet = (si: number) => say(si, 'density');
  const foam = say(foamDensity, 'density', { units: FOAM });
  if (target >= base.density)
    return {
      is: 'refused',
      say: `The base mix weighs ${wet(base.density)} without any foam, and ${wet(target)} is planned: foam only makes it lighter. Look at what you weighed in.`,
    };
  if (target <= foamDensity)
    return {
      is: 'refused',
      say: `Foam of ${foam} is not lighter than the ${wet(target)} planned: no amount of it gets there. Weigh the foam again.`,
    };
  const survival = withPlan(plan)?.survival ?? 1;
  // Base mix alone is treated as a mix to be corrected with all of its foam.
  const fix = ifAllowed(() =>
    correctMix({
      measuredDensity: base.density,
      massInHand: base.mass,
      targetDensity: target,
      foamDensity,
      baseDensity: base.density,
      tolerance: 0,
      survival,
    }),
  );
  if (!fix)
    return { is: 'refused', say: 'No foam can be named for these weighings. Look at them again.' };
  const foamWords = at('foamDensity') === undefined ? `planned foam of ${foam}` : `foam of ${foam}`;
  // What no step asks for is taken to be as heavy as the rest: beside it the share is known to a hundredth.
  const significant = otherMass(plan) > 0 ? 2 : 3;
  const lives =
    survival > 1 - 0.5 * 10 ** -significant
      ? ''
      : `, of whose gas ${say(survival, 'ratio', { units: PERCENT, significant })} survives`;
  return {
    is: 'amount',
    volume: fix.foamVolume,
    mix: fix.volume,
    density: target,
    measures: foamMeasures(
      fix.foamVolume,
      foamDensity,
      { tare: at('tare'), vessel: at('vessel') },
      say,
    ),
    say: `For ${BASE_WORDS[base.weighed]} and ${foamWords}${lives}, to come out at ${wet(target)}.`,
  };
}

/**
 * Base mix and foam put into the mixer, kg, corrections included: as entered, else as planned or
 * needed.
 */
export function massIn(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): number | undefined {
  const { at } = readings;
  const base = baseIn(readings, plan);
  const foamDensity = at('foamDensity') ?? plan?.foamDensity;
  if (!base || !foamDensity) return undefined;
  const wanted = foamWanted(readings, plan, say);
  const put = at('foamVolume') ?? (wanted.is === 'amount' ? wanted.volume : 0);
  return base.mass + (put + (at('foamAdded') ?? 0)) * foamDensity + (at('baseAdded') ?? 0);
}

/** The mix taken out before a correction, kg: until some is placed, all that is left over. */
export const outOf = ({ at, corrections }: RunReadings): number =>
  at('placed') === undefined
    ? (at('leftOver') ?? 0)
    : corrections.reduce((sum, { out = 0 }) => sum + out, 0);

/** The mass in the mixer when the blend is weighed, kg, less what was taken out before. */
export function massNow(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): number | undefined {
  const [went, { at }] = [massIn(readings, plan, say), readings];
  return went && at('placed') === undefined ? went - (at('leftOver') ?? 0) : went;
}
