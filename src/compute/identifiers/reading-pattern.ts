/** How a character of a reading is known. */
export type Doubt = 'none' | 'doubtful' | 'one of' | 'unread';

/** One character of a label, as a reader wrote it down. */
export interface ReadCharacter {
  readonly is: 'character';
  readonly doubt: Doubt;
  /** What it may be, likeliest first: one for `none` and `doubtful`, several for `one of`, none for `unread`. */
  readonly mayBe: readonly string[];
  /** Where it starts in `written`, counted from 0. */
  readonly at: number;
}

/** A box printed on a form, ticked or empty. */
interface ReadBox {
  readonly is: 'box';
  readonly ticked: boolean;
  readonly at: number;
}

interface ReadLineBreak {
  readonly is: 'line break';
  readonly at: number;
}

export type ReadPart = ReadCharacter | ReadBox | ReadLineBreak;

/** A reading taken apart, letter by letter; or what in it can't be followed, and where. */
export type ReadingPattern =
  | { readonly ok: true; readonly written: string; readonly parts: readonly ReadPart[] }
  | { readonly ok: false; readonly written: string; readonly at: number; readonly because: string };

const TICKED = new Set(['☑', '☒', '✓', '✔']);
const TICKED_TYPED = /^\[[xX]\]/;
const EMPTY_TYPED = /^\[ ?\]/;

/** Takes a reading's `written` apart.
 *
 * `?` is a character that can't be read, `{1|7}` one of these, `{1?}` read so and in doubt, `☑` or `[x]` a ticked box,
 * `☐` or `[ ]` an empty one, ` / ` a line break. All else stands for itself, a stroke without spaces too.
 */
export function parseReading(written: string): ReadingPattern {
  const parts: ReadPart[] = [];
  let at = 0;
  while (at < written.length) {
    const step = nextPart(written, at);
    if ('because' in step) return { ok: false, written, at, because: step.because };
    parts.push(step.part);
    at += step.length;
  }
  return { ok: true, written, parts };
}

type Step = { readonly part: ReadPart; readonly length: number } | { readonly because: string };

function nextPart(written: string, at: number): Step {
  const character = String.fromCodePoint(written.codePointAt(at) ?? 0);
  if (written.startsWith(' / ', at)) return { part: { is: 'line break', at }, length: 3 };
  if (character === '?') return { part: { is: 'character', doubt: 'unread', mayBe: [], at }, length: 1 };
  if (TICKED.has(character)) return { part: { is: 'box', ticked: true, at }, length: character.length };
  if (character === '☐') return { part: { is: 'box', ticked: false, at }, length: 1 };
  if (character === '[') return typedBox(written, at);
  if (character === '{') return doubtful(written, at);
  if (character === '}') return { because: 'a } closes nothing: write {1|7} or {1?}' };
  return { part: { is: 'character', doubt: 'none', mayBe: [character], at }, length: character.length };
}

function typedBox(written: string, at: number): Step {
  const rest = written.slice(at, at + 3);
  const ticked = TICKED_TYPED.exec(rest);
  if (ticked) return { part: { is: 'box', ticked: true, at }, length: ticked[0].length };
  const empty = EMPTY_TYPED.exec(rest);
  if (empty) return { part: { is: 'box', ticked: false, at }, length: empty[0].length };
  return { part: { is: 'character', doubt: 'none', mayBe: ['['], at }, length: 1 };
}

function doubtful(written: string, at: number): Step {
  const end = written.indexOf('}', at);
  if (end < 0) return { because: 'a { is not closed: write {1|7} or {1?}' };
  const inside = written.slice(at + 1, end);
  const length = end + 1 - at;
  if (inside.includes('{')) return { because: 'a { stands inside another: write {1|7} or {1?}' };
  if (inside === '?') return { part: { is: 'character', doubt: 'unread', mayBe: [], at }, length };
  const characters = [...inside];
  if (characters.length === 2 && characters[1] === '?') {
    return { part: { is: 'character', doubt: 'doubtful', mayBe: characters.slice(0, 1), at }, length };
  }
  const mayBe = inside.split('|');
  if (mayBe.length > 1 && mayBe.every((one) => [...one].length === 1)) {
    return { part: { is: 'character', doubt: 'one of', mayBe: [...new Set(mayBe)], at }, length };
  }
  return { because: `{${inside}} is neither {1|7}, one of these, nor {1?}, read so and in doubt` };
}

/** The reading's characters in order, without boxes and line breaks. */
export const charactersOf = (parts: readonly ReadPart[]): readonly ReadCharacter[] =>
  parts.filter((part) => part.is === 'character');

/** The likeliest text of a reading: doubtful characters as read, the first of several, `?` where nothing can be read. */
export function likeliestText(parts: readonly ReadPart[]): string {
  return parts
    .map((part) => (part.is === 'character' ? (part.mayBe[0] ?? '?') : part.is === 'box' ? '' : ' '))
    .join('');
}

/** Whether a reader was sure of every character. */
export const isSureThroughout = (parts: readonly ReadPart[]): boolean =>
  charactersOf(parts).every((character) => character.doubt === 'none');
