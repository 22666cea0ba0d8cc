import { distance } from 'fastest-levenshtein';

/** A stream of figures from 0 up to 1 that is the same for the same seed (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export const pick = <T>(random: () => number, from: readonly T[]): T => {
  const one = from[Math.floor(random() * from.length)];
  if (one === undefined) throw new Error('nothing to pick from');
  return one;
};

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
const letters = (random: () => number, count: number) =>
  Array.from({ length: count }, () => pick(random, LETTERS)).join('');
const figures = (random: () => number, count: number) =>
  Array.from({ length: count }, () => String(Math.floor(random() * 10))).join('');

/** Invented houses' ways to write a number: letters first, figures only, side letters, cuts, strokes, dots, two groups. */
export const STYLES: readonly ((random: () => number) => string)[] = [
  (random) => `${letters(random, 3)} ${figures(random, 4)}`,
  (random) => `${letters(random, 3)} ${figures(random, 4)}-${pick(random, ['A', 'B'])}`,
  (random) => `${letters(random, 2)}-${figures(random, 5)}`,
  (random) => `${letters(random, 4)}${figures(random, 4)}`,
  (random) => figures(random, 7),
  (random) => `${figures(random, 2)} ${figures(random, 3)} ${figures(random, 3)}-${1 + Math.floor(random() * 3)}`,
  (random) => `${letters(random, 1)}.${letters(random, 1)}.${figures(random, 5)}/${pick(random, ['A', 'B', 'C', 'D'])}`,
  (random) => `${figures(random, 1)}${letters(random, 3)} ${figures(random, 4)}-${1 + Math.floor(random() * 9)}`,
  (random) => `${letters(random, 2)} ${figures(random, 6)} ${letters(random, 1)}`,
];

const plainly = (text: string) => text.replaceAll(/[^A-Z0-9]/g, '');

/** Numbers of which no two are closer than so many edits, spelling aside. */
export function sparseNumbers(seed: number, count: number, apart: number): readonly string[] {
  const random = seeded(seed);
  const kept: { readonly written: string; readonly plain: string }[] = [];
  while (kept.length < count) {
    const written = pick(random, STYLES)(random);
    const plain = plainly(written);
    if (kept.every((other) => distance(other.plain, plain) >= apart)) kept.push({ written, plain });
  }
  return kept.map(({ written }) => written);
}

/** Dense series, as houses really number: a prefix and a run of figures that counts up, with sides and cuts. */
export function denseNumbers(seed: number, count: number): readonly string[] {
  const random = seeded(seed);
  const numbers = new Set<string>();
  while (numbers.size < count) {
    const prefix = `${letters(random, 2 + Math.floor(random() * 3))}${pick(random, [' ', '-', ''])}`;
    const first = 100 + Math.floor(random() * 89_000);
    const run = 50 + Math.floor(random() * 2_000);
    const withSides = random() < 0.6;
    for (let each = 0; each < run && numbers.size < count; each += 1) {
      const stem = `${prefix}${first + each}`;
      numbers.add(stem);
      if (withSides)
        for (const side of ['A', 'B'])
          numbers.add(`${stem}-${side}${random() < 0.3 ? `-${1 + Math.floor(random() * 4)}` : ''}`);
    }
  }
  return [...numbers].slice(0, count);
}
