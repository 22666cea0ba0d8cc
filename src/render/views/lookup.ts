import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import type { Edition } from '#model/edition.ts';
import type { Machine } from '#model/machine.ts';
import type { Person } from '#model/person-entry.ts';
import type { Stock } from '#model/stock.ts';
import type { StoragePlace } from '#model/storage-place.ts';
import { madeOnce } from '../made-once.ts';
import { isAboutLineage } from './trouble.ts';

/** Entries by id, so that a page asks and doesn't search. */
export interface Lookup {
  readonly reel: (id: string) => ReelSheet | undefined;
  readonly edition: (id: string) => Edition | undefined;
  readonly machine: (id: string) => Machine | undefined;
  readonly stock: (id: string) => Stock | undefined;
  readonly place: (id: string) => StoragePlace | undefined;
  readonly person: (id: string) => Person | undefined;
  /** Problems that stand in a file or name it as related. */
  readonly problems: (file: string) => readonly Diagnostic[];
  /** Whether something about this file's place in the lineage can't be true. */
  readonly trouble: (file: string) => boolean;
}

/** Made once a catalogue. */
export const lookupOf = madeOnce('lookup', makeLookup);

/** What a page is about; it was there when the pages were listed. */
export function ofThisPage<T>(found: T | undefined): T {
  if (found === undefined) throw new Error('fault: a page was listed for an entry that isn’t there');
  return found;
}

function makeLookup({ entries, reels, problems }: Catalogue): Lookup {
  const byFile = new Map<string, Diagnostic[]>();
  for (const problem of problems) {
    const files = new Set([problem.place.file, ...problem.related.map((one) => one.place.file)]);
    for (const file of files) byFile.set(file, [...(byFile.get(file) ?? []), problem]);
  }
  const problemsOf = (file: string) => byFile.get(file) ?? [];
  return {
    reel: finder(reels.map((sheet) => [sheet.reel.id, sheet])),
    edition: finder(entries.editions.map(byId)),
    machine: finder(entries.machines.map(byId)),
    stock: finder(entries.stocks.map(byId)),
    place: finder(entries.places.map(byId)),
    person: finder(entries.people.map(byId)),
    problems: problemsOf,
    trouble: (file) =>
      problemsOf(file).some((problem) => problem.severity === 'warning' && isAboutLineage(problem.code)),
  };
}

const byId = <E extends { readonly id: string }>(entry: E): readonly [string, E] => [entry.id, entry];

function finder<T>(pairs: readonly (readonly [string, T])[]): (id: string) => T | undefined {
  const map = new Map(pairs);
  return (id) => map.get(id);
}
