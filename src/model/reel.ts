import type { LocalTime, PartialDate } from './dates.ts';
import type { EntryBase } from './entry.ts';
import type { Equalisation } from './equalisation.ts';
import type { Fact, Known } from './fact.ts';
import type { PersonRef } from './person.ts';
import type { Place } from './place.ts';
import type { Region } from './region.ts';
import type {
  Celsius,
  Hertz,
  Measure,
  Millimetres,
  MillimetresPerSecond,
  NanowebersPerMetre,
  Seconds,
} from './units.ts';
import type {
  Carrier,
  Direction,
  Kind,
  Leaving,
  RunOutForm,
  Sign,
  Status,
  Stored,
  Sureness,
  TrackFormat,
  Treatment,
  Wind,
} from './words.ts';

/** One tape as an object that is kept, or known of: tape, carrier and box. */
export interface Reel extends EntryBase {
  readonly folder: 'reels';
  readonly status: Known<Status>;
  readonly lent?: { readonly place: Place; readonly to?: Known<PersonRef>; readonly until?: Known<PartialDate> };
  readonly left?: { readonly place: Place; readonly how?: Known<Leaving>; readonly on?: Known<PartialDate> };
  readonly kind?: Fact<Kind>;
  readonly set?: Fact<string>;
  /** One side, or two when the tape is recorded in both directions. */
  readonly sides?: Fact<readonly Known<string>[]>;
  readonly editions?: Fact<readonly Known<string>[]>;
  readonly numbers: ReelNumbers;
  readonly client?: Fact<PersonRef>;
  readonly durationS?: Fact<Seconds>;
  readonly contents?: Fact<readonly Title[]>;
  readonly gaps?: Fact<Gaps>;
  readonly runOutSound?: Fact<RunOutSound>;
  readonly format: ReelFormat;
  readonly pack: Pack;
  readonly stock?: Fact<string>;
  readonly recorded?: Fact<Recorded>;
  readonly copiedFrom?: Fact<readonly Known<string>[]>;
  readonly generation?: Known<number>;
  readonly copyLog?: Fact<readonly LogLine[]>;
  readonly splices?: Fact<readonly Splice[]>;
  readonly cuts?: Fact<readonly Cut[]>;
  readonly readings?: Fact<readonly Reading[]>;
  readonly condition?: Fact<readonly Inspection[]>;
  readonly handling?: Fact<readonly Handling[]>;
  readonly placeKept?: Fact<PlaceKept>;
  readonly custody?: Fact<readonly Custody[]>;
  readonly valuations?: Fact<readonly Valuation[]>;
  readonly rights?: Fact<string>;
}

export interface ReelNumbers {
  readonly catalogue?: Fact<readonly Known<string>[]>;
  readonly matrix?: Fact<readonly Known<string>[]>;
  readonly job?: Fact<readonly Known<string>[]>;
  readonly other?: Fact<readonly Known<string>[]>;
}

export interface Title {
  readonly place: Place;
  readonly title: Known<string>;
  readonly durationS?: Known<Seconds>;
  readonly gapAfterS?: Fact<Seconds>;
  readonly side?: Known<string>;
  readonly by?: Known<string>;
  readonly note?: Known<string>;
}

/** Between titles: one duration for all, or `mixed` (then each title may give its own). `none` is a None fact. */
export type Gaps = { readonly is: 'each'; readonly gapS: Seconds } | { readonly is: 'mixed' };

export interface RunOutSound {
  readonly holds?: Known<string>;
  readonly durationS?: Known<Seconds>;
  readonly form?: Known<RunOutForm>;
  /** Whether it is part of the stated length. */
  readonly counted?: Known<boolean>;
}

export interface ReelFormat {
  readonly width?: Fact<Measure<Millimetres>>;
  readonly tracks?: Fact<TrackFormat>;
  readonly speed?: Fact<MillimetresPerSecond>;
  readonly equalisation?: Fact<Equalisation>;
  readonly direction?: Fact<Direction>;
  /** The system's name as the owner writes it. */
  readonly noiseReduction?: Fact<string>;
  readonly level?: Fact<NanowebersPerMetre>;
  readonly tones?: Fact<readonly Known<Hertz>[]>;
}

