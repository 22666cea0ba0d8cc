import { markGroups, type ParsedNumber, parseNumber } from './parse-number.ts';
import { plainForm } from './plain.ts';
import { charactersOf, parseReading } from './reading-pattern.ts';

/** One character of what is asked for: the plain characters it may be, none for one that couldn't be read. */
export interface Asked {
  readonly mayBe: string;
  /** An unread stretch of any length follows. */
  readonly thenAny: boolean;
}

/** How much of what was typed a form takes. */
export type Extent = 'all' | 'without the rest' | 'without the cut' | 'stem only' | 'words of it';

/** What is looked up: all that was typed, or the number within a longer etching. */
export interface Form {
  readonly extent: Extent;
  readonly asked: readonly Asked[];
  /** The plain text, when every character is known; undefined where one isn't. */
  readonly plain: string | undefined;
}

export interface Question {
  /** As typed, without spaces around it. */
  readonly typed: string;
  readonly parsed: ParsedNumber;
  /** The longest first. Empty when nothing of it can stand in a number. */
  readonly forms: readonly Form[];
}

/** Typed text as a question: any spelling; `?` is one character, `*` any run, `{1|7}` one of these, as in readings. */
export function questionOf(text: string): Question {
  const typed = text.trim();
  const asked = askedOf(typed.normalize('NFKC'));
  const likeliest = likeliestOf(typed);
  const parsed = parseNumber(likeliest);
  const all = formOf('all', asked);
  if (asked.length === 0) return { typed, parsed, forms: [] };
  if (asked.some(({ thenAny }) => thenAny)) return { typed, parsed, forms: [all] };
  const shorter = withinEtching(likeliest, parsed, asked);
  const different = shorter.filter(
    (form, at) =>
      form.asked.length < asked.length && shorter.findIndex((other) => other.asked.length === form.asked.length) === at,
  );
  return { typed, parsed, forms: [all, ...different] };
}

function askedOf(typed: string): readonly Asked[] {
  const pattern = parseReading(typed);
  const parts: readonly { readonly mayBe: readonly string[] }[] = pattern.ok
    ? charactersOf(pattern.parts)
    : [...typed].map((character) => ({ mayBe: [character] }));
  const asked: Asked[] = [];
  for (const { mayBe } of parts) {
    const last = asked.at(-1);
    if (mayBe[0] === '*') {
      if (last !== undefined) asked[asked.length - 1] = { ...last, thenAny: true };
      continue;
    }
    if (mayBe.length === 0) asked.push({ mayBe: '', thenAny: false });
    else if (mayBe.length > 1) asked.push({ mayBe: mayBe.map(plainForm).join(''), thenAny: false });
    else asked.push(...[...plainForm(mayBe[0] ?? '')].map((plain) => ({ mayBe: plain, thenAny: false })));
  }
  return asked;
}

/** The typed text with the first of several characters, and `?` where one is unread. */
function likeliestOf(typed: string): string {
  const pattern = parseReading(typed.normalize('NFKC'));
  if (!pattern.ok) return typed;
  return pattern.parts
    .map((part) => (part.is === 'character' ? (part.mayBe[0] ?? '?') : part.is === 'box' ? '' : ' '))
    .join('');
}

const formOf = (extent: Extent, asked: readonly Asked[]): Form => ({
  extent,
  asked,
  plain: asked.every(({ mayBe, thenAny }) => mayBe.length === 1 && !thenAny)
    ? asked.map(({ mayBe }) => mayBe).join('')
    : undefined,
});

/** The number within the etching: with its cut, without it, and without its side letter. */
function withinEtching(likeliest: string, parsed: ParsedNumber, asked: readonly Asked[]): Form[] {
  const { stem, side, cut } = parsed;
  if (stem === null) return [];
  const from = lengthOf(likeliest.slice(0, likeliest.indexOf(stem)));
  const stemTo = from + lengthOf(stem);
  const sideTo = stemTo + (side === null ? 0 : 1);
  const cutTo = sideTo + (cut?.length ?? 0);
  return [
    ...betweenMarks(likeliest, asked),
    ...(isSetOff(parsed, likeliest) ? [formOf('without the rest', asked.slice(from, cutTo))] : []),
    ...(cut === null ? [] : [formOf('without the cut', asked.slice(from, sideTo))]),
    ...(side === null ? [] : [formOf('stem only', asked.slice(from, stemTo))]),
  ];
}

/** What stands between marks that join nothing, such as ‖ and △: the number may be any of it, misread characters too. */
function betweenMarks(likeliest: string, asked: readonly Asked[]): Form[] {
  const groups = markGroups(likeliest);
  if (groups.length < 2) return [];
  return groups.flatMap(({ runs }) => {
    const from = lengthOf(likeliest.slice(0, runs[0]?.from));
    const length = lengthOf(runs.map(({ text }) => text).join(''));
    const hasFigure = runs.some(({ is }) => is === 'figures');
    return hasFigure && length >= SHORTEST_PART ? [formOf('without the rest', asked.slice(from, from + length))] : [];
  });
}

/** Letters written onto a number are part of it; the rest of an etching stands apart. */
function isSetOff({ rest }: ParsedNumber, likeliest: string): boolean {
  if (rest === null) return false;
  const at = likeliest.lastIndexOf(rest);
  return at <= 0 || plainForm(likeliest.slice(at - 1, at + 1)).length < 2;
}

/** How many plain characters a text has, with each unread `?` as one. */
const lengthOf = (text: string) => [...text].reduce((sum, one) => sum + (one === '?' ? 1 : plainForm(one).length), 0);

/** A text's words that could be numbers, as forms: every run of neighbouring words with a figure, the longest first. */
export function wordsAsForms(typed: string): readonly Form[] {
  const words = typed.split(/[\s,;()]+/).filter((word) => plainForm(word) !== '');
  const forms: Form[] = [];
  for (let length = Math.min(words.length - 1, MOST_WORDS); length > 0; length -= 1) {
    for (let from = 0; from + length <= words.length && from < MOST_STARTS; from += 1) {
      const text = words.slice(from, from + length).join(' ');
      const form = formOf('words of it', askedOf(text.normalize('NFKC')));
      if (form.asked.length >= SHORTEST_PART && /\d/.test(plainForm(text))) forms.push(form);
    }
  }
  return forms;
}

/** A number is written in few words, and a line of a list has it near its beginning. */
const MOST_WORDS = 5;
const MOST_STARTS = 24;
/** A part is looked for from three characters on. */
export const SHORTEST_PART = 3;
