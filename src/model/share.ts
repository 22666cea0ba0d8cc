import type { PartialDate } from './dates.ts';
import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';
import type { Audience, OpenedBy } from './words.ts';

/** Who is shown which reels, which facts, until when. */
export interface Share extends EntryBase {
  readonly folder: 'shares';
  readonly to?: Fact<string>;
  readonly front?: Fact<string>;
  readonly audience: Known<Audience>;
  readonly reels: Fact<readonly Known<string>[]>;
  readonly shows?: Fact<readonly Known<string>[]>;
  readonly showsPrivate?: Fact<readonly Known<string>[]>;
  readonly until?: Fact<PartialDate>;
  readonly openedBy?: Fact<OpenedBy>;
}
