import type { BaseFilm, Carrier, Sign, Stored, Wind } from './words.ts';

/** A sign of trouble as somebody found it on a reel. */
export interface SeenSign {
  readonly sign: Sign;
  /** The date as written, or undefined when the inspection has none. */
  readonly on: string | undefined;
  /** A later inspection that did not find it, as its date was written. */
  readonly notFoundOn: string | undefined;
}

/** Whether a stock has what shedding stocks have in common, or is known to shed. */
export type ShedMarks =
  | {
      readonly are: 'present';
      /** Those of the marks that it has. */
      readonly marks: readonly string[];
      /** Its own entry says that it sheds. */
      readonly known?: boolean | undefined;
      /** What speaks against it, and doesn't overrule it. */
      readonly against?: string | undefined;
    }
  | { readonly are: 'absent'; readonly because: string };

/** The air of a place over the time that its logs cover, in hours past each source's bounds. */
export interface RoomAir {
  readonly coveredHours: number;
  readonly outsideOuterHours: number;
  readonly disputedHours: number;
  readonly outsideMediumHours: number;
  readonly lowC: number;
  readonly highC: number;
  readonly lowPercent: number;
  readonly highPercent: number;
}

/** What condition rules may read of a reel, its stock and its place; a fact that is missing isn't recorded. */
export interface ConditionFacts {
  readonly base?: BaseFilm;
  readonly shedMarks?: ShedMarks;
  /** The last inspection that wrote down what it found or that it found nothing: its date as written. */
  readonly looked?: string;
  /** Signs found at some inspection and not treated since; empty when nobody found any. */
  readonly signs: readonly SeenSign[];
  readonly splices?: number;
  readonly wind?: Wind;
  readonly woundOn?: Carrier;
  readonly stored?: Stored;
  readonly roomAir?: RoomAir;
}

/** A fact that a rule may declare; signs are handed to every rule by the wrapper. */
export type ConditionFactName = Exclude<keyof ConditionFacts, 'signs'>;

/** What to record where a fact is missing, after "Record …". */
export const WHAT_TO_RECORD: Readonly<Record<ConditionFactName, string>> = {
  base: 'the stock, and its base: held to the light, acetate lets it through and polyester less so; ask before you rely on it',
  shedMarks:
    'the stock, with its base, binder, back coat and the years in which it was made, or that it is known to shed',
  looked: 'an inspection: look, without winding or playing it, and write what was found, or none',
  splices: 'its splices, or none',
  wind: 'whether it is tail out or head out',
  woundOn: 'whether it is on a reel or a bare hub',
  stored: 'how it is stored: upright, flat or hanging',
  roomAir: 'the place where it is kept, with a climate log of four weeks at least',
};
