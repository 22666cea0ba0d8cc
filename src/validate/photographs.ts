import type { PhotographFact } from '#model/catalogue.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import type { EntryBase, Photo } from '#model/entry.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import { nearestOf } from '#model/nearest.ts';

/** What entries say of photographs against the files beside them: named and not there, there and not named, not a
 * picture that opens, read from without being listed. */
export function checkPhotographs(
  entries: Entries,
  images: readonly string[],
  measured: ReadonlyMap<string, PhotographFact> | undefined,
): Diagnostic[] {
  const problems: Diagnostic[] = [];
  const there = new Set(images);
  const beside = besideEntries(images);
  const named = new Set<string>();
  const all: readonly EntryBase[] = [
    ...entries.reels,
    ...entries.editions,
    ...entries.machines,
    ...entries.stocks,
    ...entries.places,
    ...entries.people,
    ...entries.shares,
    ...entries.notes,
  ];
  for (const entry of all) {
    for (const photo of itemsOf(entry.photos)) {
      const path = pathOf(entry, photo);
      named.add(path);
      const fact = measured?.get(path);
      if (!there.has(path) && fact === undefined) problems.push(missing(photo, entry, beside));
      else if (fact?.opens === false) problems.push(unreadable(photo, fact));
    }
  }
  for (const reel of entries.reels) {
    const files = new Set(itemsOf(reel.photos).map((photo) => photo.file.value));
    for (const { photo } of itemsOf(reel.readings))
      if (photo !== undefined && !files.has(photo.value)) problems.push(unlisted(photo, files));
  }
  const others = images.filter((path) => !named.has(path));
  if (others.length === 0) return problems;
  const owners = new Map(all.map((entry) => [folderOf(entry.file), entry]));
  for (const path of others) problems.push(...unnamed(path, owners, entries.unusable));
  return problems;
}

/** Relative to the collection. */
const pathOf = (entry: EntryBase, photo: Photo): string => `${folderOf(entry.file)}/${photo.file.value}`;

const folderOf = (file: string) => file.slice(0, file.lastIndexOf('/'));

/** The images by the folder that they stand in. */
function besideEntries(images: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const beside = new Map<string, string[]>();
  for (const path of images) {
    const folder = folderOf(path);
    const names = beside.get(folder) ?? [];
    names.push(path.slice(folder.length + 1));
    beside.set(folder, names);
  }
  return beside;
}

function missing(photo: Photo, entry: EntryBase, images: ReadonlyMap<string, readonly string[]>): Diagnostic {
  const folder = `${folderOf(entry.file)}/`;
  const beside = images.get(folderOf(entry.file)) ?? [];
  const name = photo.file.value;
  const spelled = beside.find((other) => other.normalize('NFC') === name.normalize('NFC'));
  const near = spelled ?? nearestOf(name, beside);
  const alike = 'A file of this name is there, with its accents in another Unicode form: rename it.';
  const action =
    near === undefined
      ? `Put the photograph into ${folder}, or take the line away.`
      : `Write ${near}, if that is the one.`;
  return {
    code: 'photo/missing',
    severity: 'error',
    message: 'There is no such photograph beside the entry.',
    action: spelled === undefined ? action : alike,
    found: name,
    expected: near ?? `a file in ${folder}`,
    place: photo.file.place,
    related: [],
  };
}

function unreadable(photo: Photo, fact: Extract<PhotographFact, { opens: false }>): Diagnostic {
  return {
    code: 'photo/unreadable',
    severity: 'error',
    message: fact.problem,
    action: fact.action,
    found: photo.file.written,
    expected: 'a picture that opens',
    place: photo.file.place,
    related: [],
  };
}

function unlisted(photo: Known<string>, files: ReadonlySet<string>): Diagnostic {
  const near = nearestOf(photo.value, files);
  return {
    code: 'entry/unknown-reference',
    severity: 'error',
    message: 'The reading is from a photograph that the entry does not list under photos.',
    action:
      near === undefined
        ? 'List the photograph under photos.'
        : `Write ${near}, if that is the one, or list it under photos.`,
    found: photo.written,
    expected: near ?? ([...files].join(', ') || 'a file listed under photos'),
    place: photo.place,
    related: [],
  };
}

/** An image beside an entry that neither its photos nor its text names. Beside an entry that can't be used nothing is said. */
function unnamed(path: string, owners: ReadonlyMap<string, EntryBase>, unusable: ReadonlySet<string>): Diagnostic[] {
  const [folder = '', id = ''] = path.split('/');
  if (unusable.has(`${folder}/${id}`)) return [];
  const entry = owners.get(`${folder}/${id}`);
  const name = entry === undefined ? path : path.slice(folder.length + id.length + 2);
  if (entry?.body.includes(name)) return [];
  return [
    {
      code: 'photo/unnamed',
      severity: 'note',
      message:
        entry === undefined
          ? 'This image stands beside no entry that names it.'
          : 'An image beside the entry is not named in it.',
      action: 'Name it under photos if it shows this tape, else leave it or move it away.',
      found: name,
      expected: `photos: a line with file: ${name}`,
      place:
        entry === undefined ? { file: path, line: 1, column: 1, field: '' } : (entry.keys.get('photos') ?? entry.place),
      related: [],
    },
  ];
}
