import type { Place } from './place.ts';

/** How a fact is known. A result is only as good as its weakest input. */
const BASES = ['measured', 'stated', 'worked', 'assumed'] as const;
export type Basis = (typeof BASES)[number];

/** A fact that an entry states: the value in our units, exactly what was written, and where. */
export interface Known<T> {
  readonly is: 'known';
  readonly value: T;
  readonly written: string;
  readonly place: Place;
}

/** A fact known to be none: the entry says `none`. It is never the same as a missing key. */
export interface None {
  readonly is: 'none';
  readonly written: string;
  readonly place: Place;
}

/** `undefined` in place of a Fact means not recorded. */
export type Fact<T> = Known<T> | None;

export const valueOf = <T>(fact: Fact<T> | undefined): T | undefined => (fact?.is === 'known' ? fact.value : undefined);

/** The items of a list that may be missing or known to be empty; both give no items. Ask `fact` itself where they differ. */
export const itemsOf = <T>(fact: Fact<readonly T[]> | undefined): readonly T[] => valueOf(fact) ?? [];
