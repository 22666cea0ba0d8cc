import { type Candidate, sameCharacters } from './candidates.ts';
import { type Hit, hitsOf, type Near, searchNumbers } from './number-search.ts';
import type { OpenIndex } from './open-index.ts';
import { plainForm } from './plain.ts';
import { questionOf, wordsAsForms } from './question.ts';
import { runsOf } from './runs.ts';

export type ListState = 'held' | 'known' | 'new';

/** One line of a pasted list, and what the collection has of it. */
export interface ListRow {
  /** Counts from 1, blank lines too. */
  readonly line: number;
  readonly text: string;
  /** What was taken for a number; null when nothing in the line looks like one. */
  readonly number: string | null;
  /** `held`: a reel with this number is here. `known`: an entry has it. `new`: no entry has it, or there is no number. */
  readonly state: ListState;
  /** The number isn't in the line letter by letter: a misread, an unread character or a part. */
  readonly doubtful: boolean;
  readonly hits: readonly Hit[];
  readonly near: readonly Near[];
}

const MOST_HITS = 20;

/** Each line of a list, such as a dealer's lot, looked up as it stands: whatever in it looks like a number, in any
 *  spelling. Blank lines are left out. */
export function searchList(index: OpenIndex, text: string): readonly ListRow[] {
  return text.split(/\r\n|\r|\n/).flatMap((line, at) => (line.trim() === '' ? [] : [searchLine(index, line, at + 1)]));
}

/** One line of a list. */
export function searchLine(index: OpenIndex, written: string, line: number): ListRow {
  const text = written.trim();
  const base = { line, text };
  const exact = exactly(index, text);
  if (exact !== undefined) return { ...base, ...exact, doubtful: exact.hits[0]?.how === 'unread', near: [] };
  const pieces = piecesOf(text);
  for (const piece of pieces) {
    const { hits, near } = searchNumbers(index, piece, MOST_HITS);
    const kept = hits.filter((hit) => hit.how !== 'part' || isWholeRuns(piece, hit.number));
    if (kept.length > 0) return { ...base, number: piece, state: stateOf(kept), doubtful: true, hits: kept, near };
  }
  const number = pieces[0] ?? null;
  const near = number === null ? [] : searchNumbers(index, number, 1).near;
  return { ...base, number, state: 'new', doubtful: false, hits: [], near };
}

/** A number that stands in the line letter by letter: all of the line, or the longest of its runs of words. */
function exactly(index: OpenIndex, text: string): Pick<ListRow, 'number' | 'state' | 'hits'> | undefined {
  const plainly = text.replaceAll(/[*?]/g, ' ');
  const question = questionOf(plainly);
  const whole = question.forms.filter(({ extent }) => extent === 'all' || extent === 'without the rest');
  for (const form of [...whole, ...wordsAsForms(plainly)]) {
    const candidates: readonly Candidate[] = isLikelyNumber(form.plain ?? '') ? sameCharacters(index, form) : [];
    if (candidates.length === 0) continue;
    const { hits } = hitsOf(index, questionOf(text), candidates, MOST_HITS);
    return { number: hits[0]?.number ?? null, state: stateOf(hits), hits };
  }
  return undefined;
}

const SHORTEST = 3;
const isLikelyNumber = (plain: string) => plain.length >= SHORTEST && /\d/.test(plain);

/** A log line that names its reel leads to it. */
const LEADS_TO_REEL: ReadonlySet<Hit['of']> = new Set(['reel', 'log line']);

/** Owned when a reel with the number is here or lent out; the first hits decide, since later ones are less likely. */
function stateOf(hits: readonly Hit[]): ListState {
  const first = hits[0];
  const equal = hits.filter(
    ({ how }) => how === first?.how || (first?.how === 'as written' && how === 'other spelling'),
  );
  return equal.some(({ of, state }) => LEADS_TO_REEL.has(of) && (state === 'held' || state === 'lent'))
    ? 'held'
    : 'known';
}

/** What follows a figure that is a size, a speed or a time. */
const MEASURE = /^(?:in\.?|"|″|ips|in\/s|cm|cm\/s|mm|m|ft|min|s|h|hz|khz|%|eur|gbp|usd|pcs?|x)$/i;
/** A price, a size or speed in one word, a year by itself: looked up as they stand, but no sign of a number. */
const NO_NUMBER =
  /^[£$€¥]|^\d+(?:[.,]\d+)?(?:in|ips|cm|mm|ft|min|khz|hz|%|″|")$|^\d+[.,]\d\d?[-–]?$|in\/s|cm\/s|^(?:19|20)\d\d$/i;
const LONGEST_PREFIX = 5;

/** The words of a line that look like a number, with letters in front of them that look like its prefix; first as they
 *  stand, then without a question mark that only doubts. */
function piecesOf(text: string): readonly string[] {
  const words = text
    .replaceAll('*', ' ')
    .split(/[\s,;()[\]]+/)
    .filter((word) => word !== '');
  const pieces = words.flatMap((word, at) => {
    const plain = plainForm(word);
    if (!isLikelyNumber(plain) || NO_NUMBER.test(word) || MEASURE.test(words[at + 1] ?? '')) return [];
    const before = words[at - 1] ?? '';
    const isPrefix =
      /^[A-Z]+$/.test(plainForm(before)) && before.length <= LONGEST_PREFIX && before === before.toUpperCase();
    return isPrefix ? [`${before} ${word}`, word] : [word];
  });
  return [
    ...new Set(pieces.flatMap((piece) => (piece.endsWith('?') ? [piece.replace(/(?<!\?)\?+$/, ''), piece] : [piece]))),
  ];
}

/** Whether a piece is made of whole runs of the number: 3114 of MZV 3114, not 311 of it. */
function isWholeRuns(piece: string, number: string): boolean {
  const asked = runsOf(piece).flatMap(({ is, plain }) => (is === 'between' ? [] : [plain]));
  const runs = runsOf(number).flatMap(({ is, plain }) => (is === 'between' ? [] : [plain]));
  const figures = asked.filter((run) => /\d/.test(run));
  return figures.length > 0 && figures.every((run) => runs.includes(run));
}

/** How many lines of each kind, for a heading. */
export function countList(rows: readonly ListRow[]): Readonly<Record<ListState | 'doubtful' | 'no number', number>> {
  const count = (which: (row: ListRow) => boolean) => rows.filter(which).length;
  return {
    held: count(({ state, doubtful }) => state === 'held' && !doubtful),
    known: count(({ state, doubtful }) => state === 'known' && !doubtful),
    doubtful: count(({ doubtful }) => doubtful),
    new: count(({ state, number }) => state === 'new' && number !== null),
    'no number': count(({ number }) => number === null),
  };
}
