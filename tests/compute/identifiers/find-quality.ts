import { mistakenFor } from '#compute/identifiers/confusables.ts';
import { type Answer, searchNumbers } from '#compute/identifiers/number-search.ts';
import type { OpenIndex } from '#compute/identifiers/open-index.ts';
import { plainForm } from '#compute/identifiers/plain.ts';
import { pick, seeded } from './invented-houses.ts';

const CHARACTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789'];

/** The number with the character at one of its letters or figures replaced. */
export function changed(number: string, random: () => number, change: (character: string) => string): string {
  const places = [...number].flatMap((character, at) => (/[A-Z0-9]/.test(character) ? [at] : []));
  const at = pick(random, places);
  return number.slice(0, at) + change(number[at] ?? '') + number.slice(at + 1);
}

/** Any other character, or an easily misread one, in a character's place. */
export const another = (random: () => number) => (character: string) =>
  pick(
    random,
    CHARACTERS.filter((one) => one !== character),
  );
export const misread = (random: () => number) => (character: string) =>
  pick(random, [...mistakenFor(character).keys(), ...(mistakenFor(character).size === 0 ? [character] : [])]);

const SPELLINGS: readonly ((text: string) => string)[] = [
  (text) => text.toLowerCase(),
  plainForm,
  (text) => text.replaceAll(/[ \-./]/g, ' – '),
  (text) => [...plainForm(text)].join(' '),
  (text) => [...plainForm(text)].map((one) => String.fromCodePoint(one.charCodeAt(0) + 0xfee0)).join(''),
];

/** A way to ask for a number, and where it must then be found. */
export interface Quality {
  readonly name: string;
  readonly typed: (number: string, random: () => number) => string;
  /** Whether it is where it must be. */
  readonly isFound: (answer: Answer, number: string) => boolean;
  /** The share that may be missed. */
  readonly allowed: number;
}

const within = (answer: Answer, number: string, most: number) =>
  answer.hits.slice(0, most).some((hit) => hit.number === number);

/** What must hold on a set where no two numbers are closer than four edits. */
export const QUALITIES: readonly Quality[] = [
  {
    name: 'as written: first',
    typed: (number) => number,
    isFound: (answer, number) => within(answer, number, 1),
    allowed: 0,
  },
  {
    name: 'in another spelling: first',
    typed: (number, random) => pick(random, SPELLINGS)(number),
    isFound: (answer, number) => within(answer, number, 1),
    allowed: 0,
  },
  {
    name: 'one easily misread character: in the first five',
    typed: (number, random) => changed(number, random, misread(random)),
    isFound: (answer, number) => within(answer, number, 5),
    allowed: 0,
  },
  {
    name: 'one unread character: found',
    typed: (number, random) => changed(number, random, () => '?'),
    isFound: (answer, number) => within(answer, number, 500),
    allowed: 0,
  },
  {
    name: 'two characters wrong: in the first ten of hits, then near',
    typed: (number, random) => changed(changed(number, random, another(random)), random, another(random)),
    isFound: ({ hits, near }, number) => [...hits, ...near].slice(0, 10).some((each) => each.number === number),
    allowed: 0.05,
  },
];

/** What was typed for each number that wasn't found where it must be. */
export function missed(index: OpenIndex, numbers: readonly string[], quality: Quality): readonly string[] {
  const random = seeded(20_713);
  return numbers.flatMap((number) => {
    const typed = quality.typed(number, random);
    return quality.isFound(searchNumbers(index, typed, 500), number) ? [] : [`${typed} for ${number}`];
  });
}

/** Numbers that are near none of the set, but are shown as a match of one. */
export function falselyMatched(index: OpenIndex, strangers: readonly string[]): readonly string[] {
  return strangers.flatMap((text) =>
    searchNumbers(index, text, 5)
      .hits.slice(0, 1)
      .map(({ number }) => `${text}: ${number}`),
  );
}
