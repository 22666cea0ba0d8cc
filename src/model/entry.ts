import type { PartialDate } from './dates.ts';
import type { Fact, Known } from './fact.ts';
import type { Place } from './place.ts';
import type { EntryKind, PhotoSubject } from './words.ts';

/** YAML that the schema leaves alone, as texts. */
export type Loose = string | readonly Loose[] | { readonly [key: string]: Loose };

export interface AcceptedCode {
  readonly place: Place;
  readonly code: Known<string>;
  readonly why?: Known<string>;
  readonly on?: Known<PartialDate>;
}

/** What every entry has. */
export interface EntryBase {
  readonly folder: EntryKind;
  readonly id: string;
  /** The real file, relative to the collection: `reels/x.md` or `reels/x/index.md`. */
  readonly file: string;
  /** The entry's first line. */
  readonly place: Place;
  /** Where a top-level key is written, for messages about it as a whole: `contents` → its place. */
  readonly keys: ReadonlyMap<string, Place>;
  readonly title: Known<string>;
  /** The owner's own account, Markdown as written. */
  readonly body: string;
  readonly bodyLine: number;
  readonly photos?: Fact<readonly Photo[]>;
  readonly accepted: readonly AcceptedCode[];
  /** Dotted keys that are private on top of what is private by default. */
  readonly private: readonly Known<string>[];
  readonly also?: Loose;
}

export interface Photo {
  readonly place: Place;
  /** As written, relative to the entry's folder. */
  readonly file: Known<string>;
  readonly shows?: Known<PhotoSubject>;
  readonly note?: Known<string>;
  readonly on?: Known<PartialDate>;
}
