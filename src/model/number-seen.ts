import type { Place } from './place.ts';

export const NUMBER_ROLES = ['catalogue', 'matrix', 'job', 'other'] as const;
export type NumberRole = (typeof NUMBER_ROLES)[number];

/** A number of a reel, as written and taken apart. */
export interface NumberSeen {
  readonly as: NumberRole;
  readonly written: string;
  readonly plain: string | null;
  readonly stem: string | null;
  readonly side: string | null;
  readonly cut: string | null;
  readonly place: Place;
}
