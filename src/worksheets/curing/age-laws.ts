import { ACTIVATION_ENERGY_ASTM, type AgeLaw } from '../../core/curing/age-factor.ts';

/** Names of the laws of ageing, as a choice. */
export const LAWS = {
  fhp: 'Variable energy: more below 20\u00a0°C',
  arrhenius: 'One activation energy, chosen',
  'model-code': 'The model code’s',
} as const;

/** A law of ageing from its name. */
export const lawOf = (
  name: keyof typeof LAWS,
  activationEnergy = ACTIVATION_ENERGY_ASTM,
): AgeLaw => (name === 'arrhenius' ? { law: 'arrhenius', activationEnergy } : { law: name });
