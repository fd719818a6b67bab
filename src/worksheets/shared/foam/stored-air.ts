import {
  ESSENTIAL_REQUIREMENTS,
  HIGH_HAZARD_ENERGY,
  PCC2_AMBIENT,
  type StoredEnergy,
  storedEnergy,
  TNT_ENERGY_BERKELEY,
} from '../../../core/air/stored-energy.ts';
import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { choice, number, type Values } from '../../../islands/fields.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { SMALL_MASS } from '../words/amounts.ts';
import { pressureVolume } from './pressure-volume.ts';

export const BAR = { metric: 'bar', us: 'psi' } as const;
/** Vessels for workshop air are seldom marked for a higher gauge pressure, Pa. From memory. */
const OFTEN_MARKED = fromUnit(21, 'pressure', 'bar');

/**
 * Fields that tell whether a vessel may hold compressed air. They stand on the page on safety, and
 * folded away in other worksheets about a vessel.
 */
export const vesselSaid = {
  made: choice({
    label: 'What it is',
    options: {
      marked: 'Made and marked for pressure',
      plastic: 'Plastic pipe, a bottle or a barrel',
      other: 'Something else, or no legible marking',
      unsaid: 'Not said yet',
    },
    example: 'marked',
    unsaid: 'unsaid',
    bench: 'stored-energy.made',
  }),
  marking: number('pressure', {
    label: 'Pressure on its marking',
    example: '10 bar',
    min: '0.01 bar',
    max: '400 bar',
    units: BAR,
    optional: true,
    bench: 'stored-energy.marking',
    when: { made: ['marked'] },
  }),
  relief: choice({
    label: 'Relief valve',
    help: 'It must pass all that the source can push in with its regulator failed open. The valve of a vessel made for a hand pump passes a hand pump’s air.',
    options: {
      passes: 'Passes that, set no higher than marked',
      fitted: 'No higher than marked, flow not known',
      none: 'None, or I do not know its setting',
      unsaid: 'Not said yet',
    },
    example: 'passes',
    unsaid: 'unsaid',
    bench: 'stored-energy.relief',
  }),
};

/** Why a vessel may not be filled to a gauge pressure, Pa; undefined if nothing forbids it. */
export function unfitVessel(
  { isentropic }: Pick<StoredEnergy, 'isentropic'>,
  { gauge, made, marking, relief }: Values<typeof vesselSaid> & { readonly gauge: number },
  say: Say,
): Judgement | undefined {
  const energy = say(isentropic, 'energy', { significant: 2 });
  const words =
    made === 'plastic'
      ? `Never. Plastic water pipe and bottles break into flying pieces, and ${energy} is behind them. Use a vessel made and marked for pressure.`
      : made === 'other'
        ? `Do not fill it. What is not marked for pressure is not fit for ${energy}; a competent inspector can say what it is.`
        : made === 'marked' && marking !== undefined && gauge > marking
          ? `The gauge is above the marking, ${say(marking, 'pressure', { units: BAR })}. Let the pressure down now, from the side, and find out why.`
          : relief === 'none'
            ? `With no relief valve known to pass enough, nothing but attention holds back ${energy}. Fit one, set no higher than the marking, before it is filled.`
            : undefined;
  return words === undefined ? undefined : { verdict: 'stop', say: words };
}

/** Questions a gauge pressure, Pa, above `OFTEN_MARKED`: it is probably in another unit. */
export const muchPressure = (gauge: number, say: Say): string | undefined =>
  gauge > OFTEN_MARKED
    ? `Read the gauge again, the number and the unit (bar, psi or kPa), and the plate: ${say(gauge, 'pressure', { units: BAR })} is more than a vessel of workshop air is often marked for (from memory).`
    : undefined;

/** The highest pressure, Pa, that worksheets of this handbook use. A choice. */
const EVER_MARKED = fromUnit(40, 'pressure', 'bar');

/** A pressure whose number was read in psi and typed as bar, Pa. */
const inPsi = (marking: number) => fromUnit(toUnit(marking, 'pressure', 'bar'), 'pressure', 'psi');