export interface Pack {
  readonly woundOn?: Fact<Carrier>;
  readonly reelSize?: Fact<Measure<Millimetres>>;
  readonly outsideDiameter?: Fact<Measure<Millimetres>>;
  readonly hubDiameter?: Fact<Measure<Millimetres>>;
  readonly wind?: Fact<Wind>;
}

export interface Recorded {
  readonly on?: Known<PartialDate>;
  readonly by?: Known<PersonRef>;
  readonly at?: Known<string>;
  readonly for?: Known<PersonRef>;
}

/** A line of the log on a master's box: a copy that was run off from it. */
export interface LogLine {
  readonly place: Place;
  readonly on?: Known<PartialDate>;
  readonly for?: Known<PersonRef>;
  readonly by?: Known<PersonRef>;
  readonly speed?: Known<MillimetresPerSecond>;
  readonly equalisation?: Known<Equalisation>;
  readonly kind?: Known<Kind>;
  readonly number?: Known<string>;
  readonly reel?: Known<string>;
  readonly note?: Known<string>;
}

export interface Splice {
  readonly place: Place;
  readonly at?: Known<Seconds>;
  readonly note?: Known<string>;
}

/** A lacquer cut from this reel. */
export interface Cut {
  readonly place: Place;
  /** The dash number as written. */
  readonly number?: Known<string>;
  readonly matrix?: Known<string>;
  readonly side?: Known<string>;
  readonly on?: Known<PartialDate>;
  readonly by?: Known<PersonRef>;
  readonly halfSpeed?: Known<boolean>;
  readonly used?: Known<boolean>;
  readonly edition?: Known<string>;
  readonly note?: Known<string>;
}

/** What a photograph shows, letter by letter. */
export interface Reading {
  readonly place: Place;
  /** The dotted key that it is a reading of. */
  readonly of: Known<string>;
  readonly photo?: Known<string>;
  readonly region?: Known<Region>;
  readonly written: Known<string>;
  readonly sure?: Known<Sureness>;
  readonly by?: Known<PersonRef>;
  readonly note?: Known<string>;
}

export interface Inspection {
  readonly place: Place;
  readonly on?: Known<PartialDate>;
  readonly by?: Known<PersonRef>;
  /** None: looked, and found nothing. */
  readonly found?: Fact<readonly Known<Sign>[]>;
  readonly note?: Known<string>;
}

export interface Handling {
  readonly place: Place;
  readonly what: Known<Treatment>;
  readonly on?: Known<PartialDate>;
  readonly by?: Known<PersonRef>;
  readonly temperatureC?: Known<Celsius>;
  readonly durationS?: Known<Seconds>;
  readonly ended?: Known<LocalTime>;
  readonly started?: Known<LocalTime>;
  /** A machines/ id. */
  readonly machine?: Known<string>;
  readonly settings?: Known<string>;
  readonly passes?: Known<number>;
  readonly files?: Fact<readonly TransferFile[]>;
  readonly planned?: Known<boolean>;
  readonly note?: Known<string>;
}

export interface TransferFile {
  readonly place: Place;
  readonly name: Known<string>;
  readonly sha256?: Known<string>;
}

export interface PlaceKept {
  /** A places/ id. */
  readonly at?: Known<string>;
  readonly shelf?: Known<string>;
  readonly stored?: Known<Stored>;
}

export interface Custody {
  readonly place: Place;
  readonly holder: Known<PersonRef>;
  readonly from?: Known<PartialDate>;
  readonly until?: Known<PartialDate>;
  readonly how?: Known<string>;
  readonly price?: Known<Money>;
  readonly evidence?: Known<string>;
  readonly note?: Known<string>;
}

export interface Money {
  readonly amount: number;
  /** ISO 4217. */
  readonly currency: string;
}

export interface Valuation {
  readonly place: Place;
  readonly on?: Known<PartialDate>;
  readonly by?: Known<PersonRef>;
  readonly amount?: Known<Money>;
  readonly basis?: Known<string>;
}
