import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { idLike } from '#model/entry-id.ts';
import { writeNew } from '#publish/atomic.ts';
import { measurePicture } from '#publish/images.ts';
import { pictureKind } from '#publish/picture-kind.ts';
import { columnNames, placesOf, proposedColumns } from '#read/climate-columns.ts';
import type { CollectionFiles } from '#read/collection.ts';
import type { FoundEntry } from './entry-files.ts';
import { makeInside, refuseOutside } from './own-folder.ts';
import { DeskRefusal } from './refusal.ts';

/** A climate log that was put beside a place. */
export interface AddedLog {
  /** As the entry names it. */
  readonly file: string;
  /** What its columns are called. */
  readonly header: readonly string[];
  /** What they might mean, where the header by itself doesn't say it: to be looked over by the owner. */
  readonly columns: Readonly<Record<string, string>> | undefined;
  readonly zone: string | undefined;
}

/** A photograph beside its entry, byte for byte, under a safe name made from its own; answers how the entry names it.
 *
 * @throws {DeskRefusal} when it isn't a photograph that opens. */
export async function addPhotograph(root: string, entry: FoundEntry, name: string, bytes: Uint8Array): Promise<string> {
  const measured = await measurePicture(bytes);
  if ('problem' in measured) throw new DeskRefusal(415, `${measured.problem} ${measured.action}`);
  const kind = pictureKind(bytes);
  const ending = kind === 'JPEG' ? 'jpg' : (kind ?? '').toLowerCase();
  return await addBeside(root, entry, idLike(name.replace(/\.[^.]*$/u, '')) || 'photograph', ending, bytes);
}

/** A climate log beside its place, byte for byte.
 *
 * @throws {DeskRefusal} when it is no table of text. */
export async function addLog(root: string, entry: FoundEntry, name: string, bytes: Uint8Array): Promise<AddedLog> {
  const header = headerOf(bytes);
  if (header === undefined)
    throw new DeskRefusal(
      415,
      'This is no climate log: a text file with a heading over its columns, and a comma, a semicolon or a tab between them. Let the logger’s program save it as CSV.',
    );
  const file = await addBeside(root, entry, idLike(name.replace(/\.[^.]*$/u, '')) || 'climate', 'csv', bytes);
  const { columns, zone } = proposedColumns(header);
  const said = says(header);
  return { file, header: columnNames(header), columns: said ? undefined : Object.fromEntries(columns), zone };
}

/** Names that mean a device under Windows, whatever ending they have. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)$/u;

async function addBeside(root: string, entry: FoundEntry, wished: string, ending: string, bytes: Uint8Array) {
  const stem = DEVICE.test(wished) ? `${wished}-file` : wished;
  const { within, prefix } = ownFolder(entry);
  const folder = join(root, ...within.split('/'));
  await makeInside(root, folder);
  for (let count = 1; count < 1000; count++) {
    const name = count === 1 ? `${stem}.${ending}` : `${stem}-${count}.${ending}`;
    if (await writeNew(join(folder, name), bytes)) return prefix + name;
  }
  throw new DeskRefusal(409, 'There are a thousand files of this name already.');
}

/** Where an entry's files lie, and what their names begin with: an entry that is a single file has them in a folder of
 * its own name beside it. */
function ownFolder({ kind, id, path }: Pick<FoundEntry, 'kind' | 'id' | 'path'>): { within: string; prefix: string } {
  return path.endsWith('/index.md')
    ? { within: path.slice(0, -'/index.md'.length), prefix: '' }
    : { within: `${kind}/${id}`, prefix: `${id}/` };
}

/** The photographs in an entry's own folder, as it names them. */
export function imagesOf(files: CollectionFiles, entry: Pick<FoundEntry, 'kind' | 'id' | 'path'>): readonly string[] {
  if (entry.kind === 'collection') return [];
  const { within, prefix } = ownFolder(entry);
  return files.images
    .filter((image) => image.startsWith(`${within}/`))
    .map((image) => prefix + image.slice(within.length + 1));
}

/** A photograph of the collection that an entry names.
 *
 * @throws {DeskRefusal} when there is none of that name, or it is none. */
export async function photographOf(
  root: string,
  files: CollectionFiles,
  { path }: Pick<FoundEntry, 'path'>,
  name: string,
): Promise<{ readonly type: string; readonly bytes: Uint8Array }> {
  const wanted = `${path.slice(0, path.lastIndexOf('/') + 1)}${name}`;
  const found = files.images.find((image) => image === wanted);
  if (found === undefined) throw new DeskRefusal(404, 'There is no such photograph.');
  const file = join(root, ...found.split('/'));
  await refuseOutside(root, file);
  const bytes = await readFile(file);
  const kind = pictureKind(bytes);
  if (kind === undefined) throw new DeskRefusal(415, 'This file is no photograph that can be opened.');
  return { type: `image/${kind.toLowerCase()}`, bytes };
}

/** Whether a line names the columns so clearly that the entry needn't. */
const says = (line: string) => placesOf(line, undefined) !== undefined;

const LINES_ABOVE_HEADER = 20;
const LOOKED_AT_BYTES = 64 * 1024;

/** The line that names a log's columns: the first that says what they are, else the first with anything between them. */
function headerOf(bytes: Uint8Array): string | undefined {
  const start = bytes.subarray(0, LOOKED_AT_BYTES);
  if (start.includes(0)) return undefined;
  const text = new TextDecoder('utf-8').decode(start).replace(/^\ufeff/u, '');
  if (/^\s*[<{%]/u.test(text)) return undefined;
  const lines = text
    .split(/\r\n|\r|\n/u)
    .filter((line) => line.trim() !== '')
    .slice(0, LINES_ABOVE_HEADER);
  return (
    lines.find((line) => says(line)) ?? (lines.length > 1 ? lines.find((line) => /[,;\t]/u.test(line)) : undefined)
  );
}
