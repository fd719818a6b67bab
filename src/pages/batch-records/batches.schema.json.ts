import { FILE_SCHEMA } from '../../bench/records/schema.ts';

/** The schema that files of batches are validated against, published for other programs. */
export const GET = () =>
  new Response(JSON.stringify(FILE_SCHEMA), {
    headers: { 'content-type': 'application/schema+json' },
  });
