import {
  ESSENTIAL_REQUIREMENTS,
  HIGH_HAZARD_ENERGY,
  PCC2_AMBIENT,
  type StoredEnergy,
  storedEnergy,
  TNT_ENERGY_BERKELEY,
} from '../../core/air/stored-energy.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { SMALL_MASS } from './amounts.ts';
import { pressureVolume } from './pressure-volume.ts';

/** An answer about a vessel that holds so much is not good before it has been asked what it could do. */
export function mindStored(judged: Judgement, { stored }: Holds, say: Say): Judgement {
  return judged.verdict === 'stop' || stored.isentropic <= HIGH_HAZARD_ENERGY
    ? judged
    : {
        verdict: 'look',
        say: `Full, it holds ${say(stored.isentropic, 'energy', { significant: 2 })}, which one university calls highly hazardous: first ask “What would come out of this vessel at once?”, in the chapter on safety. ${judged.say}`,
      };
}

interface Holds {
  readonly stored: StoredEnergy;
}

/** Stored energy of a vessel at a gauge pressure. */
export const storedAt = ({ vessel, gauge }: { readonly vessel: number; readonly gauge: number }) =>
  storedEnergy({ vessel, pressure: gauge + PCC2_AMBIENT });

/** The results that stand beside every answer about a vessel under air. */
export const storedResults = {
  stored: {
    label: 'Energy in it, if it bursts',
    kind: 'energy',
    of: (r: Holds) => r.stored.isentropic,
  },
  storedMost: {
    label: 'Energy in it, heat let in, less what pushes the air outside back',
    kind: 'energy',
    of: (r: Holds) => r.stored.isothermal,
  },
} as const;

const amount = { units: SMALL_MASS, significant: 2 } as const;

/** What that energy means, in words. */
export function storedWords({ stored }: Holds, say: Say): string {
  const tnt = say(stored.tnt, 'mass', amount);
  const other = say(stored.isentropic / TNT_ENERGY_BERKELEY, 'mass', amount);
  const high = say(HIGH_HAZARD_ENERGY, 'energy', { significant: 2 });
  const hazard =
    stored.isentropic > HIGH_HAZARD_ENERGY
      ? `That office calls more than ${high} highly hazardous.`
      : `That is below the ${high} which that office calls highly hazardous; it can still maim.`;
  const above = stored.pressureVolume > ESSENTIAL_REQUIREMENTS ? 'above' : 'not above';
  return `Burst, the full vessel would let go as much as ${tnt} of TNT at the 4.267\u00a0MJ/kg of ASME PCC-2, or ${other} at the 4.62\u00a0MJ/kg of a university’s safety office. ${hazard} Gauge pressure times volume is ${pressureVolume(stored.pressureVolume, say)}, ${above} the ${pressureVolume(ESSENTIAL_REQUIREMENTS, say)} from which European law sets requirements for a simple vessel’s making.`;
}

/** Sources of the two above. */
export const STORED_SOURCES = [
  'asme-pcc-2',
  'uc-berkeley-stored-energy',
  'stored-energy-forum',
  'spvd-2014-29',
] as const;
