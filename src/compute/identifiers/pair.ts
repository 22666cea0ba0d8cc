import { type Confusable, mistakenFor } from './confusables.ts';
import { plainForm } from './plain.ts';
import {
  charactersOf,
  type Doubt,
  likeliestText,
  parseReading,
  type ReadCharacter,
  type ReadPart,
} from './reading-pattern.ts';
import { sidesPair, type WaysToPair } from './sides.ts';
import { switchesOf } from './switches.ts';

/** A side's number: as written, with a reader's doubts marked if it comes from a reading. */
export interface SideNumber {
  /** The side as the entry has it: `1`, `A`; missing when it isn't recorded. */
  readonly side?: string;
  readonly written: string;
}

/** One character read as another, that would make the numbers pair. Nothing is changed by it. */
export interface PairProposal {
  /** Which of the numbers, counted from 0. */
  readonly index: number;
  /** Where in `written` the character stands, counted from 0. */
  readonly at: number;
  /** What was read; `?` where nothing could be. */
  readonly read: string;
  readonly meant: string;
  /** The whole number with that character. */
  readonly gives: string;
  /** How the reader marked the character: proposals try the doubtful ones first. */
  readonly doubt: Doubt;
  readonly reason: string;
  readonly ways: WaysToPair;
}

export type Pairing =
  | { readonly pairs: true; readonly ways: WaysToPair }
  | {
      readonly pairs: false;
      /** The one misread character that would make them pair; missing when there is none, or more than one. */
      readonly proposal?: PairProposal;
      /** All single characters that would, for a page that shows the choice. */
      readonly readings: readonly PairProposal[];
    };

/** A misread that costs more than this is possible, but too weak to charge a label with. */
const DEAREST_PROPOSED = 0.3;

/** Whether the numbers of a set's sides belong together, and if not, which single misread character would do it.
 *
 * Two sides pair when they have one stem and other side letters, or stems whose last figures are consecutive; in a set
 * of four, in any order and either way of numbering. The doubtful characters of a reading are tried first. A proposal
 * is made only when exactly one reading makes the facts agree; the same two shapes at the same place, taken either
 * way round, are one reading.
 */
export function pairSides(numbers: readonly SideNumber[]): Pairing {
  const likeliest = numbers.map(({ side, written }) => sideOf(side, textOf(written)));
  const ways = sidesPair(likeliest);
  if (ways !== undefined) return { pairs: true, ways };
  const candidates = numbers.flatMap(({ written }, index) => changesOf(written, index));
  const agreeing = candidates.flatMap((change) => withWays(change, likeliest));
  const doubtful = agreeing.filter(({ doubt }) => doubt !== 'none');
  const tried = doubtful.length > 0 ? doubtful : agreeing;
  const proposal = theOnlyOne(tried);
  return { pairs: false, ...(proposal && { proposal }), readings: tried.map(published) };
}

const sideOf = (side: string | undefined, written: string) => ({ ...(side !== undefined && { side }), written });

function textOf(written: string): string {
  const pattern = parseReading(written);
  return pattern.ok ? likeliestText(pattern.parts) : written;
}

/** `placeInPlain` is where the character stands in the plain form: two numbers are compared by it. */
type Change = Omit<PairProposal, 'ways'> & { readonly placeInPlain: number };
type Agreeing = Change & { readonly ways: WaysToPair };

/** Every way to read one character of a number otherwise. */
function changesOf(written: string, index: number): readonly Change[] {
  const pattern = parseReading(written);
  if (!pattern.ok) return [];
  const characters = charactersOf(pattern.parts);
  return characters.flatMap((character) =>
    alternativesOf(character).map(({ meant, reason }) => {
      const changed = pattern.parts.map((part) => (part === character ? { ...character, mayBe: [meant] } : part));
      const read = character.mayBe[0] ?? '?';
      const gives = likeliestText(changed).trim();
      const placeInPlain = placeOf(character, pattern.parts);
      return { index, at: character.at, read, meant, gives, doubt: character.doubt, reason, placeInPlain };
    }),
  );
}

/** An unread character counts as one. */
function placeOf(character: ReadCharacter, parts: readonly ReadPart[]): number {
  const before = charactersOf(parts).filter(({ at }) => at < character.at);
  return before.reduce((count, { mayBe }) => count + (mayBe[0] === undefined ? 1 : plainForm(mayBe[0]).length), 0);
}

interface Alternative {
  readonly meant: string;
  readonly reason: string;
}

const ANY_CHARACTER = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

function alternativesOf({ doubt, mayBe }: ReadCharacter): readonly Alternative[] {
  if (doubt === 'unread') return ANY_CHARACTER.map((meant) => ({ meant, reason: 'the character could not be read' }));
  if (doubt === 'one of') return mayBe.slice(1).map((meant) => ({ meant, reason: 'the reader allows it' }));
  const rows = [...mistakenFor(plainForm(mayBe[0] ?? ''))];
  return rows.filter(([, row]) => isLikely(row)).map(([meant, row]) => ({ meant, reason: row.reason }));
}

const isLikely = (row: Confusable) => row.cost <= DEAREST_PROPOSED;

function withWays(change: Change, numbers: readonly SideNumber[]): readonly Agreeing[] {
  const changed = numbers.map(({ side }, index) =>
    sideOf(side, index === change.index ? change.gives : (numbers[index]?.written ?? '')),
  );
  const ways = sidesPair(changed);
  return ways === undefined ? [] : [{ ...change, ways }];
}

/** The proposal, when all that agree are one and the same confusion; of its two directions the one that leaves letters
 *  with letters and figures with figures. */
function theOnlyOne(agreeing: readonly Agreeing[]): PairProposal | undefined {
  const confusions = new Set(agreeing.map(confusionOf));
  if (confusions.size !== 1) return undefined;
  const ordered = agreeing.toSorted(
    (a, b) => switchesOf(a.gives) - switchesOf(b.gives) || b.index - a.index || (a.meant < b.meant ? -1 : 1),
  );
  return ordered[0] && published(ordered[0]);
}

const confusionOf = ({ read, meant, placeInPlain }: Agreeing) =>
  `${[plainForm(read) || read, plainForm(meant)].toSorted().join('')} at ${placeInPlain}`;

function published({ placeInPlain: _, ...proposal }: Agreeing): PairProposal {
  return proposal;
}
