import { withArticle } from '../figure/in-words.ts';
import { singleMisread } from './confusables.ts';
import { parseNumber } from './parse-number.ts';
import { plainForm } from './plain.ts';

/** The number proper in plain characters, without side and cut. */
const plainStem = (written: string): string => plainForm(parseNumber(written).stem ?? written);

/** Whether two numbers are one by their stems. A label often leaves the letters in front out: `2207` is `HLX 2207`. */
export function sameStem(one: string, other: string): boolean {
  if (one === other || plainForm(one) === plainForm(other)) return true;
  const [a, b] = [plainStem(one), plainStem(other)];
  if (a === b) return true;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  return /^[0-9]+$/.test(short) && isLettersThen(long, short);
}

const isLettersThen = (long: string, figures: string) =>
  long.endsWith(figures) && /^[A-Z]*$/.test(long.slice(0, long.length - figures.length));

/** How one stem could have come to be read as the other: one misread character, or two neighbours swapped. Undefined
 * when it takes more, so that nothing speaks for a mistake in reading. */
export function howMistaken(read: string, meant: string): string | undefined {
  const [a, b] = [plainStem(read), plainStem(meant)];
  const misread = singleMisread(a, b);
  if (misread !== undefined)
    return `${withArticle(misread.meant)} read as ${withArticle(misread.read)} would account for it (${misread.row.reason})`;
  const swapped = swappedAt(a, b);
  return swapped === undefined ? undefined : `${swapped} swapped would account for it`;
}

function swappedAt(a: string, b: string): string | undefined {
  if (a.length !== b.length) return undefined;
  const at = [...a].findIndex((character, index) => character !== b[index]);
  const isSwap = at >= 0 && a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2);
  return isSwap ? `the figures ${a[at]} and ${a[at + 1]}` : undefined;
}

/** The letters that a number starts with, which tell a house's system from another's. */
export const lettersOf = (written: string): string => /^[A-Z]*/.exec(plainStem(written))?.[0] ?? '';
