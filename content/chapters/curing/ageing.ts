import { ACTIVATION_ENERGY_ASTM, type AgeLaw, ageFactor } from '~/core/curing/age-factor.ts';
import { HOUR, ICE_POINT } from '~/core/quantity/constants.ts';

/** By an activation energy that rises in the cold: what this handbook counts age by. */
export const VARIABLE: AgeLaw = { law: 'fhp' };
export const ONE_ENERGY: AgeLaw = { law: 'arrhenius', activationEnergy: ACTIVATION_ENERGY_ASTM };
export const oneEnergy = `${(ACTIVATION_ENERGY_ASTM / 1000).toFixed(1)} kJ/mol`;

/** Hours at 20 °C that an hour so warm is worth. */
export const worth = (celsius: number, law: AgeLaw = VARIABLE) =>
  ageFactor(law, celsius + ICE_POINT);

/** When the demo’s slabs are cast: at two in the afternoon, s from midnight. */
export const CAST_AT = 14 * HOUR;
