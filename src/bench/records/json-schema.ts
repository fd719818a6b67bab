/** The subset of JSON Schema 2020-12 that this format uses and `validate` supports. */
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
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxItems?: number;
  readonly minItems?: number;
  readonly maxProperties?: number;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly patternProperties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: false;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}
