import type { PartialDate } from './dates.ts';
import type { EntryBase } from './entry.ts';
import type { Fact, Known } from './fact.ts';

/** An engineer, client or former owner: a people/ entry. */
export interface Person extends EntryBase {
  readonly folder: 'people';
  readonly initials?: Fact<readonly Known<string>[]>;
  readonly did?: Fact<readonly Known<string>[]>;
  readonly active?: Fact<PartialDate>;
}
