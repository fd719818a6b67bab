import {
  READING_NAMES,
  READINGS,
  type ReadingName,
  STAGES,
  type Stage,
} from '../../bench/records/readings.ts';
import { type ChoiceField, choice, type NumberField, number } from '../../islands/fields.ts';
import type { AnyWorksheet } from '../../islands/worksheet.ts';
import { DENSITY, FOAM, LITRES } from './amounts.ts';
import { DAYS, HOURS, KPA, MM, MPA } from './part-fields.ts';

const label = (name: ReadingName) => READINGS[name].label;
const mass = (name: ReadingName, help?: string, max = '5000 kg') =>
  number('mass', {
    label: label(name),
    ...(help && { help }),
    example: '1 kg',
    plusMinus: '0.01 kg',
    min: '0 kg',
    max,
    optional: true,
  });
const litres = (name: ReadingName, plusMinus: string, help?: string) =>
  number('volume', {
    label: label(name),
    ...(help && { help }),
    example: '1 L',
    plusMinus,
    min: '0 L',
    max: '5 m3',
    units: LITRES,
    optional: true,
  });
const density = (name: ReadingName, units: { metric: string; us: string }, help?: string) =>
  number('density', {
    label: label(name),
    ...(help && { help }),
    example: '80 g/L',
    ...(units === FOAM && { plusMinus: '1 g/L' }),
    min: '5 kg/m3',
    max: '4000 kg/m3',
    units,
    optional: true,
  });
const other = <K extends 'time' | 'length' | 'stress'>(
  kind: K,
  name: ReadingName,
  units: { metric: string; us: string },
  bounds: { example: string; min: string; max: string; help?: string },
) => number(kind, { label: label(name), units, optional: true, ...bounds });
const MINUTES = { metric: 'min', us: 'min' } as const;

/** The fields of a batch record, by the names of its readings; each may stay empty. */
export const RECORD_FIELDS = {
  planned: density('planned', DENSITY),
  cement: mass('cement'),
  water: mass('water', 'In the base mix, without the foam’s.'),
  sand: mass('sand', 'Surface dry; leave it empty for none.'),
  foamDensity: density('foamDensity', FOAM),
  foamVolume: litres('foamVolume', '0.5 L', 'As measured out, by the bucket.'),
  foamLater: density('foamLater', FOAM, 'The same foam, after it has stood.'),
  foamLaterAfter: other('time', 'foamLaterAfter', MINUTES, {
    example: '10 min',
    min: '0.1 min',
    max: '600 min',
  }),
  tare: mass('tare', undefined, '200 kg'),
  full: mass('full', 'Struck level; the last weighing before it was placed.'),
  vessel: litres('vessel', '0.2 L', 'To the brim.'),
  foamAdded: litres('foamAdded', '0.5 L'),
  baseAdded: mass('baseAdded'),
  placed: litres('placed', '0.3 L', 'Forms and samples, by their inside measures.'),
  leftOver: mass('leftOver', 'Scraped from mixer, bucket and floor.'),
  depth: other('length', 'depth', MM, { example: '60 mm', min: '1 mm', max: '5 m' }),
  sunk: other('length', 'sunk', MM, { example: '2 mm', min: '0 mm', max: '2 m' }),
  cureTemperature: number('temperature', {
    label: label('cureTemperature'),
    help: 'From casting to stripping; a log below counts before it.',
    example: '17 °C',
    min: '-20 °C',
    max: '90 °C',
    optional: true,
  }),
  stripAge: other('time', 'stripAge', HOURS, { example: '40 h', min: '1 h', max: '90 d' }),
  stripped: choice({
    label: label('stripped'),
    options: {
      '': 'Not written down',
      clean: 'Clean, every edge sound',
      marked: 'Marked or crumbling edges',
      broke: 'Broke',
    },
    example: '',
  }),
  dryMass: mass('dryMass'),
  dryVolume: litres('dryVolume', '0.05 L'),
  dried: choice({
    label: label('dried'),
    options: { '': 'Not written down', air: 'In air', oven: 'In an oven to constant mass' },
    example: '',
  }),
  crush: other('stress', 'crush', MPA, {
    example: '1 MPa',
    min: '0.001 MPa',
    max: '100 MPa',
    help: 'The mean of what was crushed.',
  }),
  crushAge: other('time', 'crushAge', DAYS, { example: '28 d', min: '0.5 d', max: '1000 d' }),
  bend: other('stress', 'bend', KPA, {
    example: '230 kPa',
    min: '0.1 kPa',
    max: '50 MPa',
    help: 'The mean of the bars broken.',
  }),
  bendAge: other('time', 'bendAge', DAYS, { example: '3 d', min: '0.5 d', max: '1000 d' }),
} as const satisfies Readonly<Record<ReadingName, NumberField | ChoiceField>>;

/** Enough of a worksheet for its fields to be read. */
export const RECORD_SHEET = { id: 'record', fields: RECORD_FIELDS } as unknown as AnyWorksheet;

/** The readings of each day. */
export const BY_STAGE: readonly (readonly [Stage, readonly ReadingName[]])[] = STAGES.map(
  (stage) => [stage, READING_NAMES.filter((name) => READINGS[name].stage === stage)],
);
