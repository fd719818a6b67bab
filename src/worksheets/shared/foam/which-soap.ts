import type { Soap } from '../../../core/water/soap.ts';
import { choice } from '../../../islands/fields.ts';

const SOAP_NAMES = {
  sodiumOleate: 'Sodium oleate (olive-oil soap, mostly)',
  sodiumLaurate: 'Sodium laurate (coconut soap, mostly)',
  sodiumPalmitate: 'Sodium palmitate (palm soap, mostly)',
  sodiumStearate: 'Sodium stearate (tallow soap, in part)',
  potassiumOleate: 'Potassium oleate (soft soap, mostly)',
} as const satisfies Record<Soap, string>;

export const whichSoap = choice({
  label: 'Which soap',
  options: SOAP_NAMES,
  example: 'sodiumOleate',
  bench: 'foam.soap',
  when: { kind: ['soap'] },
});
