import { fromUnit } from '../../core/quantity/convert.ts';
import { justOver, justUnder } from '../../core/quantity/dust.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import type { Parsed } from '../../core/quantity/parse.ts';
import { parseWithin } from '../../core/quantity/parse-within.ts';

/** The days of a batch, in their order. */
export const STAGES = ['mixed', 'cast', 'cured', 'stripped', 'dried', 'tested'] as const;
export type Stage = (typeof STAGES)[number];

export interface NumberReading {
  readonly stage: Stage;
  readonly kind: Kind;
  /** The unit of its column in a spreadsheet. */
  readonly unit: string;
  /**
   * The smallest and largest possible value, in that unit. What lies outside is a slip and counts
   * nowhere. A choice.
   */
  readonly from: number;
  readonly to: number;
  /** `from` itself may be recorded, but nothing is worked out from it. */
  readonly aboveFrom?: boolean;
  /** What it is, in a few words. */
  readonly label: string;
}
interface ChoiceReading {
  readonly stage: Stage;
  readonly options: readonly string[];
  readonly label: string;
}

const of = (
  stage: Stage,
  kind: Kind,
  unit: string,
  label: string,
  [from, to]: readonly [from: number, to: number],
) => ({ stage, kind, unit, label, from, to }) as const;
const KG = [0, 5000] as const;
const LITRES = [0, 5000] as const;
/** No foamed concrete is planned lighter than this; a lower value is a typing slip. */
const MIX = [100, 4000] as const;
const FOAM = [5, 4000] as const;
const SOME = { aboveFrom: true } as const;
const DAYS = [0.5, 1000] as const;

/** Whether a reading can have this value, in SI. */
export function canBe({ from, to, kind, unit }: NumberReading, si: number): boolean {
  return si >= justUnder(fromUnit(from, kind, unit)) && si <= justOver(fromUnit(to, kind, unit));
}

/** Parses the text of a reading, using its possible range. */
export const readTyped = (text: string, spec: NumberReading, unit: string): Parsed =>
  parseWithin(text, spec.kind, unit, (si) => canBe(spec, si));

/** Everything that can be recorded about a batch, under the names of the file format. */
export const READINGS = {
  planned: of('mixed', 'density', 'kg/m3', 'Planned wet density', MIX),
  cement: { ...of('mixed', 'mass', 'kg', 'Cement', KG), ...SOME },
  water: { ...of('mixed', 'mass', 'kg', 'Mixing water', KG), ...SOME },
  sand: of('mixed', 'mass', 'kg', 'Sand', KG),
  foamDensity: of('mixed', 'density', 'kg/m3', 'Foam density', FOAM),
  foamVolume: { ...of('mixed', 'volume', 'L', 'Foam put in', LITRES), ...SOME },
  foamLater: of('mixed', 'density', 'kg/m3', 'Foam density, weighed again', FOAM),
  foamLaterAfter: of('mixed', 'time', 'min', 'Weighed again after', [0.1, 600]),
  tare: of('cast', 'mass', 'kg', 'Bucket, empty', [0, 200]),
  full: of('cast', 'mass', 'kg', 'Bucket, full of blended mix', KG),
  vessel: { ...of('cast', 'volume', 'L', 'Bucket’s volume', LITRES), ...SOME },
  foamAdded: of('cast', 'volume', 'L', 'Foam added while correcting', LITRES),
  baseAdded: of('cast', 'mass', 'kg', 'Base mix added while correcting', KG),
  placed: of('cast', 'volume', 'L', 'Filled in the forms', LITRES),
  leftOver: of('cast', 'mass', 'kg', 'Left over or spilled', KG),
  depth: of('cast', 'length', 'mm', 'Depth filled', [1, 5000]),
  sunk: of('cast', 'length', 'mm', 'Top sank by', [0, 2000]),
  cureTemperature: of('cured', 'temperature', 'degC', 'Mean temperature', [-20, 90]),
  stripAge: of('stripped', 'time', 'h', 'Stripped after', [1, 2160]),
  stripped: {
    stage: 'stripped',
    options: ['clean', 'marked', 'broke'],
    label: 'How it came out',
  },
  dryMass: { ...of('dried', 'mass', 'kg', 'Dried piece', KG), ...SOME },
  dryVolume: { ...of('dried', 'volume', 'L', 'Dried piece’s volume', LITRES), ...SOME },
  dried: { stage: 'dried', options: ['air', 'oven'], label: 'How it was dried' },
  crush: of('tested', 'stress', 'MPa', 'Crushing strength', [0.001, 100]),
  crushAge: of('tested', 'time', 'd', 'Age when crushed', DAYS),
  bend: of('tested', 'stress', 'kPa', 'Bending strength', [0.1, 50_000]),
  bendAge: of('tested', 'time', 'd', 'Age when bent', DAYS),
} as const satisfies Readonly<Record<string, NumberReading | ChoiceReading>>;

export type ReadingName = keyof typeof READINGS;

/** The description of any reading. */
export const readingOf = (name: ReadingName): NumberReading | ChoiceReading => READINGS[name];

/** What may be known about a batch before any of it is in the mixer. */
export const BEFORE_MIXING: readonly ReadingName[] = ['planned', 'foamDensity', 'tare', 'vessel'];

export const READING_NAMES = Object.keys(READINGS) as ReadingName[];
