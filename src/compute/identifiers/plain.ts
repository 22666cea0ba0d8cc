/** Letters of other scripts that have the very shape of a Latin capital, so that a label can't tell them apart.
 *  Key: the Latin letter. Source: Unicode UTS #39, confusables.txt; its rows with a Cyrillic or Greek capital. The lunate
 *  sigma isn't among them: NFKC makes it a Σ first. */
const SAME_SHAPE: Readonly<Record<string, string>> = {
  A: 'ΑА',
  B: 'ΒВ',
  C: 'С',
  E: 'ΕЕ',
  F: 'Ϝ',
  G: 'Ԍ',
  H: 'ΗН',
  I: 'ΙІӀ',
  J: 'ͿЈ',
  K: 'ΚК',
  M: 'ΜϺМ',
  N: 'Ν',
  O: 'ΟО',
  P: 'ΡР',
  S: 'Ѕ',
  T: 'ΤТ',
  V: 'Ѵ',
  W: 'Ԝ',
  X: 'ΧХ',
  Y: 'ΥУҮ',
  Z: 'Ζ',
};

const LATIN_OF = new Map(
  Object.entries(SAME_SHAPE).flatMap(([latin, others]) => [...others].map((other) => [other, latin] as const)),
);

const ALL_PLAIN = /^[A-Z0-9]*$/;
/** Latin letters without accents, figures and the common marks need none of Unicode's tables. */
const ALL_ASCII = /^[ -~]*$/;
const NOT_PLAIN = /[^A-Z0-9]+/g;
const LETTER_OR_FIGURE = /[\p{L}\p{Nd}]/u;
const ACCENTS = /[\u0300-\u036f]/g;

/** A number without what spelling adds to it: capitals and figures in one run, no spaces, dashes, dots or strokes.
 *
 * Full-width and other compatibility forms are folded by Unicode NFKC (UAX #15), accents are dropped, figures of any
 * script become 0 to 9, and a letter of the same shape in Cyrillic or Greek becomes the Latin one. Leading zeros stay:
 * `00123` is not `123`. Marks that are no letter or figure (‖, △, ?, *) go.
 */
export function plainForm(text: string): string {
  const capitals = text.toUpperCase();
  if (ALL_PLAIN.test(capitals)) return capitals;
  return ALL_ASCII.test(capitals) ? capitals.replaceAll(NOT_PLAIN, '') : foldAll(capitals);
}

function foldAll(capitals: string): string {
  let plain = '';
  for (const character of decomposed(capitals)) {
    if (!LETTER_OR_FIGURE.test(character)) continue;
    plain += LATIN_OF.get(character) ?? asciiFigure(character);
  }
  return plain;
}

/** Upper case again at the end: `ſ` and its like only become letters with a capital when they are decomposed. */
const decomposed = (text: string) => text.normalize('NFKD').replace(ACCENTS, '').normalize('NFC').toUpperCase();

const FIGURE = /\p{Nd}/u;

/** A figure of any script as 0 to 9: Unicode keeps each script's ten figures in one run that starts with its zero. */
function asciiFigure(character: string): string {
  if (character < '\u0080' || !FIGURE.test(character)) return character;
  const code = character.codePointAt(0) ?? 0;
  let value = 0;
  while (value < 9 && FIGURE.test(String.fromCodePoint(code - value - 1))) value += 1;
  return String(value);
}
