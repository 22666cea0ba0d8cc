import type { PhotographFact } from '#model/catalogue.ts';
import { byText, type Diagnostic } from '#model/diagnostic.ts';
import type { CollectionInfo, Entries } from '#model/entries.ts';
import type { EntryBase } from '#model/entry.ts';
import type { EntryKind } from '#model/words.ts';
import type { CollectionFiles } from '#read/collection.ts';
import type { RawEntry } from '#read/front-matter.ts';
import type { MapSchema } from './branch.ts';
import { checkFieldNames } from './field-names.ts';
import { checkPhotographs } from './photographs.ts';
import { readFacts } from './read-facts.ts';
import { checkReferences } from './references.ts';
import { repeatedId } from './repeated-id.ts';
import type { Facts } from './schemas/base.ts';
import { collection } from './schemas/collection.ts';
import { edition } from './schemas/edition.ts';
import { machine } from './schemas/machine.ts';
import { note } from './schemas/note.ts';
import { person } from './schemas/person.ts';
import { storagePlace } from './schemas/place.ts';
import { reel } from './schemas/reel.ts';
import { share } from './schemas/share.ts';
import { stock } from './schemas/stock.ts';

export interface Validated {
  readonly entries: Entries;
  readonly problems: readonly Diagnostic[];
}

/** The files of a collection as entries in our units, and what is wrong with them. An entry with a value that can't be
 * read is used without it; one that can't be used at all is named in `unusable` and hides no other.
 *
 * @param photographs  As measured; where they aren't given, only their presence is looked at. */
export function validateAll(files: CollectionFiles, photographs?: ReadonlyMap<string, PhotographFact>): Validated {
  const problems: Diagnostic[] = [];
  const sorted = sortOut(files, problems);
  const unusable = new Set(sorted.unusable);

  function read<E extends EntryBase>(folder: E['folder'], schema: MapSchema<Facts<E>>): E[] {
    const entries: E[] = [];
    for (const raw of sorted.byFolder.get(folder) ?? []) {
      let answer = ENTRIES.get(raw);
      if (answer === undefined) {
        answer = entryOf(raw, folder, schema);
        ENTRIES.set(raw, answer);
      }
      problems.push(...answer.problems);
      if (answer.entry === undefined) unusable.add(`${folder}/${raw.id}`);
      else entries.push(answer.entry as E);
    }
    return entries;
  }

  const entries: Entries = {
    collection: readCollectionInfo(sorted.collection, problems),
    reels: read('reels', reel),
    editions: read('editions', edition),
    machines: read('machines', machine),
    stocks: read('stocks', stock),
    places: read('places', storagePlace),
    people: read('people', person),
    shares: read('shares', share),
    notes: read('notes', note),
    unusable,
  };
  problems.push(
    ...checkReferences(entries),
    ...checkFieldNames(entries),
    ...checkPhotographs(entries, files.images, photographs),
  );
  return { entries, problems };
}

interface EntryRead {
  readonly entry: EntryBase | undefined;
  readonly problems: readonly Diagnostic[];
}

/** What was made of an entry as long as it lives: one that was read again unchanged is the same object once more. */
const ENTRIES = new WeakMap<RawEntry, EntryRead>();

function entryOf<E extends EntryBase>(raw: RawEntry, folder: E['folder'], schema: MapSchema<Facts<E>>): EntryRead {
  const { facts, problems } = readFacts(schema, raw.root);
  return { entry: facts && ({ ...fromFile(raw, folder), ...facts } as unknown as E), problems };
}

interface SortedOut {
  readonly byFolder: ReadonlyMap<EntryKind, readonly RawEntry[]>;
  readonly collection: RawEntry | undefined;
  readonly unusable: ReadonlySet<string>;
}

/** Entries by kind, each sorted by id; of two files with one id the first by name is used. */
function sortOut(files: CollectionFiles, problems: Diagnostic[]): SortedOut {
  const byFolder = new Map<EntryKind, RawEntry[]>();
  const paths = new Map<string, string>();
  const unusable = new Set<string>();
  let info: RawEntry | undefined;
  for (const { path, address, entry } of [...files.entries].sort((a, b) => byText(a.path, b.path))) {
    if (address === undefined) continue;
    if (address.folder === 'collection') {
      info = entry;
      continue;
    }
    const name = `${address.folder}/${address.id}`;
    const before = paths.get(name);
    if (before !== undefined) {
      problems.push(repeatedId(address.id, path, before));
      continue;
    }
    paths.set(name, path);
    if (entry === undefined) unusable.add(name);
    else listIn(byFolder, address.folder).push(entry);
  }
  for (const list of byFolder.values()) list.sort((a, b) => byText(a.id, b.id));
  return { byFolder, collection: info, unusable };
}

function listIn(byFolder: Map<EntryKind, RawEntry[]>, folder: EntryKind): RawEntry[] {
  const list = byFolder.get(folder) ?? [];
  byFolder.set(folder, list);
  return list;
}

const fromFile = ({ id, file, place, root, body, bodyLine }: RawEntry, folder: EntryKind) => ({
  folder,
  id,
  file,
  place,
  keys: root.keyPlaces,
  body,
  bodyLine,
});

function readCollectionInfo(raw: RawEntry | undefined, problems: Diagnostic[]): CollectionInfo {
  if (raw === undefined) return { private: [], body: '', bodyLine: 1 };
  const answer = readFacts(collection, raw.root);
  problems.push(...answer.problems);
  return { ...(answer.facts ?? { private: [] }), body: raw.body, bodyLine: raw.bodyLine };
}
