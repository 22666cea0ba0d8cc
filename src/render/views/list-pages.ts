/** A part of a list that goes on over several pages. */
export interface ListPage<T> {
  readonly rows: readonly T[];
  /** Which page it is, from 0. */
  readonly at: number;
  /** Where its first row stands in the whole list, from 1. */
  readonly from: number;
  /** How many rows the whole list has. */
  readonly all: number;
  /** What each page of the list begins with. */
  readonly starts: readonly string[];
}

/** A page of more rows than this is slow on a telephone, and weighs more than one should. */
export const ROWS_A_PAGE = 200;

/** A list in pages, one at least.
 * @param nameOf  what a row is found by, in the order of the list. */
export function listPages<T>(
  rows: readonly T[],
  nameOf: (row: T) => string,
  most: number = ROWS_A_PAGE,
): readonly ListPage<T>[] {
  const count = Math.max(1, Math.ceil(rows.length / most));
  const nameAt = (index: number) => {
    const row = rows[index];
    return row === undefined ? undefined : nameOf(row);
  };
  const starts = Array.from({ length: count }, (_, at) => startWords(nameAt(at * most) ?? '', nameAt(at * most - 1)));
  return starts.map((_, at) => ({
    rows: rows.slice(at * most, (at + 1) * most),
    at,
    from: at * most + 1,
    all: rows.length,
    starts,
  }));
}

/** Longer than any title need be to be told from its neighbour. */
const LONGEST_START = 40;

/** As many words of a name as tell it from the one before it: `Low` after `Ilha Quase`, `Low Water, side 2` after
 * `Low Water, side 1`. */
export function startWords(name: string, before: string | undefined): string {
  const words = name.split(' ');
  const enough = words.findIndex((_, index) => !beginsWith(before ?? '', words.slice(0, index + 1)));
  const start = enough === -1 ? name : words.slice(0, enough + 1).join(' ');
  return start.length > LONGEST_START
    ? `${start.slice(0, LONGEST_START).toWellFormed()}…`
    : start.replace(/[,;:]$/, '');
}

const beginsWith = (name: string, words: readonly string[]) => {
  const own = name.split(' ');
  return words.every((word, index) => own[index] === word);
};

/** What a page of a list is called: `Editions, page 2 of 3`, and the first by the title alone.
 * @param at  which page, from 0. */
export const pageTitle = (title: string, at: number, pages: number): string =>
  at === 0 ? title : `${title}, page ${at + 1} of ${pages}`;

/** Which rows of the whole these are: `201 to 400 of 10000`. */
export const partWords = ({ from, rows, all }: ListPage<unknown>): string =>
  `${from} to ${from + rows.length - 1} of ${all}`;
