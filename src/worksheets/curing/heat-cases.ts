import { bogue, cementHeat } from '../../core/curing/heat/cement-heat.ts';
import {
  type Around,
  type Face,
  outdoorTransfer,
  steadyFace,
  throughLayers,
} from '../../core/curing/heat/face.ts';
import {
  type Hydration,
  hydrationOf,
  ORDINARY_CEMENT,
  ultimateDegree,
} from '../../core/curing/heat/hydration.ts';
import { type HeatInside, heatInside, type Part } from '../../core/curing/heat/inside.ts';
import { STILL_AIR_TRANSFER } from '../../core/curing/heat/still-air.ts';
import { mostFreshConductivity } from '../../core/curing/heat/thermal-properties.ts';
import { type DayExtremes, dailyHistory } from '../../core/curing/history.ts';
import { demand } from '../../core/domain-error.ts';
import { type Conductivity, valoreConductivity } from '../../core/finished/valore.ts';
import { DAY, HOUR } from '../../core/quantity/constants.ts';
import type { Values } from '../../islands/fields.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { timeOfDay } from './days.ts';
import type { heatFields } from './heat-fields.ts';

export type HeatValues = Values<typeof heatFields>;

/** How long the part is followed, s. */
const FOLLOWED = 7 * DAY;
/** From here on the steps are longer: a usual cement is past its fastest heating. */
const SLOWER = { from: 16 * HOUR, step: HOUR / 2 } as const;
/** From here on the part follows the air, whose temperatures are an hour apart. */
const LATE = { from: 36 * HOUR, step: HOUR } as const;
/**
 * The cells and time steps of the part, coarse enough to be computed within one frame at each key
 * press. Compared with a fine mesh, for 2182 parts drawn at random from what the fields allow:
 *
 * - below boiling, the peak is within 0.5 K in all but five parts of 1527, and within 1.1 K in the
 *   worst, a mix near freezing of a quick cement; the difference of core and face within 1.1 K, in
 *   nine of ten parts within 0.2 K, unless a face is warmer than all of the inside. One drawn since
 *   was 1.5 K off in 65, by its cells: a heavy ball over a metre across;
 * - above boiling, within 3 K in all but five parts of 655; in the worst, at 160 to 270 °C, the peak
 *   within 5 K and the difference within 8 K;
 * - in parts under 2 cm in a gale the difference, which is widest within seconds, is up to 5 K off;
 * - an insulated part stripped when it warms fastest (a case looked for) is within 0.5 K.
 *
 * `npm run fuzz` draws others.
 */
export const FINE = { cells: 24, step: 660, firstStep: 80, late: [SLOWER, LATE] } as const;

type Mesh = Pick<Part, 'firstStep' | 'late'> & { readonly cells: number; readonly step: number };

/**
 * A cement whose heating is fastest this long after mixing or later, s at its reference temperature,
 * is computed with the steps above.
 */
const UNHURRIED = 5 * HOUR;
/**
 * A slab of this thickness, m, or more takes the first step above. Heat passes a column of twice the
 * diameter as fast, and a ball of three times.
 */
const SLOW_THROUGH = 0.05;

/**
 * The time steps for a part. They are shortened in proportion to the time at which its cement heats
 * fastest, τ(β/(1 + β))^(1/β), down to a quarter. The longer steps then begin that much sooner, so
 * that the number of steps hardly grows; the last, of an hour, keep their length. The first step is
 * also shortened with the square of the thickness, down to 1/32.
 */
function inTime(
  { late, firstStep, ...mesh }: Mesh,
  { tau, beta }: Hydration,
  { thickness, round }: { readonly thickness: number; readonly round: number },
): Mesh {
  const fastest = tau * (beta / (1 + beta)) ** (1 / beta);
  const share = Math.min(1, Math.max(1 / 4, fastest / UNHURRIED));
  const through = (thickness / (SLOW_THROUGH * (1 + round))) ** 2;
  return {
    ...mesh,
    step: mesh.step * share,
    ...(firstStep && { firstStep: firstStep * Math.min(1, Math.max(1 / 32, through)) }),
    ...(late && {
      late: late.map(({ from, step }) => ({
        from: from * share,
        step: step < LATE.step ? step * share : step,
      })),
    }),
  };
}

/** A plywood form, and a plain insulant. From memory, ISO 10456. */
const WOOD = { thickness: 0.018, conductivity: 0.13 } as const;
const INSULANT_CONDUCTIVITY = 0.035;

/** Ways in which a part closes on itself. */
export const ROUND = { slab: 0, column: 1, ball: 2 } as const;

/**
 * The part of the worksheet at another thickness or density, followed for a week: conducting the most a
 * fresh mix can, or no better than the same piece when dry. The truth lies between.
 */
