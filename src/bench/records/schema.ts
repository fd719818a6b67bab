import { KINDS } from '../../core/quantity/kinds.ts';
import { READING_NAMES, readingOf } from './readings.ts';
import { RECORD_VERSION } from './record.ts';

/** The part of JSON Schema 2020-12 that this format uses and `validate` understands. */
export interface Schema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean';
  readonly const?: string | number | boolean;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  readonly maxLength?: number;
  readonly minLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxItems?: number;
  readonly minItems?: number;
  readonly maxProperties?: number;
  readonly items?: Schema;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly patternProperties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: false;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

export const LIMITS = {
  name: 120,
  notes: 20_000,
  typed: 4000,
  text: 200,
  batches: 5000,
  photos: 12,
  /** Base64 of a photo: 100 kB and a little. */
  photo: 140_000,
  logPoints: 5000,
  benchEntries: 400,
} as const;

const text = (maxLength: number, description?: string): Schema => ({
  type: 'string',
  maxLength,
  ...(description && { description }),
});
const allUnits = [
  ...new Set(Object.values(KINDS).flatMap(({ units }) => units.map(({ id }) => id))),
].sort();
const unit = (ids: readonly string[], description: string): Schema => ({
  type: 'string',
  enum: ids,
  description,
});

/** A reading as it was typed. */
function entry(units: readonly string[], extra: Readonly<Record<string, Schema>> = {}): Schema {
  const shown = unit(units, 'Unit picked for this field.');
  return {
    type: 'object',
    properties: {
      t: text(LIMITS.typed, 'The text as typed: 13.6, 13,6, 22 1/2 lb.'),
      u: unit(units, 'The unit shown when it was typed; one typed behind the number wins.'),
      s: { type: 'string', enum: ['metric', 'us'], description: 'The system of units then.' },
      p: text(LIMITS.text, 'The ± as typed.'),
      pu: unit(allUnits, 'The unit shown for the ±.'),
      d: {
        type: 'object',
        properties: { metric: shown, us: shown },
        additionalProperties: false,
      },
      ...extra,
    },
    additionalProperties: false,
  };
}

const kinds = new Set(
  READING_NAMES.flatMap((name) => {
    const spec = readingOf(name);
    return 'options' in spec ? [] : [spec.kind];
  }),
);
/** A reading of each kind, and an entry of any. */
const ENTRIES: Readonly<Record<string, Schema>> = {
  ...Object.fromEntries(
    [...kinds].map((kind) => [kind, entry(KINDS[kind].units.map(({ id }) => id))]),
  ),
  entry: entry(allUnits),
};
const reading = (name: (typeof READING_NAMES)[number]): Schema => {
  const spec = readingOf(name);
  if ('options' in spec)
    return {
      type: 'object',
      description: spec.label,
      properties: { t: { type: 'string', enum: spec.options } },
      additionalProperties: false,
    };
  return { $ref: `#/$defs/${spec.kind}`, description: spec.label };
};

const id: Schema = { type: 'string', pattern: '^[A-Za-z0-9_-]{1,60}$' };
const instant: Schema = {
  type: 'string',
  maxLength: 40,
  pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d+)?Z$',
};
const benchKey = '^[A-Za-z0-9_.-]{1,60}$';

