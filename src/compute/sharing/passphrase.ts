/** Consonants and vowels that can't be taken for one another over a telephone or in handwriting. */
const CONSONANTS = 'bdfgklmnprstvxyz';
const VOWELS = 'aeiou';
const WORDS = 5;
/** Bits of chance in a made passphrase: each word is one of 16 × 5 × 16 × 5 × 16. */
export const MADE_BITS = Math.floor(WORDS * Math.log2(CONSONANTS.length ** 3 * VOWELS.length ** 2));

/** A passphrase of five made-up words that can be said and written down, such as `tavok limen rudas pobet nifag`.
 *
 * @param chance  a whole number from 0 up to, not including, what it is given; from the machine's own source. */
export function makePassphrase(chance: (below: number) => number): string {
  const letter = (from: string) => from[chance(from.length)] ?? '';
  const word = () => [CONSONANTS, VOWELS, CONSONANTS, VOWELS, CONSONANTS].map(letter).join('');
  return Array.from({ length: WORDS }, word).join(' ');
}

const LEAST_LETTERS = 14;
const LEAST_DIFFERENT = 8;
/** What anyone who guesses tries first; from memory, and short on purpose: length does the rest. */
const GUESSED = ['password', 'passphrase', 'qwerty', 'letmein', 'secret', '12345', 'abcdef', 'dossier'];

/** Why a passphrase is too weak to keep a file that somebody else may hold for years; undefined when it will do.
 *
 * @param known  words that a reader of the envelope may guess: the title, the person's name, ids. */
export function weakness(passphrase: string, known: readonly string[]): string | undefined {
  const text = passphrase.trim();
  if (text !== passphrase) return 'It begins or ends with a space, which is lost when it is passed on.';
  const letters = [...text];
  if (letters.length < LEAST_LETTERS)
    return `It has ${letters.length} characters; whoever has the file can try thousands of millions of those. Take ${LEAST_LETTERS} or more: four or five words that don’t belong together.`;
  if (new Set(letters.map((one) => one.toLowerCase())).size < LEAST_DIFFERENT)
    return `It uses fewer than ${LEAST_DIFFERENT} different characters.`;
  if (/^[\d\s./-]+$/.test(text)) return 'It is figures only, a date or a telephone number perhaps.';
  let rest = text.toLowerCase();
  for (const one of [...GUESSED, ...known.flatMap((words) => words.toLowerCase().split(/[^\p{L}\p{N}]+/u))]) {
    if (one.length > 2) rest = rest.replaceAll(one, '');
  }
  const left = [...rest.replace(/[^\p{L}\p{N}]/gu, '')].length;
  if (left < LEAST_LETTERS - 4)
    return `All but ${left} of its characters are words that anyone would try first, or stand in this share or reel.`;
  return undefined;
}
