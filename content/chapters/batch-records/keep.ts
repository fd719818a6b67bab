import { toCsv } from '~/bench/records/csv.ts';
import { LARGEST_FILE } from '~/bench/records/file.ts';
import { toFile } from '~/bench/records/to-file.ts';
import { invented } from './invented.ts';

/** How large a file may be, MB. */
export const largestFile = LARGEST_FILE / 1024 ** 2;

/** The six invented batches as a file, kB, and as a table, lines with its headings. */
export const jsonSize = toFile({ batches: invented, photos: [] }).length / 1000;
export const csvLines = toCsv(invented).trim().split('\n').length;
