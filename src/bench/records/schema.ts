import { DAY_PATTERN } from './day.ts';
import type { Schema } from './json-schema.ts';
import { LIMITS } from './limits.ts';
import { READING_NAMES } from './readings.ts';
import { MOST_REVISIONS, RECORD_VERSION } from './record.ts';
import { allUnits, benchKey, ENTRIES, entry, id, instant, reading, text } from './schema-parts.ts';

const amount = (description: string): Schema => ({
  type: 'number',
  minimum: 0,
  maximum: 1e9,
  description,
});

/** A result of a worksheet. The first of its own properties is required. */
const result = (own: Readonly<Record<string, Schema>>): Schema => ({
  type: 'object',
  required: [Object.keys(own)[0]!, 'from'],
  properties: {
    ...own,
    from: text(LIMITS.text, 'The worksheet’s question.'),
    by: { ...id, description: 'The worksheet’s id.' },
  },
  additionalProperties: false,
});

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
    'corrections',
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
      maximum: MOST_REVISIONS,
      description: 'How many times it was saved.',
    },
    name: text(LIMITS.name),
    date: {
      type: 'string',
      pattern: DAY_PATTERN,
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
    corrections: {
      type: 'array',
      description: 'Corrections of the mix at the bench, in the order in which they were made.',
      maxItems: LIMITS.corrections,
      items: {
        type: 'object',
        required: ['weighed'],
        properties: {
          weighed: amount('The wet density that asked for it, kg/m³; 0: not known.'),
          out: amount('Mix that was taken out before anything was added, kg.'),
          foam: amount('Foam that was added, m³.'),
          base: amount('Base mix that was added, kg.'),
        },
        additionalProperties: false,
      },
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
          from: text(
            LIMITS.text,
            'The casting that the hours of a logger’s readings are counted from, by the maker’s clock: 2026-05-08T14:00.',
          ),
          rows: {
            type: 'array',
            maxItems: LIMITS.rows,
            description: 'The rows of a list: each row’s fields by name.',
            items: {
              type: 'object',
              maxProperties: LIMITS.cells,
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
          anyOf: [
            result({
              v: { type: 'number', description: 'The value, in SI.' },
              pm: { type: 'number', description: 'Its standard uncertainty, in SI.' },
              example: { const: true, description: 'It rests on readings of the example.' },
            }),
            result({ waits: { const: true, description: 'It has no answer yet.' } }),
          ],
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

/** The file format for exporting batches. */
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
    kept: {
      ...RECORD_SCHEMA.properties!.kept!,
      description: 'In a full backup: the results of worksheets that lay on the bench, in SI.',
    },
  },
  additionalProperties: false,
  $defs: { batch: withoutDefs(RECORD_SCHEMA), photo: PHOTO_SCHEMA, ...ENTRIES },
};
