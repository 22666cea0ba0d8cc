import type { Day, PartialDate } from '#model/dates.ts';
import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import type { EntryBase } from '#model/entry.ts';
import type { Known, None } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { Person } from '#model/person-entry.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';

/** Entries made in memory, for tests of one computation. Whole collections are tested from files. */

const somewhere = (file: string) => ({ file, line: 1, column: 1, field: '' });

export const known = <T>(value: T, written = String(value)): Known<T> => ({
  is: 'known',
  value,
  written,
  place: somewhere('given.md'),
});

export const none: None = { is: 'none', written: 'none', place: somewhere('given.md') };

const base = <F extends EntryBase['folder']>(folder: F, id: string) => ({
  folder,
  id,
  file: `${folder}/${id}.md`,
  place: somewhere(`${folder}/${id}.md`),
  keys: new Map(),
  title: known(id),
  body: '',
  bodyLine: 1,
  accepted: [],
  private: [],
});

export const reel = (id: string, facts: Partial<Reel> = {}): Reel => ({
  ...base('reels', id),
  status: known('held'),
  numbers: {},
  format: {},
  pack: {},
  ...facts,
});

export const edition = (id: string, facts: Partial<Edition> = {}): Edition => ({ ...base('editions', id), ...facts });
export const machine = (id: string, facts: Partial<Machine> = {}): Machine => ({ ...base('machines', id), ...facts });
export const stock = (id: string, facts: Partial<Stock> = {}): Stock => ({ ...base('stocks', id), ...facts });
export const person = (id: string, facts: Partial<Person> = {}): Person => ({ ...base('people', id), ...facts });

export const entriesOf = (some: Partial<Entries>): Entries => ({
  collection: { private: [], body: '', bodyLine: 1 },
  reels: [],
  editions: [],
  machines: [],
  stocks: [],
  places: [],
  people: [],
  shares: [],
  notes: [],
  unusable: new Set(),
  ...some,
});

/** A date from its first to its last possible day; null is an open or unknown end. */
export function date(
  earliest: string | null,
  latest: string | null = earliest,
  doubt: Partial<PartialDate> = {},
): PartialDate {
  return {
    earliest: earliest as Day | null,
    latest: latest as Day | null,
    uncertain: false,
    approximate: false,
    openStart: false,
    openEnd: false,
    unknownStart: earliest === null,
    unknownEnd: latest === null,
    season: null,
    ...doubt,
  };
}