export function heatCase(
  v: HeatValues,
  of: { readonly thickness: number; readonly wet: number; readonly conducts?: 'as-dry' },
  mesh: Mesh,
): HeatInside & {
  /** Its longest steps but the late ones, s. */
  readonly step: number;
  readonly cement: number;
  readonly hydration: Hydration;
  /** The most that such a mix can conduct, W/(m·K). */
  readonly most: number;
  /** The degree to which its water lets it hydrate, over the one worked with. */
  readonly wetter: number;
} {
  const mix = cubicMetre(v, of.wet);
  const hydration = hydrationFrom(v, mix.waterCementTotal);
  const ambient = airOf(v);
  const { conductivity, notes = [] } = conductivityOf(v, of.conducts, mix.ovenDryDensity);
  const round = ROUND[v.shape];
  const around = { round, radius: of.thickness / 2 };
  const near = face(v, v.near, ambient, around);
  const timed = inTime(mesh, hydration, { thickness: of.thickness, round });
  const parts = { cement: mix.cement, water: mix.water + mix.foamMass, sand: mix.sand };
  const found = heatInside({
    thickness: of.thickness,
    round,
    mix: parts,
    ...(conductivity && { conductivity }),
    hydration,
    initialTemperature: v.mixAt,
    near,
    far: round ? near : face(v, v.far, ambient, around),
    duration: FOLLOWED,
    ...timed,
  });
  return {
    ...found,
    step: timed.step,
    notes: [...found.notes, ...notes],
    cement: mix.cement,
    hydration,
    most: mostFreshConductivity(parts),
    wetter: ultimateDegree({ waterCement: mix.waterCementTotal }) / hydration.ultimate,
  };
}

function conductivityOf(
  v: HeatValues,
  conducts: 'as-dry' | undefined,
  dryDensity: number,
): Partial<Conductivity> {
  if (v.conducts === 'own') return { conductivity: v.conductivity };
  return conducts === undefined ? {} : valoreConductivity({ dryDensity });
}

/** The air from casting on; the last day given repeats. */
function airOf(v: HeatValues): Face['ambient'] {
  const alike = v.air === 'alike';
  const given = alike ? [v] : v.days;
  for (const { coldest, warmest } of given)
    if (alike) demand('warmest', warmest, 'temperature', { min: coldest }, 'highest-below-lowest');
    else demand('days', warmest, 'temperature', { min: coldest }, 'warmest-below-coldest');
  return weekOf(v, given);
}

function weekOf({ castAt }: HeatValues, given: readonly DayExtremes[]): Face['ambient'] {
  const days = Array.from(
    { length: FOLLOWED / DAY + 1 },
    (_, i) => given[Math.min(i, given.length - 1)]!,
  );
  return dailyHistory({ days, start: timeOfDay(castAt), step: HOUR });
}

function face(
  v: HeatValues,
  cover: HeatValues['far'],
  ambient: Face['ambient'],
  around: Around,
): Face {
  if (cover === 'ground')
    return steadyFace({ temperature: v.groundAt, transfer: Number.POSITIVE_INFINITY });
  if (cover === 'room') return steadyFace({ temperature: v.roomAt, transfer: STILL_AIR_TRANSFER });
  if (cover === 'swing') {
    const [coldest, warmest] = [v.roomColdest, v.roomWarmest];
    demand('roomWarmest', warmest, 'temperature', { min: coldest }, 'highest-below-lowest');
    const ambient = weekOf(v, [{ coldest, warmest }]);
    return { ambient, coverings: [{ from: 0, transfer: STILL_AIR_TRANSFER }] };
  }
  if (cover === 'closed') return { ambient, coverings: [{ from: 0, transfer: 0 }] };
  const film = v.place === 'outdoors' ? outdoorTransfer({ windSpeed: v.wind }) : STILL_AIR_TRANSFER;
  const bare = { from: 0, transfer: film };
  if (cover === 'bare') return { ambient, coverings: [bare] };
  const layer =
    cover === 'wood' ? WOOD : { thickness: v.insulation, conductivity: INSULANT_CONDUCTIVITY };
  const covered = { from: 0, transfer: throughLayers({ film, layers: [layer], around }) };
  return { ambient, coverings: [covered, { ...bare, from: v.strip }] };
}

function hydrationFrom(v: HeatValues, waterCement: number): Hydration {
  if (v.heat === 'published') return ORDINARY_CEMENT;
  const ultimate = ultimateDegree({ waterCement });
  if (v.heat === 'total') return { ...ORDINARY_CEMENT, heat: v.total, ultimate };
  const compounds = bogue(v);
  return {
    heat: cementHeat(compounds),
    ultimate,
    ...hydrationOf({ compounds, blaine: v.blaine }),
  };
}