export const RECORD_SCHEMA: Schema = {
  type: 'object',
  description: 'One batch.',
  required: [
    'version',
    'id',
    'revision',
    'name',
    'date',
    'changed',
    'notes',
    'readings',
    'photos',
    'bench',
    'kept',
  ],
  properties: {
    version: { const: RECORD_VERSION, description: 'The version of this shape.' },
    id: { ...id, description: 'Tells this batch from all others; stays the same for good.' },
    revision: {
      type: 'integer',
      minimum: 0,
      maximum: 1e9,
      description: 'How many times it was saved.',
    },
    name: text(LIMITS.name),
    date: {
      type: 'string',
      pattern: '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$',
      description: 'The day it was cast.',
    },
    changed: { ...instant, description: 'When it was last saved, in universal time.' },
    invented: { const: true, description: 'Made up, to show how records work.' },
    notes: text(LIMITS.notes),
    readings: {
      type: 'object',
      description: 'What was weighed and measured. Any may be missing.',
      properties: Object.fromEntries(READING_NAMES.map((name) => [name, reading(name)])),
      additionalProperties: false,
    },
    log: {
      type: 'object',
      description:
        'Temperatures of the cure: seconds from casting, rising; kelvin; as many of each.',
      required: ['seconds', 'kelvin'],
      properties: {
        seconds: {
          type: 'array',
          minItems: 1,
          maxItems: LIMITS.logPoints,
          items: { type: 'number', minimum: -1e9, maximum: 1e9 },
        },
        kelvin: {
          type: 'array',
          minItems: 1,
          maxItems: LIMITS.logPoints,
          items: { type: 'number', minimum: 173, maximum: 423 },
        },
      },
      additionalProperties: false,
    },
    photos: {
      type: 'array',
      description: 'Which photos belong to it, in their order.',
      maxItems: LIMITS.photos,
      items: {
        type: 'object',
        required: ['id', 'caption'],
        properties: { id, caption: text(LIMITS.text) },
        additionalProperties: false,
      },
    },
    foamMade: { ...instant, description: 'When the foam left the lance, in universal time.' },
    bench: {
      type: 'object',
      description: 'The fields of the bench when the batch was saved, as typed.',
      maxProperties: LIMITS.benchEntries,
      patternProperties: {
        [benchKey]: entry(allUnits, {
          rows: {
            type: 'array',
            maxItems: 40,
            description: 'The rows of a list: each row’s fields by name.',
            items: {
              type: 'object',
              maxProperties: 40,
              patternProperties: { [benchKey]: { $ref: '#/$defs/entry' } },
              additionalProperties: false,
            },
          },
        }),
      },
      additionalProperties: false,
    },
    kept: {
      type: 'object',
      description: 'The results of worksheets that were on the bench, in SI.',
      maxProperties: LIMITS.benchEntries,
      patternProperties: {
        [benchKey]: {
          type: 'object',
          required: ['v', 'from'],
          properties: {
            v: { type: 'number', description: 'The value, in SI.' },
            pm: { type: 'number', description: 'Its standard uncertainty, in SI.' },
            from: text(LIMITS.text, 'The worksheet’s question.'),
          },
          additionalProperties: false,
        },
      },
      additionalProperties: false,
    },
  },
  additionalProperties: false,
  $defs: ENTRIES,
};

export const PHOTO_SCHEMA: Schema = {
  type: 'object',
  required: ['id', 'batch', 'width', 'height', 'data'],
  properties: {
    id,
    batch: { ...id, description: 'The batch it belongs to.' },
    width: { type: 'integer', minimum: 1, maximum: 4000 },
    height: { type: 'integer', minimum: 1, maximum: 4000 },
    data: {
      type: 'string',
      maxLength: LIMITS.photo,
      pattern: '^/9j/[A-Za-z0-9+/]*={0,2}$',
      description: 'JPEG, base64.',
    },
  },
  additionalProperties: false,
};

function withoutDefs({ $defs: _, ...schema }: Schema): Schema {
  return schema;
}

export const FORMAT = 'suds-and-slurry batches';

/** The file in which batches are taken out. */
export const FILE_SCHEMA: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Batches of foamed concrete, with what was weighed and measured of each',
  type: 'object',
  required: ['format', 'version', 'taken', 'batches', 'photos'],
  properties: {
    format: { const: FORMAT },
    version: { const: RECORD_VERSION },
    taken: { ...instant, description: 'When the file was written, in universal time.' },
    batches: { type: 'array', maxItems: LIMITS.batches, items: { $ref: '#/$defs/batch' } },
    photos: {
      type: 'array',
      maxItems: LIMITS.batches * LIMITS.photos,
      items: { $ref: '#/$defs/photo' },
    },
    bench: {
      ...RECORD_SCHEMA.properties!.bench!,
      description: 'In a full backup: what lay on the bench.',
    },
  },
  additionalProperties: false,
  $defs: { batch: withoutDefs(RECORD_SCHEMA), photo: PHOTO_SCHEMA, ...ENTRIES },
};
