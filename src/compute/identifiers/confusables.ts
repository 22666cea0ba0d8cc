/** Two characters that a reader of a label takes for one another, and what such a mistake costs in a search. */
export interface Confusable {
  readonly one: string;
  readonly other: string;
  /** 0 is the same character, 1 is any other character. The closer the shapes, the lower. */
  readonly cost: number;
  readonly reason: string;
}

/** Shapes that are mistaken for one another on labels and in run-outs, in plain characters, sorted by `one`, `other`.
 *
 * One table for the cross-checks and the search. Common practice, no source: pairs that readers of handwriting,
 * typewriting and etching name; the costs order them and claim no more. 5/6, 8/9 and 0/8 are left out on purpose: with
 * them two sides whose numbers differ by two would nearly always "agree" through a misread, and houses do skip numbers.
 */
export const CONFUSABLES: readonly Confusable[] = [
  { one: '0', other: '6', cost: 0.5, reason: 'a 6 with a worn or open stem looks like a 0' },
  { one: '0', other: 'D', cost: 0.3, reason: 'a narrow D and a 0 have one outline' },
  { one: '0', other: 'O', cost: 0.1, reason: 'the letter O and the figure 0 have one shape' },
  { one: '0', other: 'Q', cost: 0.3, reason: 'a Q whose tail is worn away is a 0' },
  { one: '0', other: 'U', cost: 0.5, reason: 'a 0 that is open at the top looks like a U' },
  { one: '1', other: '4', cost: 0.5, reason: 'a 4 whose crossbar is faint looks like a 1' },
  { one: '1', other: '7', cost: 0.2, reason: 'a 1 with a long upstroke and a 7 look alike' },
  { one: '1', other: 'I', cost: 0.1, reason: 'the letter I and the figure 1 have one shape' },
  { one: '1', other: 'L', cost: 0.1, reason: 'a small L and the figure 1 have one shape' },
  { one: '2', other: '7', cost: 0.5, reason: 'a 2 whose foot is worn away looks like a 7' },
  { one: '2', other: 'Z', cost: 0.1, reason: 'a 2 and a Z have one shape' },
  { one: '3', other: '8', cost: 0.2, reason: 'an 8 that is open on the left is a 3' },
  { one: '3', other: 'B', cost: 0.4, reason: 'a B whose back is worn away is a 3' },
  { one: '3', other: 'E', cost: 0.4, reason: 'a 3 turned upside down looks like an E' },
  { one: '4', other: '9', cost: 0.2, reason: 'a 4 that is closed at the top looks like a 9' },
  { one: '4', other: 'A', cost: 0.4, reason: 'an angular 4 and an A look alike' },
  { one: '4', other: 'H', cost: 0.5, reason: 'an open 4 and a small h turned upside down look alike' },
  { one: '5', other: 'S', cost: 0.1, reason: 'a 5 and an S have one shape' },
  { one: '6', other: '9', cost: 0.2, reason: 'a 6 turned upside down is a 9' },
  { one: '6', other: 'B', cost: 0.4, reason: 'a small b and a 6 look alike' },
  { one: '6', other: 'G', cost: 0.2, reason: 'a G and a 6 look alike' },
  { one: '7', other: 'I', cost: 0.3, reason: 'an I with serifs and a 7 look alike' },
  { one: '7', other: 'L', cost: 0.3, reason: 'an L turned upside down is a 7' },
  { one: '7', other: 'T', cost: 0.4, reason: 'a T whose left arm is worn away is a 7' },
  { one: '8', other: 'B', cost: 0.2, reason: 'a B and an 8 look alike' },
  { one: '8', other: 'S', cost: 0.4, reason: 'an 8 whose strokes are open is an S' },
  { one: '9', other: 'G', cost: 0.3, reason: 'a small g and a 9 look alike' },
  { one: '9', other: 'Q', cost: 0.3, reason: 'a small q and a 9 look alike' },
  { one: 'A', other: 'V', cost: 0.5, reason: 'an A turned upside down, its bar faint, is a V' },
  { one: 'B', other: 'D', cost: 0.5, reason: 'a B whose waist is worn away is a D' },
  { one: 'B', other: 'E', cost: 0.5, reason: 'a B that is open on the right is an E' },
  { one: 'B', other: 'P', cost: 0.5, reason: 'a B whose lower bow is worn away is a P' },
  { one: 'B', other: 'R', cost: 0.4, reason: 'a B that is open at the foot is an R' },
  { one: 'C', other: 'G', cost: 0.3, reason: 'a G whose bar is worn away is a C' },
  { one: 'C', other: 'O', cost: 0.4, reason: 'an O that is open on the right is a C' },
  { one: 'D', other: 'O', cost: 0.3, reason: 'a D with round corners is an O' },
  { one: 'E', other: 'F', cost: 0.3, reason: 'an E whose foot is worn away is an F' },
  { one: 'F', other: 'P', cost: 0.4, reason: 'a P whose bow is open is an F' },
  { one: 'H', other: 'K', cost: 0.5, reason: 'a hasty K and an H look alike' },
  { one: 'H', other: 'N', cost: 0.4, reason: 'an H with a slanting bar is an N' },
  { one: 'I', other: 'J', cost: 0.4, reason: 'a straight J and an I look alike' },
  { one: 'I', other: 'L', cost: 0.1, reason: 'a small L and the letter I have one shape' },
  { one: 'I', other: 'T', cost: 0.5, reason: 'a T whose arms are worn away is an I' },
  { one: 'K', other: 'X', cost: 0.4, reason: 'a K whose back slants is an X' },
  { one: 'M', other: 'N', cost: 0.4, reason: 'an M with a stroke missing is an N' },
  { one: 'M', other: 'W', cost: 0.3, reason: 'an M turned upside down is a W' },
  { one: 'N', other: 'U', cost: 0.4, reason: 'a small n turned upside down is a u' },
  { one: 'N', other: 'Z', cost: 0.5, reason: 'an N turned on its side is a Z' },
  { one: 'O', other: 'Q', cost: 0.2, reason: 'a Q whose tail is worn away is an O' },
  { one: 'P', other: 'R', cost: 0.4, reason: 'an R whose leg is worn away is a P' },
  { one: 'S', other: 'Z', cost: 0.5, reason: 'an angular S and a Z mirror each other' },
  { one: 'U', other: 'V', cost: 0.2, reason: 'a U and a V look alike in etching' },
  { one: 'V', other: 'W', cost: 0.4, reason: 'a W with strokes missing is a V' },
  { one: 'V', other: 'Y', cost: 0.4, reason: 'a Y with a short stem is a V' },
  { one: 'X', other: 'Y', cost: 0.5, reason: 'a Y whose stem slants is an X' },
];

