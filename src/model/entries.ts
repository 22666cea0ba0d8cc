import type { Edition } from './edition.ts';
import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';
import type { Machine } from './machine.ts';
import type { Person } from './person-entry.ts';
import type { Reel } from './reel.ts';
import type { Share } from './share.ts';
import type { Stock } from './stock.ts';
import type { StoragePlace } from './storage-place.ts';
import type { UnitSystem } from './words.ts';

/** A free research note: title and body. */
export interface Note extends EntryBase {
  readonly folder: 'notes';
}

/** collection.md; every field may be missing. */
export interface CollectionInfo {
  readonly title?: Fact<string>;
  readonly owner?: Fact<string>;
  readonly currency?: Fact<string>;
  readonly units?: Fact<UnitSystem>;
  readonly language?: Fact<string>;
  readonly private: readonly Known<string>[];
  /** The version of the entries' form. */
  readonly format?: Fact<number>;
  readonly body: string;
  readonly bodyLine: number;
}

/** All that could be read and validated; each list sorted by id, by code unit. */
export interface Entries {
  readonly collection: CollectionInfo;
  readonly reels: readonly Reel[];
  readonly editions: readonly Edition[];
  readonly machines: readonly Machine[];
  readonly stocks: readonly Stock[];
  readonly places: readonly StoragePlace[];
  readonly people: readonly Person[];
  readonly shares: readonly Share[];
  readonly notes: readonly Note[];
  /** Ids of entries that exist as files but could not be used, `reels/x`; they count as existing for references. */
  readonly unusable: ReadonlySet<string>;
}