/** Questions a marking that may have been read in another unit: by it a gauge pressure, Pa, would be above it. */
export const doubtedPlate = (
  { marking = 0, gauge }: { readonly marking?: number | undefined; readonly gauge: number },
  say: Say,
): string | undefined =>
  marking > EVER_MARKED || (marking > OFTEN_MARKED && gauge > inPsi(marking))
    ? `Read its plate again, the number and the unit (bar, psi or kPa): ${say(marking, 'pressure', { units: BAR })} is much for a vessel of workshop air (from memory). Fill it no further until you know.`
    : undefined;

/** What is to be doubted of the pressures of a vessel under air. */
export const doubtedPressures = (
  { full, marking }: { readonly full: number; readonly marking?: number | undefined },
  say: Say,
): string | undefined => muchPressure(full, say) ?? doubtedPlate({ marking, gauge: full }, say);

/**
 * Adds the safety of the vessel to a judgement: `stop` if it may not be filled, and never `good`
 * while its marking or relief valve is not known, or if it holds a hazardous amount of energy.
 */
export function mindStored(
  judged: Judgement,
  { stored }: Holds,
  { full, ...said }: Values<typeof vesselSaid> & { readonly full: number },
  say: Say,
): Judgement {
  const unfit = unfitVessel(stored, { ...said, gauge: full }, say);
  if (unfit) return unfit;
  if (judged.verdict === 'stop') return judged;
  const look = (first: string): Judgement => ({ verdict: 'look', say: `${first} ${judged.say}` });
  if (said.made === 'marked' && said.marking === undefined) return look(NO_PLATE);
  if (said.relief === 'fitted')
    return look('Find out first whether its relief valve passes all that the source can push in.');
  if (stored.isentropic > HIGH_HAZARD_ENERGY)
    return look(
      `Full, it holds ${say(stored.isentropic, 'energy', { significant: 2 })}, which one university calls highly hazardous: first ask ${ASKED}.`,
    );
  return said.made === 'unsaid' || said.relief === 'unsaid'
    ? look('Say first what the vessel is and what its relief valve passes, folded above.')
    : judged;
}

const ASKED = '“What would come out of this vessel at once?”, in the chapter on safety';

/** Said of a vessel that is marked, but whose marked pressure was not entered. */
export const NO_PLATE = 'No plate, no air: read the pressure on its marking and enter it.';

interface Holds {
  readonly stored: StoredEnergy;
}

/** Stored energy of a vessel, m³, at a gauge pressure, Pa. */
export const storedAt = ({ vessel, gauge }: { readonly vessel: number; readonly gauge: number }) =>
  storedEnergy({ vessel, pressure: gauge + PCC2_AMBIENT });

/** Results that every worksheet about a vessel under air shows. */
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

/** Notes on what that energy means, and on what is not known of the vessel yet. */
export function storedNotes(
  { stored }: Holds,
  { made, relief }: Pick<Values<typeof vesselSaid>, 'made' | 'relief'>,
  say: Say,
): string[] {
  const tnt = say(stored.tnt, 'mass', amount);
  const other = say(stored.isentropic / TNT_ENERGY_BERKELEY, 'mass', amount);
  const high = say(HIGH_HAZARD_ENERGY, 'energy', { significant: 2 });
  const hazard =
    stored.isentropic > HIGH_HAZARD_ENERGY
      ? `That office calls more than ${high} highly hazardous.`
      : `That is below the ${high} which that office calls highly hazardous; it can still maim.`;
  const above = stored.pressureVolume > ESSENTIAL_REQUIREMENTS ? 'above' : 'not above';
  const forbidden = made === 'plastic' || made === 'other' || relief === 'none';
  const open = !forbidden && (made === 'unsaid' || relief !== 'passes');
  return [
    ...(open ? [`Whether it may be filled at all is not said yet: first ask ${ASKED}.`] : []),
    `If it burst, the full vessel would let go as much energy as ${tnt} of TNT at the 4.267\u00a0MJ/kg of ASME PCC-2, or ${other} at the 4.62\u00a0MJ/kg of a university’s safety office. ${hazard} Gauge pressure times volume is ${pressureVolume(stored.pressureVolume, say)}, ${above} the ${pressureVolume(ESSENTIAL_REQUIREMENTS, say)} from which European law sets requirements for a simple vessel’s making.`,
  ];
}

/** Sources of `storedResults` and `storedNotes`. */
export const STORED_SOURCES = [
  'asme-pcc-2',
  'uc-berkeley-stored-energy',
  'stored-energy-forum',
  'spvd-2014-29',
] as const;
