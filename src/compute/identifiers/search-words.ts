import { plainForm } from './plain.ts';
import { runsOf } from './runs.ts';

/** No word of prose begins like this, so that the words for numbers and the words of texts never meet. */
const SIGN = 'n0';
const MOST_RUNS = 8;

/** The words by which a text index finds a number in any spelling: an index that cuts at punctuation and matches a
 * word by its beginning doesn't find `QZX 4471` when the label says `QZX-4471-2`. From each run of letters or figures
 * on, all that follow become one word, if there is a figure in it: n0qzx44712, n044712, n02. A shorter one is found as
 * the beginning of it. In order, without repeats; none for a text without a figure. */
export function wordsOfNumber(written: string): readonly string[] {
  const runs = runsOf(written)
    .filter((run) => run.is !== 'between')
    .map((run) => run.plain.replaceAll('?', ''));
  const words = runs.map((_, from) => runs.slice(from, from + MOST_RUNS).join(''));
  return [...new Set(words.filter(hasFigure).map(signed))].sort();
}

/** What to ask the index for, in this order, when someone types a text: the number that it may be, then the text as it
 * stands. Prose goes along: `Low Water QZX 4471` asks for `Low Water n0qzx4471`. */
export function askedOfIndex(typed: string): readonly string[] {
  const words = typed.trim().split(/\s+/u);
  const asked: string[] = [];
  let number = '';
  for (const [at, word] of words.entries()) {
    if (isNumberPart(word, words[at + 1], number)) {
      number += plainForm(word);
      continue;
    }
    if (number !== '') asked.push(signed(number));
    number = '';
    asked.push(word);
  }
  if (number !== '') asked.push(signed(number));
  return [...new Set([asked.join(' '), words.join(' ')])];
}

/** A word with a figure, a few letters in front of one, or a letter behind one: `HLX 2207 A`. */
function isNumberPart(word: string, next: string | undefined, before: string): boolean {
  const plain = plainForm(word);
  if (hasFigure(plain)) return true;
  if (plain === '' || word !== word.toUpperCase()) return false;
  return (
    (plain.length <= 4 && next !== undefined && (hasFigure(plainForm(next)) || next.length <= 2)) ||
    (plain.length === 1 && before !== '')
  );
}

const hasFigure = (plain: string) => /[0-9]/.test(plain);
const signed = (plain: string) => SIGN + plain.toLowerCase();
