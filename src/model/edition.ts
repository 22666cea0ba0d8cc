import type { PartialDate } from './dates.ts';
import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';
import type { Place } from './place.ts';
import type { RevolutionsPerMinute, Seconds } from './units.ts';
import type { MadeAs } from './words.ts';

/** A record or cassette that was made from the reels. */
export interface Edition extends EntryBase {
  readonly folder: 'editions';
  readonly artist?: Fact<string>;
  readonly label?: Fact<string>;
  readonly catalogue?: Fact<readonly Known<string>[]>;
  readonly madeAs?: Fact<MadeAs>;
  readonly territory?: Fact<string>;
  readonly issued?: Fact<PartialDate>;
  readonly sides?: Fact<readonly EditionSide[]>;
  readonly speed?: Fact<RevolutionsPerMinute>;
  readonly reissueOf?: Fact<readonly Known<string>[]>;
  readonly runOuts?: Fact<readonly RunOut[]>;
}

export interface EditionSide {
  readonly place: Place;
  readonly side: Known<string>;
  readonly durationS?: Known<Seconds>;
  readonly matrix?: Fact<string>;
  /** The reel it was cut from, when the owner says so. */
  readonly reel?: Known<string>;
}

/** What is etched in the run-out of the copies seen. */
export interface RunOut {
  readonly place: Place;
  readonly side?: Known<string>;
  readonly written: Known<string>;
  readonly cut?: Known<string>;
  readonly copy?: Known<string>;
  readonly note?: Known<string>;
}
