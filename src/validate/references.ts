import type { Diagnostic } from '#model/diagnostic.ts';
import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import type { EntryBase } from '#model/entry.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import { nearestOf } from '#model/nearest.ts';
import type { PersonRef } from '#model/person.ts';
import type { Reel } from '#model/reel.ts';
import type { EntryKind } from '#model/words.ts';

type PersonFact = Known<PersonRef> | undefined;
type IdRef = { readonly folder: EntryKind; readonly to: Known<string> | undefined };

/** Names that no entry has. An entry that is there but can't be used counts as there: its own problem says so. */
export function checkReferences(entries: Entries): Diagnostic[] {
  const ids = idsByFolder(entries);
  const problems: Diagnostic[] = [];
  const suggest = suggester(ids);
  const check = (entry: EntryBase, refs: () => readonly IdRef[], people: () => readonly PersonFact[]) => {
    let named = NAMED.get(entry);
    if (named === undefined) {
      named = namedBy(refs(), people());
      NAMED.set(entry, named);
    }
    for (const { folder, ref, id } of named)
      if (!ids[folder].has(id)) problems.push(unknownReference(folder, ref, id, suggest(folder, id)));
  };
  const none = () => [];
  for (const reel of entries.reels)
    check(
      reel,
      () => idsIn(reel),
      () => peopleIn(reel),
    );
  for (const edition of entries.editions) check(edition, () => idsInEdition(edition), none);
  for (const machine of entries.machines) check(machine, none, () => [known(machine.belongsTo)]);
  for (const share of entries.shares) check(share, () => to('reels', itemsOf(share.reels)), none);
  return problems;
}

interface Named {
  readonly folder: EntryKind;
  readonly ref: Known<unknown>;
  readonly id: string;
}

/** What an entry names, as long as it lives: of a collection that is read again and again, only what changed is looked
 * through. */
const NAMED = new WeakMap<EntryBase, readonly Named[]>();

const namedBy = (refs: readonly IdRef[], people: readonly PersonFact[]): readonly Named[] => [
  ...refs.flatMap(({ folder, to }) => (to === undefined ? [] : [{ folder, ref: to, id: to.value }])),
  ...people.flatMap((ref) => (ref?.value.is === 'entry' ? [{ folder: 'people' as const, ref, id: ref.value.id }] : [])),
];

/** A hundred names that nothing has are no slips but a missing folder, and each costs a look at every id. */
const MOST_SUGGESTIONS = 100;

function suggester(ids: Readonly<Record<EntryKind, ReadonlySet<string>>>) {
  const found = new Map<string, string | undefined>();
  return (folder: EntryKind, id: string): string | undefined => {
    const name = `${folder}/${id}`;
    if (!found.has(name) && found.size < MOST_SUGGESTIONS) found.set(name, nearestOf(id, ids[folder]));
    return found.get(name);
  };
}

function idsByFolder(entries: Entries): Readonly<Record<EntryKind, ReadonlySet<string>>> {
  const of = (folder: EntryKind) => {
    const ids = new Set<string>();
    for (const { id } of entries[folder]) ids.add(id);
    for (const name of entries.unusable) if (name.startsWith(`${folder}/`)) ids.add(name.slice(folder.length + 1));
    return ids;
  };
  return {
    reels: of('reels'),
    editions: of('editions'),
    machines: of('machines'),
    stocks: of('stocks'),
    places: of('places'),
    people: of('people'),
    shares: of('shares'),
    notes: of('notes'),
  };
}

const known = <T>(fact: { is: 'none' } | Known<T> | undefined): Known<T> | undefined =>
  fact?.is === 'known' ? fact : undefined;

const to = (folder: EntryKind, refs: readonly (Known<string> | undefined)[]): IdRef[] =>
  refs.map((ref) => ({ folder, to: ref }));

function idsIn(reel: Reel): IdRef[] {
  return [
    ...to('editions', itemsOf(reel.editions)),
    ...to('stocks', [known(reel.stock)]),
    ...to('reels', itemsOf(reel.copiedFrom)),
    ...to(
      'reels',
      itemsOf(reel.copyLog).map((line) => line.reel),
    ),
    ...to(
      'editions',
      itemsOf(reel.cuts).map((cut) => cut.edition),
    ),
    ...to(
      'machines',
      itemsOf(reel.handling).map((done) => done.machine),
    ),
    ...to('places', [valueOf(reel.placeKept)?.at]),
  ];
}

function peopleIn(reel: Reel): PersonFact[] {
  const recorded = valueOf(reel.recorded);
  return [
    known(reel.client),
    reel.lent?.to,
    recorded?.by,
    recorded?.for,
    ...itemsOf(reel.copyLog).flatMap((line) => [line.for, line.by]),
    ...itemsOf(reel.cuts).map((cut) => cut.by),
    ...itemsOf(reel.readings).map((reading) => reading.by),
    ...itemsOf(reel.condition).map((inspection) => inspection.by),
    ...itemsOf(reel.handling).map((done) => done.by),
    ...itemsOf(reel.custody).map((time) => time.holder),
    ...itemsOf(reel.valuations).map((valuation) => valuation.by),
  ];
}

function idsInEdition(edition: Edition): IdRef[] {
  return [
    ...to('editions', itemsOf(edition.reissueOf)),
    ...to(
      'reels',
      itemsOf(edition.sides).map((side) => side.reel),
    ),
  ];
}

function unknownReference(folder: EntryKind, ref: Known<unknown>, id: string, near: string | undefined): Diagnostic {
  const text = folder === 'people' ? ' A name that is no id has a space or a capital in it.' : '';
  return {
    code: 'entry/unknown-reference',
    severity: 'error',
    message: `There is no entry ${folder}/${id}.`,
    action: `${near === undefined ? `Write ${folder}/${id}.md, or look at the spelling.` : `Write ${near}, if that is meant, or write ${folder}/${id}.md.`}${text}`,
    found: ref.written,
    expected: near ?? `the id of an entry in ${folder}/`,
    place: ref.place,
    related: [],
  };
}
