import { demand } from '../domain-error.ts';
import { acceleratorFactor, chlorideSet } from './accelerator.ts';
import type { AgeLaw } from './age-factor.ts';
import { demandNotNegative } from './bounds.ts';
import type { AirAround } from './in-air.ts';
import { demandSet, type SetTimes, scaleSet, setByTemperature } from './set.ts';

/**
 * Ways to shorten set, cheapest first. The order is common practice, no source.
 * @source common-practice
 */
const WAYS = [
  'warmer-water',
  'warmer-room',
  'rapid-cement',
  'accelerator-by-sheet',
  'calcium-chloride',
] as const;

type Way = (typeof WAYS)[number];

export interface Quickened {
  readonly way: Way;
  /** Times by Arrhenius, or by the way's own factor, s; undefined if they cannot be worked out. */
  readonly set: SetTimes | undefined;
  /** Share of the plain initial set that is left; undefined with `set`. */
  readonly factor: number | undefined;
  /** False if the way must not be used here. */
  readonly allowed: boolean;
}

/**
 * What each way to quicken set would bring, in order of what it costs.
 *
 * `set` now, s, at mix `temperature` K; `law` of ageing; `mixWarmer` and `roomWarmer` K the mix
 * would be by warmer water and by a warmer room; `rapidFactor` share of the set the quicker cement
 * takes, from its bag (left out if absent); `product` what another accelerator's sheet says, as
 * acceleratorFactor takes it (listed without times if absent: its sheet tells); `chlorideDose`
 * share of the cement's mass; `steel`. `cooling` if the part takes on the temperature of the `air`
 * around it: then every way is calculated along that cooling, from the `reference` times s at
 * `referenceTemperature` K that `set` was found from, and a warmer room means warmer air too.
 * Calcium chloride with steel is listed as not allowed, without times. No range is published.
 * @throws {DomainError} for a warming below zero, a factor outside 0…1, or as setByTemperature,
 *   acceleratorFactor and chlorideSet.
 * @source fhp-1977 from memory
 * @source jove-16919
 */
export function quicken(of: {
  readonly set: SetTimes;
  readonly temperature: number;
  readonly law: AgeLaw;
  readonly mixWarmer: number;
  readonly roomWarmer: number;
  readonly rapidFactor?: number;
  readonly product?: Parameters<typeof acceleratorFactor>[0];
  readonly chlorideDose: number;
  readonly steel: boolean;
  readonly cooling?:
    | {
        readonly reference: SetTimes;
        readonly referenceTemperature: number;
        readonly air: AirAround;
      }
    | undefined;
}): readonly Quickened[] {
  const { set, temperature, law, rapidFactor, product, steel, cooling } = of;
  demandSet(set);
  const { air, ...bag } = cooling ?? { reference: set, referenceTemperature: temperature };
  const warmed = (by: number, airBy = 0, factor = 1): SetTimes => {
    demandNotNegative('warmer', by, 'temperatureDifference');
    return setByTemperature({
      reference: scaleSet(bag.reference, factor),
      referenceTemperature: bag.referenceTemperature,
      temperature: temperature + by,
      law,
      air: air && { ...air, temperature: air.temperature + airBy },
    }).arrhenius;
  };
  if (rapidFactor !== undefined)
    demand('rapidFactor', rapidFactor, 'ratio', { min: 0, aboveMin: true, max: 1 });
  const scaled = (factor: number | undefined) =>
    factor === undefined ? undefined : warmed(0, 0, factor);
  const found: Readonly<Record<Way, SetTimes | undefined>> = {
    'warmer-water': warmed(of.mixWarmer),
    'warmer-room': warmed(of.roomWarmer, of.roomWarmer),
    'rapid-cement': scaled(rapidFactor),
    'accelerator-by-sheet': scaled(product && acceleratorFactor(product).factor),
    'calcium-chloride': scaled(
      steel ? undefined : chlorideSet({ dose: of.chlorideDose, steel }).factor,
    ),
  };
  return WAYS.filter((way) => way !== 'rapid-cement' || rapidFactor !== undefined).map((way) => {
    const times = found[way];
    return {
      way,
      set: times,
      factor: times && times.initial / set.initial,
      allowed: !(way === 'calcium-chloride' && steel),
    };
  });
}
