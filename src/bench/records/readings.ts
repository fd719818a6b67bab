import type { Kind } from '../../core/quantity/kinds.ts';

/** The days of a batch, in their order. */
export const STAGES = ['mixed', 'cast', 'cured', 'stripped', 'dried', 'tested'] as const;
export type Stage = (typeof STAGES)[number];

interface NumberReading {
  readonly stage: Stage;
  readonly kind: Kind;
  /** The unit of its column in a spreadsheet. */
  readonly unit: string;
  /** What it is, in a few words. */
  readonly label: string;
}
interface ChoiceReading {
  readonly stage: Stage;
  readonly options: readonly string[];
  readonly label: string;
}

const of = (stage: Stage, kind: Kind, unit: string, label: string) =>
  ({ stage, kind, unit, label }) as const;

/** Everything that may be written down of a batch. The names are those of the file format. */
export const READINGS = {
  planned: of('mixed', 'density', 'kg/m3', 'Planned wet density'),
  cement: of('mixed', 'mass', 'kg', 'Cement'),
  water: of('mixed', 'mass', 'kg', 'Mixing water'),
  sand: of('mixed', 'mass', 'kg', 'Sand'),
  foamDensity: of('mixed', 'density', 'kg/m3', 'Foam density'),
  foamVolume: of('mixed', 'volume', 'L', 'Foam put in'),
  foamLater: of('mixed', 'density', 'kg/m3', 'Foam density, weighed again'),
  foamLaterAfter: of('mixed', 'time', 'min', 'Weighed again after'),
  tare: of('cast', 'mass', 'kg', 'Bucket, empty'),
  full: of('cast', 'mass', 'kg', 'Bucket, full of blended mix'),
  vessel: of('cast', 'volume', 'L', 'Bucket’s volume'),
  foamAdded: of('cast', 'volume', 'L', 'Foam added while correcting'),
  baseAdded: of('cast', 'mass', 'kg', 'Base mix added while correcting'),
  placed: of('cast', 'volume', 'L', 'Filled in the forms'),
  leftOver: of('cast', 'mass', 'kg', 'Left over or spilled'),
  depth: of('cast', 'length', 'mm', 'Depth filled'),
  sunk: of('cast', 'length', 'mm', 'Top sank by'),
  cureTemperature: of('cured', 'temperature', 'degC', 'Mean temperature'),
  stripAge: of('stripped', 'time', 'h', 'Stripped after'),
  stripped: {
    stage: 'stripped',
    options: ['clean', 'marked', 'broke'],
    label: 'How it came out',
  },
  dryMass: of('dried', 'mass', 'kg', 'Dried piece'),
  dryVolume: of('dried', 'volume', 'L', 'Its volume'),
  dried: { stage: 'dried', options: ['air', 'oven'], label: 'How it was dried' },
  crush: of('tested', 'stress', 'MPa', 'Crushing strength'),
  crushAge: of('tested', 'time', 'd', 'Age when crushed'),
  bend: of('tested', 'stress', 'kPa', 'Bending strength'),
  bendAge: of('tested', 'time', 'd', 'Age when bent'),
} as const satisfies Readonly<Record<string, NumberReading | ChoiceReading>>;

export type ReadingName = keyof typeof READINGS;

/** What any reading is, when which one it is does not matter. */
export const readingOf = (name: ReadingName): NumberReading | ChoiceReading => READINGS[name];

/** What may be known of a batch before any of it is in the mixer. */
export const BEFORE_MIXING: readonly ReadingName[] = ['planned', 'foamDensity', 'tare', 'vessel'];

export const READING_NAMES = Object.keys(READINGS) as ReadingName[];
