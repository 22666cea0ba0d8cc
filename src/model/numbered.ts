/** What a number can be written on or be known of, in the order in which equal answers are given. */
export const NUMBERED_THINGS = ['reel', 'edition', 'cut', 'log line'] as const;
export type NumberedThing = (typeof NUMBERED_THINGS)[number];

/** The words for what a number is, in the order of the list of all numbers. */
export const NUMBER_USES = ['catalogue', 'matrix', 'job', 'other', 'cut', 'run-out', 'copy log'] as const;
export type NumberUse = (typeof NUMBER_USES)[number];

/** Whether the thing is here: held by the owner, lent out, or only known of. */
export const WHEREABOUTS = ['held', 'lent', 'elsewhere', 'missing', 'gone', 'destroyed', 'known'] as const;
export type Whereabouts = (typeof WHEREABOUTS)[number];

/** A reel, an edition, a cut or a copy-log line that a number leads to. */
export interface Numbered {
  readonly of: NumberedThing;
  /** The entry it stands in: a cut and a log line are on their reel. */
  readonly id: string;
  /** What a person calls it: `Low Water, side 1`, `Low Water, side 1: cut 3`. */
  readonly title: string;
  readonly state: Whereabouts;
}

/** One number as it is written, and what it is of. */
export interface NumberOf {
  readonly thing: Numbered;
  readonly as: NumberUse;
  /** As written; a reading's doubts stay marked. */
  readonly number: string;
  /** Where it was read: `box front`, `run-out`, `copy log`; empty when the entry only states it. */
  readonly from: string;
  /** How sure the reader was: certain, likely, guess; empty when nothing was read. */
  readonly sure: string;
}
