import type { Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import { nearestOf } from '#model/nearest.ts';
import type { EntryKind } from '#model/words.ts';
import { edition } from './schemas/edition.ts';
import { machine } from './schemas/machine.ts';
import { note } from './schemas/note.ts';
import { person } from './schemas/person.ts';
import { storagePlace } from './schemas/place.ts';
import { reel } from './schemas/reel.ts';
import { share } from './schemas/share.ts';
import { stock } from './schemas/stock.ts';

/** Parts of a page that are no key of the entry but can be kept private too. */
const PARTS = ['body', 'findings', 'worked', 'lineage', 'playing', 'missing', 'problems'];

const KEYS: Readonly<Record<EntryKind, ReadonlySet<string>>> = {
  reels: new Set([...reel.keysBelow, ...PARTS]),
  editions: new Set([...edition.keysBelow, ...PARTS]),
  machines: new Set([...machine.keysBelow, ...PARTS]),
  stocks: new Set([...stock.keysBelow, ...PARTS]),
  places: new Set([...storagePlace.keysBelow, ...PARTS]),
  people: new Set([...person.keysBelow, ...PARTS]),
  shares: new Set([...share.keysBelow, ...PARTS]),
  notes: new Set([...note.keysBelow, ...PARTS]),
};

/** Whether a kind of entry has a fact by a dotted key; what stands under `also` is the owner's own, so its keys can't be
 * known. */
export const namesFact = (kind: EntryKind, key: string): boolean => isNamed(key, KEYS[kind]);

const withoutIndexes = (key: string) => key.replace(/\[\d{1,6}\]/gu, '');
const isNamed = (key: string, keys: ReadonlySet<string>) =>
  keys.has(withoutIndexes(key)) || withoutIndexes(key).startsWith('also.');

/** Keys that an entry names as values: what a reading is of, what is private. A private key with a slip in it would
 * leave a fact open, so it is an error. */
export function checkFieldNames(entries: Entries): Diagnostic[] {
  const problems: Diagnostic[] = [];
  const check = (key: Known<string>, keys: ReadonlySet<string>) => {
    if (!isNamed(key.value, keys)) problems.push(unknownName(key, withoutIndexes(key.value), keys));
  };
  const kinds = ['reels', 'editions', 'machines', 'stocks', 'places', 'people', 'shares', 'notes'] as const;
  for (const kind of kinds) for (const entry of entries[kind]) for (const key of entry.private) check(key, KEYS[kind]);
  const all = new Set(kinds.flatMap((kind) => [...KEYS[kind]]));
  for (const key of entries.collection.private) check(key, all);
  for (const entry of entries.reels) for (const reading of itemsOf(entry.readings)) check(reading.of, KEYS.reels);
  return problems;
}

function unknownName(key: Known<string>, plain: string, keys: ReadonlySet<string>): Diagnostic {
  const near = nearestOf(plain, keys) ?? [...keys].find((dotted) => dotted.endsWith(`.${plain}`));
  return {
    code: 'entry/unknown-key',
    severity: 'error',
    message:
      near === undefined ? `No fact is called "${plain}".` : `No fact is called "${plain}"; the nearest is "${near}".`,
    action:
      near === undefined
        ? 'Write the key as it stands in the entry, with a point between its parts.'
        : `Write ${near}, if that is meant.`,
    found: key.written,
    expected: near ?? 'a key with its parts, such as numbers.matrix',
    place: key.place,
    related: [],
  };
}
