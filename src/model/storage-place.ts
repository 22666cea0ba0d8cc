import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';
import type { Place } from './place.ts';

/** Where reels are kept: a places/ entry. (`Place` is a position in a file.) */
export interface StoragePlace extends EntryBase {
  readonly folder: 'places';
  readonly address?: Fact<string>;
  readonly climate?: Fact<readonly ClimateLogRef[]>;
}

/** A climate log beside the entry, and how its logger names its columns. */
export interface ClimateLogRef {
  readonly place: Place;
  readonly file: Known<string>;
  /** Ours → the logger's: time, temperature_C, temperature_F, humidity_percent. */
  readonly columns?: ReadonlyMap<string, Known<string>>;
  /** Offset of the clock that wrote it, `+02:00`. */
  readonly zone?: Known<string>;
}
