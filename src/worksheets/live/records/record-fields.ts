import type { Entry, System } from '../../../bench/entries.ts';
import {
  READING_NAMES,
  READINGS,
  type ReadingName,
  STAGES,
  type Stage,
} from '../../../bench/records/readings.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import {
  type ChoiceField,
  choice,
  type NumberField,
  number,
  type Units,
} from '../../../islands/fields.ts';
import type { Asked } from '../../../islands/worksheet.ts';
import { OF_LITTLE } from '../../shared/mix/of-little.ts';
import { ADDED_FOAM, DAYS, FOAM, HOURS, KPA } from '../../shared/words/amounts.ts';

type NumberName = Exclude<ReadingName, 'stripped' | 'dried'>;
/** The label of a reading, and its bounds, outside which it is not used. */
const own = (name: NumberName) => {
  const { label, kind, unit, from, to } = READINGS[name];
  const { symbol } = unitOf(kind, unit);
  return { label, min: `${from} ${symbol}`, max: `${to} ${symbol}`, optional: true } as const;
};
/** The default ± of a scale, until one is typed: a round number in either unit system. A choice. */
export const SCALE = {
  metric: { p: '0.01', pu: 'kg' },
  us: { p: '0.02', pu: 'lb' },
} as const satisfies Readonly<Record<System, Entry>>;
const ON_SCALE = `${SCALE.metric.p} ${SCALE.metric.pu}`;
const mass = (name: NumberName, help?: string) =>
  number('mass', { ...own(name), ...(help && { help }), example: '1 kg', plusMinus: ON_SCALE });
const litres = (name: NumberName, plusMinus: string, help?: string) =>
  number('volume', {
    ...own(name),
    ...(help && { help }),
    example: '1 L',
    plusMinus,
  });
const foam = (name: NumberName, help?: string) =>
  number('density', { ...own(name), ...(help && { help }), example: '80 g/L', units: FOAM });
const other = <K extends 'time' | 'length' | 'stress'>(
  kind: K,
  name: NumberName,
  more: { example: string; help?: string; units?: Units },
) => number(kind, { ...own(name), ...more });

/** The fields of a batch record, by the names of its readings; each may stay empty. */
export const RECORD_FIELDS = {
  planned: number('density', { ...own('planned'), example: '600 kg/m3' }),
  cement: mass('cement'),
  water: mass('water', 'In the base mix, without the foam’s.'),
  sand: { ...mass('sand', 'Surface dry; 0 where none went in.'), nothingIsSure: true },
  foamDensity: { ...foam('foamDensity'), plusMinus: '1 g/L' },
  foamVolume: {
    ...litres('foamVolume', '0.5 L', 'As measured out, by the bucket.'),
    example: '25.3 L',
    plusMinusGrows: true,
  },
  foamLater: foam(
    'foamLater',
    'The same foam after it has stood, its liquid poured off first: with it, it weighs the same.',
  ),
  foamLaterAfter: other('time', 'foamLaterAfter', {
    example: '10 min',
  }),
  tare: mass('tare'),
  full: mass('full', 'Struck level. Each weighing goes here: the last before it is placed counts.'),
  vessel: { ...litres('vessel', '0.2 L', 'To the brim.'), example: '20 L', plusMinusGrows: true },
  foamAdded: {
    ...litres('foamAdded', '0.5 L'),
    units: ADDED_FOAM,
    nothingIsSure: true,
    ...OF_LITTLE,
  },
  baseAdded: { ...mass('baseAdded'), nothingIsSure: true },
  placed: {
    ...litres('placed', '0.3 L', 'Forms and samples, by their inside measures.'),
    example: '32.4 L',
    plusMinusGrows: true,
  },
  leftOver: {
    ...mass(
      'leftOver',
      'Scraped from mixer, bucket and floor, and what was taken out before a correction.',
    ),
    plusMinus: '0.05 kg',
    ...OF_LITTLE,
  },
  depth: other('length', 'depth', { example: '60 mm' }),
  sunk: other('length', 'sunk', { example: '2 mm' }),
  cureTemperature: number('temperature', {
    ...own('cureTemperature'),
    help: 'From casting to stripping; a log below counts before it, as far as it reaches.',
    example: '17 °C',
  }),
  stripAge: other('time', 'stripAge', { example: '40 h', units: HOURS }),
  stripped: choice({
    label: READINGS.stripped.label,
    options: {
      '': 'Not written down',
      clean: 'Clean, every edge sound',
      marked: 'Marked or crumbling edges',
      broke: 'Broke',
    },
    example: '',
  }),
  dryMass: mass('dryMass'),
  dryVolume: { ...litres('dryVolume', '0.05 L'), example: '5 L', plusMinusGrows: true },
  dried: choice({
    label: READINGS.dried.label,
    options: { '': 'Not written down', air: 'In air', oven: 'In an oven to constant mass' },
    example: '',
  }),
  crush: other('stress', 'crush', {
    example: '1 MPa',
    help: 'The mean of what was crushed.',
  }),
  crushAge: other('time', 'crushAge', { example: '28 d', units: DAYS }),
  bend: other('stress', 'bend', {
    example: '230 kPa',
    units: KPA,
    help: 'The mean of the bars broken.',
  }),
  bendAge: other('time', 'bendAge', { example: '3 d', units: DAYS }),
} as const satisfies Readonly<Record<ReadingName, NumberField | ChoiceField>>;

/** The default ± of a weighing: that of a scale in the unit system it was typed in. */
export function scaleOf(name: ReadingName, entry: Entry | undefined, system: System) {
  const field: NumberField | ChoiceField = RECORD_FIELDS[name];
  return entry?.p === undefined && field.type === 'number' && field.plusMinus === ON_SCALE
    ? SCALE[entry?.s ?? system]
    : {};
}

/** The part of a worksheet that is needed to read its fields. */
export const RECORD_SHEET: Asked = { id: 'record', fields: RECORD_FIELDS };

/** The readings of each stage. */
export const BY_STAGE: readonly (readonly [Stage, readonly ReadingName[]])[] = STAGES.map(
  (stage) => [stage, READING_NAMES.filter((name) => READINGS[name].stage === stage)],
);
