/** Parts of an inch that a rule is marked in. */
const FRACTIONS: readonly (readonly [number, string])[] = [
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [3 / 8, '⅜'],
  [1 / 2, '½'],
  [5 / 8, '⅝'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [7 / 8, '⅞'],
];

const CLOSE = 0.0006;

/** `7½` for 7.5; anything that isn't a marked part is left as a decimal: `10.28`. */
export function fraction(count: number): string {
  const whole = Math.floor(count + CLOSE);
  const rest = count - whole;
  if (Math.abs(rest) < CLOSE) return String(whole);
  const part = FRACTIONS.find(([size]) => Math.abs(rest - size) < CLOSE);
  return part === undefined ? decimal(count, 2) : `${whole === 0 ? '' : whole}${part[1]}`;
}

/** At most `places` decimals, no zeros at the end, a true minus sign. */
export function decimal(count: number, places: number): string {
  const text = String(Number(Math.abs(count).toFixed(places)));
  return count < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** With a sign always, for differences: `+3.9`, `−1.3`, `0.0`. */
export function signed(count: number, places: number): string {
  const text = Math.abs(count).toFixed(places);
  if (Number(text) === 0) return text;
  return `${count < 0 ? '−' : '+'}${text}`;
}

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** `four reels`, `13 reels`, `one reel`; nouns that only take an s need no plural. */
export function count(many: number, one: string, several = `${one}s`): string {
  return `${WORDS[many] ?? many} ${many === 1 ? one : several}`;
}

/** The same in figures: `1 reel`, `13 reels`. */
export const figures = (many: number, one: string, several = `${one}s`): string =>
  `${many} ${many === 1 ? one : several}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
