import { COLLECTION_FACTS } from './collection-facts.ts';
import { EDITION_FACTS } from './edition-facts.ts';
import { PERSON_FACTS } from './person-facts.ts';
import { PLACE_FACTS } from './place-facts.ts';
import { REEL_FACTS } from './reel-facts.ts';
import { SET_FACTS } from './set-facts.ts';
import { SHARE_FACTS } from './share-facts.ts';

/** What a check can be about, and the facts it may ask for. A fact is a function of the subject and the context: it is
 * worked out once a subject, when the first check asks, and `undefined` means not recorded. Checks never walk entries:
 * what they need becomes a fact here. */
export const FACTS = {
  reel: REEL_FACTS,
  set: SET_FACTS,
  edition: EDITION_FACTS,
  place: PLACE_FACTS,
  person: PERSON_FACTS,
  share: SHARE_FACTS,
  collection: COLLECTION_FACTS,
} as const;

export type Scope = keyof typeof FACTS;
type Table<S extends Scope> = (typeof FACTS)[S];
export type FactName<S extends Scope> = keyof Table<S> & string;
type Answer<F> = F extends (...given: never[]) => infer A ? Exclude<A, undefined> : never;

/** The facts of one subject; each may be missing. */
export type Facts<S extends Scope> = { readonly [K in FactName<S>]?: Answer<Table<S>[K]> };