const BY_CHARACTER = byCharacter();

function byCharacter(): ReadonlyMap<string, ReadonlyMap<string, Confusable>> {
  const found = new Map<string, Map<string, Confusable>>();
  const put = (from: string, to: string, row: Confusable) => {
    const rows = found.get(from) ?? new Map<string, Confusable>();
    found.set(from, rows.set(to, row));
  };
  for (const row of CONFUSABLES) {
    put(row.one, row.other, row);
    put(row.other, row.one, row);
  }
  return found;
}

/** The row for two plain characters, in either order; undefined when they aren't easily mistaken, or are the same. */
export const confusable = (one: string, other: string): Confusable | undefined => BY_CHARACTER.get(one)?.get(other);

const NONE: ReadonlyMap<string, Confusable> = new Map();

/** Every character that a plain one is easily mistaken for, with the row that says why. */
export const mistakenFor = (character: string): ReadonlyMap<string, Confusable> => BY_CHARACTER.get(character) ?? NONE;

/** What taking one plain character for another costs, 0 to 1. */
export const costOfTaking = (read: string, meant: string): number =>
  read === meant ? 0 : (confusable(read, meant)?.cost ?? 1);

/** One character of a number that may have been misread. */
export interface Misread {
  /** Counts from 0, in the plain form. */
  readonly at: number;
  readonly read: string;
  readonly meant: string;
  readonly row: Confusable;
}

/** The single easily misread character that turns one plain number into the other; undefined when it takes more, or
 *  a character that nobody would mistake. */
export function singleMisread(read: string, meant: string): Misread | undefined {
  if (read.length !== meant.length) return undefined;
  let found: Misread | undefined;
  for (let at = 0; at < read.length; at += 1) {
    const from = read[at] ?? '';
    const to = meant[at] ?? '';
    if (from === to) continue;
    const row = confusable(from, to);
    if (row === undefined || found !== undefined) return undefined;
    found = { at, read: from, meant: to, row };
  }
  return found;
}
