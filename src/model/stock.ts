import type { PartialDate } from './dates.ts';
import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';
import type { Measure, Micrometres } from './units.ts';
import type { BaseFilm, Binder } from './words.ts';

/** A maker's type of tape. */
export interface Stock extends EntryBase {
  readonly folder: 'stocks';
  readonly base?: Fact<BaseFilm>;
  readonly binder?: Fact<Binder>;
  readonly backCoated?: Fact<boolean>;
  /** Total: base, coat and back coat. */
  readonly thickness?: Fact<Measure<Micrometres>>;
  readonly made?: Fact<PartialDate>;
  readonly knownToShed?: Fact<boolean>;
  /** One text for all, or a text a fact. */
  readonly source?: Fact<string | ReadonlyMap<string, Known<string>>>;
}
