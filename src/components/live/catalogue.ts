import type { ComponentType } from 'preact';
import type { AnyWorksheet } from '../../islands/worksheet.ts';

const worksheetFiles = import.meta.glob<AnyWorksheet>(
  ['../../worksheets/*/*.tsx', '!../../worksheets/live/*'],
  { eager: true, import: 'default' },
);
/** A live part. `given` is the data its page was built with, if the part needs any. */
type LivePart = ComponentType<{ readonly given?: unknown }>;
const liveFiles = import.meta.glob<LivePart>('../../worksheets/live/*.tsx', {
  eager: true,
  import: 'default',
});

const idOf = (file: string) => file.replace(/^.*\/|\.tsx$/g, '');

/** The worksheets of some files by id. Throws when an id is not the name of its file. */
export const byId = (files: Readonly<Record<string, AnyWorksheet>>) =>
  new Map(
    Object.entries(files).map(([file, sheet]) => {
      if (sheet?.id !== idOf(file)) throw new Error(`${file}: its id is '${sheet?.id}'`);
      return [sheet.id, sheet];
    }),
  );

/** Every worksheet by its id. */
export const worksheets: ReadonlyMap<string, AnyWorksheet> = byId(worksheetFiles);

const live: ReadonlyMap<string, LivePart> = new Map(
  Object.entries(liveFiles).map(([file, part]) => [idOf(file), part]),
);

/** The worksheet with this id; an unknown id fails the build and names the page that used it. */
export function worksheetOf(id: string, where: string): AnyWorksheet {
  const sheet = worksheets.get(id);
  if (!sheet) throw new Error(`${where}: there is no worksheet '${id}'`);
  return sheet;
}

/** Where a worksheet's script is found: its folder and id. */
export const placeOf: ReadonlyMap<string, string> = new Map(
  Object.keys(worksheetFiles).map((file) => [
    idOf(file),
    file.replace(/^.*\/([^/]+\/[^/]+)\.tsx$/, '$1'),
  ]),
);

/** The live part with this id; an unknown id fails the build and names the page that used it. */
export function livePartOf(id: string, where: string): LivePart {
  const part = live.get(id);
  if (!part) throw new Error(`${where}: there is no live part '${id}'`);
  return part;
}
