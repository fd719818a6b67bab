import { type DomainError, demand } from '../../core/domain-error.ts';
import { fromUnit } from '../../core/quantity/convert.ts';
import type { Say } from '../../islands/engine/say.ts';

/** Harder than the water of wells, mol/m³: brine, sea water or a wrong unit. A choice: no source draws this line. */
export const BRINE = fromUnit(1500, 'hardness', 'mg/L CaCO3');

/** The same for a single ion: brine holds more than this, kg/m³. A choice, no source. */
const SALTY = 5;

export const FIT = '“Is this water fit to mix cement with?”';

const UNFIT = `is brine or sea water, or the wrong unit. Make no foam with it, and mix no cement with it unless ${FIT} lets it pass.`;

/** What is said of it, wherever its hardness is read. */
export const brineSaid = (total: number, say: Say): string =>
  `${say(total, 'hardness', { significant: 3 })} ${UNFIT}`;

/** Refuses a water too salty to be worked on. */
export const demandNotSalty = (ions: Readonly<Record<string, number | undefined>>): void => {
  for (const [name, much = 0] of Object.entries(ions))
    demand(name, much, 'concentration', { max: SALTY }, 'salty');
};

/** Refuses brine where nothing that is worked out would be of use. `quantity`: whose hardness it is. */
export const demandFresh = (total: number, quantity = 'hardness'): void =>
  demand(quantity, total, 'hardness', { max: BRINE }, 'brine');

/** The refusal of a salty water, in words. */
export const salty = ({ value }: DomainError, say: Say): string =>
  `${say(value, 'concentration', { significant: 3 })} ${UNFIT}`;

/** That of brine. */
export const BRINE_REFUSAL = {
  brine: ({ value }: DomainError, say: Say) => brineSaid(value, say),
} as const;
