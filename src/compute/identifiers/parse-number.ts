import { plainForm } from './plain.ts';
import { type Run, runsOf } from './runs.ts';

/** A number taken apart, with no house's system assumed; null where a part isn't there. */
export interface ParsedNumber {
  /** Stem and side in plain characters, without separators: `HLX2207A`. The cut is not part of it. */
  readonly plain: string | null;
  /** The number proper, as written: `HLX 2207`. */
  readonly stem: string | null;
  /** The side letter, as a plain capital. */
  readonly side: string | null;
  /** Which lacquer: the figures after a dash, or after the side letter. */
  readonly cut: string | null;
  /** Whatever else is etched, as written. */
  readonly rest: string | null;
  /** Every reading, this one first, when there is more than one. */
  readonly ambiguous?: readonly string[];
}

/** A record of four discs has sides A to H. */
const SIDE_LETTER = /^[A-H]$/;
/** What joins the parts of one number: a space, a dash, a dot, a stroke, up to three of them. Other marks end it. */
const JOINER = /^[\s\-\u2010-\u2015\u2212.,/·:#_]{1,3}$/;
/** Cut numbers are short; a longer run of figures belongs to the number itself. */
const LONGEST_CUT = 2;
/** The number proper is the first run of figures at least this long. */
const LONG_RUN = 3;

/** Takes a catalogue, matrix, cut or job number apart, or a whole run-out etching as it stands.
 *
 * The first long run of figures ends the number proper, with all that stands before it. After it may come a side
 * letter, then a cut number, each joined by a dash, a stroke, a space or nothing. The rest is kept as written.
 */
export function parseNumber(text: string): ParsedNumber {
  const groups = markGroups(text);
  const runs = groups.find((group) => group.runs.some(isLongFigures)) ?? groups.find(hasFigures) ?? groups[0];
  if (runs === undefined) return { plain: null, stem: null, side: null, cut: null, rest: text.trim() || null };
  const main = mainRun(runs.runs);
  const stemEnd = stemRuns(runs.runs, main);
  const tail = readTail(runs.runs, stemEnd);
  const first = runs.runs[0];
  const last = runs.runs[stemEnd];
  const from = first?.from ?? 0;
  const stem = text.slice(from, last?.to ?? 0);
  const rest = [text.slice(0, from), text.slice(tail.to)].map((part) => part.trim()).filter((part) => part !== '');
  const side = tail.side?.plain ?? null;
  const cut = tail.cut?.plain ?? null;
  const parsed = { plain: plainOf(stem) + (side ?? ''), stem, side, cut, rest: rest.join(' ') || null };
  const ambiguous = otherReadings(runs.runs.slice(main, stemEnd + 1), parsed, tail);
  return ambiguous === undefined ? parsed : { ...parsed, ambiguous };
}

/** The plain form, with an unread `?` kept in its place. */
const plainOf = (text: string) => text.split(/[?？]/).map(plainForm).join('?');

const isLongFigures = (run: Run) => run.is === 'figures' && run.plain.length >= LONG_RUN;
const hasFigures = (group: { runs: readonly Run[] }) => group.runs.some((run) => run.is === 'figures');

/** The text's runs, cut where a mark other than a joiner stands; each group starts and ends with letters or figures. */
export function markGroups(text: string): readonly { runs: readonly Run[] }[] {
  const groups: Run[][] = [[]];
  for (const run of runsOf(text)) {
    if (run.is === 'between' && !JOINER.test(run.text)) groups.push([]);
    else groups.at(-1)?.push(run);
  }
  return groups.map((runs) => ({ runs: trimmed(runs) })).filter((group) => group.runs.length > 0);
}

function trimmed(runs: readonly Run[]): readonly Run[] {
  const from = runs.findIndex((run) => run.is !== 'between');
  const to = runs.findLastIndex((run) => run.is !== 'between');
  return from < 0 ? [] : runs.slice(from, to + 1);
}

/** The first long run of figures; without one the longest, and without figures the last run. */
function mainRun(runs: readonly Run[]): number {
  const long = runs.findIndex(isLongFigures);
  if (long >= 0) return long;
  let main = -1;
  for (const [index, run] of runs.entries()) {
    if (run.is === 'figures' && run.plain.length > (runs[main]?.plain.length ?? 0)) main = index;
  }
  return main < 0 ? runs.length - 1 : main;
}

/** The last run of the stem: the main one, letters written onto it, and further figures too long for a cut. */
function stemRuns(runs: readonly Run[], main: number): number {
  let end = main;
  const glued = runs[end + 1];
  if (glued?.is === 'letters' && glued.plain.length > 1) return end + 1;
  while (runs[end + 1]?.is === 'between' && runs[end + 2]?.is === 'figures') {
    const next = runs[end + 2];
    const afterwards = runs[end + 3]?.is === 'between' && runs[end + 4]?.is === 'figures';
    const isCut = (next?.plain.length ?? 0) <= LONGEST_CUT && !afterwards;
    if (isCut) break;
    end += 2;
  }
  return end;
}

interface Tail {
  readonly side?: Run;
  readonly cut?: Run;
  /** What stands between the stem and a cut without a side. */
  readonly joiner?: string;
  /** Letters written onto the cut, as in `-1A`. */
  readonly glued?: Run;
  readonly to: number;
}

function readTail(runs: readonly Run[], stemEnd: number): Tail {
  let to = runs[stemEnd]?.to ?? 0;
  let next = stemEnd + 1;
  const afterJoiner = (index: number) => (runs[index]?.is === 'between' ? index + 1 : index);
  const sideAt = afterJoiner(next);
  const letter = runs[sideAt];
  const side = letter?.is === 'letters' && SIDE_LETTER.test(letter.plain) ? letter : undefined;
  if (side !== undefined) {
    to = side.to;
    next = sideAt + 1;
  }
  const cutAt = afterJoiner(next);
  const figures = runs[cutAt];
  const joined = side !== undefined || cutAt > next;
  const cut = joined && figures?.is === 'figures' && figures.plain.length <= LONGEST_CUT ? figures : undefined;
  if (cut === undefined) return { ...(side && { side }), to };
  const glued = runs[cutAt + 1]?.is === 'letters' ? runs[cutAt + 1] : undefined;
  const joiner = cutAt > next ? runs[next]?.text : undefined;
  return { cut, to: cut.to, ...(side && { side }), ...(joiner !== undefined && { joiner }), ...(glued && { glued }) };
}

const MONTHS = 'January February March April May June July August September October November December'.split(' ');
const YEAR = /^(?:19|20)\d\d$/;
const ONE_OR_TWO = /^[12]$/;

/** What else the same characters can mean, when a reader could be in doubt. A number stays a number: it is never taken
 *  for a date, only said to look like one. Common practice, no source. */
function otherReadings(main: readonly Run[], parsed: ParsedNumber, tail: Tail): readonly string[] | undefined {
  const { stem, side, cut } = parsed;
  if (stem === null || cut === null || side !== null) return undefined;
  const asCut = `cut ${cut} of matrix ${stem}`;
  const month = MONTHS[Number(cut) - 1];
  const figures = main[0]?.plain ?? '';
  if (tail.glued && SIDE_LETTER.test(tail.glued.plain)) return [asCut, `side ${tail.glued.plain} of ${stem}-${cut}?`];
  if (plainOf(stem) === figures && YEAR.test(figures) && month !== undefined) return [asCut, `${month} ${figures}?`];
  const next = String(Number(figures.slice(-2)) + 1);
  if (tail.joiner?.trim() === '/' && next.endsWith(cut)) return [asCut, `${stem} and the number after it?`];
  return ONE_OR_TWO.test(cut) ? [asCut, `side ${cut} of ${stem}?`] : undefined;
}
