import { parseNumber } from './parse-number.ts';
import { plainForm } from './plain.ts';

/** How a set's numbers belong together. */
export type WaysToPair = 'side letters' | 'side figures' | 'consecutive';

interface Side {
  /** 1 to 8, from `1` to `8` or `A` to `H`; undefined when it isn't recorded so. */
  readonly order?: number;
  readonly plain: string;
  readonly stem: string;
  readonly letter: string | null;
  readonly cut: string | null;
}

/** Whether sides' numbers belong together, and how; undefined when they don't. Every number must differ from every
 *  other and pair with at least one of them, so that a set of two discs may be numbered disc by disc, straight through,
 *  or for automatic coupling. Fewer than two numbers always pair. */
export function sidesPair(
  numbers: readonly { readonly side?: string; readonly written: string }[],
): WaysToPair | undefined {
  const sides = numbers.map(readSide);
  const span = Math.max(numbers.length - 1, sides.some(({ order }) => (order ?? 0) > 2) ? 3 : 1);
  let ways: WaysToPair | undefined;
  for (const one of sides) {
    const partners = sides.filter((other) => other !== one).map((other) => twoPair(one, other, span));
    const found = partners.find((way) => way !== undefined);
    if (found === undefined || partners.includes('same')) return undefined;
    if (found !== 'same') ways ??= found;
  }
  return sides.length < 2 ? 'consecutive' : ways;
}

function readSide({ side, written }: { readonly side?: string; readonly written: string }): Side {
  const { stem, side: letter, cut } = parseNumber(written);
  const order = orderOf(side);
  return {
    ...(order !== undefined && { order }),
    plain: plainForm(written),
    stem: plainForm(stem ?? ''),
    letter,
    cut,
  };
}

const LETTERS = 'ABCDEFGH';

/** A, B, C, D go with 1, 2, 3, 4. */
export function orderOf(side: string | undefined): number | undefined {
  const plain = plainForm(side ?? '');
  if (plain.length !== 1) return undefined;
  const order = LETTERS.includes(plain) ? LETTERS.indexOf(plain) + 1 : Number(plain);
  return order >= 1 && order <= LETTERS.length ? order : undefined;
}

/** Side 1 to 8 in the way another side is written: as a letter beside a letter, else as a figure. */
export function sideWrittenLike(order: number, other: string): string {
  return isSideLetter(plainForm(other)) ? (LETTERS[order - 1] ?? String(order)) : String(order);
}

function twoPair(one: Side, other: Side, span: number): WaysToPair | 'same' | undefined {
  if (one.stem === other.stem && one.letter !== null && one.letter === other.letter) return 'same';
  if (one.plain === other.plain) return 'same';
  if (one.stem === other.stem && one.letter !== null && other.letter !== null) return 'side letters';
  if (differInSideLetter(one.plain, other.plain)) return 'side letters';
  if (areConsecutive(one.stem, other.stem, span)) return 'consecutive';
  return one.stem === other.stem && haveSideFigures(one, other) ? 'side figures' : undefined;
}

/** The side letter may stand anywhere, in front too: one place differs, by a letter of a side. */
function differInSideLetter(one: string, other: string): boolean {
  if (one.length !== other.length) return false;
  const places = [...one].flatMap((character, at) => (character === other[at] ? [] : [at]));
  const at = places[0];
  if (places.length !== 1 || at === undefined) return false;
  return isSideLetter(one[at]) && isSideLetter(other[at]);
}

const isSideLetter = (character: string | undefined) => character !== undefined && /^[A-H]$/.test(character);

/** A house may write the sides as dash figures; a figure that isn't the side's own is a cut of one side. */
function haveSideFigures(one: Side, other: Side): boolean {
  const isOwn = ({ order, cut }: Side, otherwise: boolean) => (order === undefined ? otherwise : Number(cut) === order);
  if (one.cut === null || other.cut === null || one.letter !== null || other.letter !== null) return false;
  const figures = [Number(one.cut), Number(other.cut)].toSorted((a, b) => a - b).join('');
  const couple = figures === '12' || figures === '34';
  return isOwn(one, couple) && isOwn(other, couple);
}

function areConsecutive(one: string, other: string, span: number): boolean {
  const a = lastFigures(one);
  const b = lastFigures(other);
  if (a.before !== b.before || a.after !== b.after || a.figures === '' || b.figures === '') return false;
  const difference = BigInt(a.figures) - BigInt(b.figures);
  const apart = difference < 0n ? -difference : difference;
  return apart > 0n && apart <= BigInt(span);
}

const isFigure = (character: string | undefined) => character !== undefined && character >= '0' && character <= '9';

/** A plain number cut at its last run of figures. Two walks from the end: the time grows with the length, no faster. */
function lastFigures(plain: string): { readonly before: string; readonly figures: string; readonly after: string } {
  let end = plain.length;
  while (end > 0 && !isFigure(plain[end - 1])) end -= 1;
  let start = end;
  while (start > 0 && isFigure(plain[start - 1])) start -= 1;
  return { before: plain.slice(0, start), figures: plain.slice(start, end), after: plain.slice(end) };
}
