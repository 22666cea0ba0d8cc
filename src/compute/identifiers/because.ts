import type { NumberOf } from '#model/numbered.ts';
import { type Alignment, align, type Column } from './alignment.ts';
import type { How } from './candidates.ts';
import { confusable } from './confusables.ts';
import { indexedForms } from './indexed-forms.ts';
import type { Asked, Extent, Form, Question } from './question.ts';

/** Why a number is an answer, in a sentence or two. */
export function becauseOf(question: Question, form: Form, how: How, number: NumberOf): string {
  const guess = number.sure === 'guess' ? ' The reading itself is a guess.' : '';
  return `${reason(question, form, how, number)}${guess}`;
}

function reason(question: Question, { asked, extent }: Form, how: How, { number }: NumberOf): string {
  if (how === 'as written') return 'Written just so.';
  if (how === 'other spelling') return `The same letters and figures, written ${number}.`;
  const columns = closest(asked, number);
  const allowed = how === 'unread' && /[{]/.test(number) ? `the reading allows it: written ${number}` : '';
  const without = leftOut(extent, question);
  const words = [allowed, fills(columns), alike(columns), around(columns, asked), without].filter(
    (part) => part !== '',
  );
  if (how === 'unread' && words.length === 0) return 'Every character that could be read is the same.';
  return sentence(words);
}

const sentence = (words: readonly string[]) => {
  const text = words.join('; ');
  return text === '' ? 'A part of what you typed.' : `${text[0]?.toUpperCase()}${text.slice(1)}.`;
};

/** What was asked over the number; of a doubtful reading's forms, over the one that it fits best. */
function closest(asked: readonly Asked[], number: string): readonly Column[] {
  const found = indexedForms(number).map((plain) => align(asked, plain, asked.length < plain.length));
  return found.toSorted((a, b) => a.cost - b.cost)[0]?.columns ?? [];
}

/** What was typed beyond the number. */
function leftOut(extent: Extent, { parsed: { side, cut } }: Question): string {
  const cutWords = cut === null ? '' : `the cut number ${cut}`;
  const sideWords = side === null ? '' : `the side letter ${side}`;
  if (extent === 'without the cut') return `the number without ${cutWords} that you typed`;
  if (extent !== 'stem only') return '';
  return `the number without ${listed([sideWords, cutWords].filter((words) => words !== ''))} that you typed`;
}

function fills(columns: readonly Column[]): string {
  const filled = columns.filter(({ is }) => is === 'fills');
  const asked = filled.filter(({ found }) => found !== '?').map(({ found }) => found);
  const there = filled.filter(({ found }) => found === '?').map(({ asked: typed }) => typed);
  return [
    ...(asked.length > 0 ? [`what you couldn’t read is ${listed(asked)} there`] : []),
    ...(there.length > 0 ? [`nobody could read the character where you have ${listed(there)}`] : []),
  ].join('; ');
}

function alike(columns: readonly Column[]): string {
  const taken = columns.filter(({ is }) => is === 'alike');
  return taken.map(({ asked, found }) => `${found} there for your ${asked}: ${reasonFor(asked, found)}`).join('; ');
}

const reasonFor = (asked: string, found: string) =>
  [...asked].map((one) => confusable(one, found)?.reason).find((row) => row !== undefined) ?? 'they look alike';

/** What stands before and after what was typed; or what was typed beyond the number. */
function around(columns: readonly Column[], asked: readonly Asked[]): string {
  const typed = columns.findIndex(({ is }) => is !== 'more');
  const last = columns.findLastIndex(({ is }) => is !== 'more');
  if (typed < 0) return '';
  const before = textOf(columns.slice(0, typed));
  const after = textOf(columns.slice(last + 1));
  const run = asked.some(({ thenAny }) => thenAny)
    ? textOf(columns.slice(typed, last).filter(({ is }) => is === 'more'))
    : '';
  const parts = [
    ...(before ? [`${before} before it`] : []),
    ...(run ? [`${run} for your *`] : []),
    ...(after ? [`${after} after it`] : []),
  ];
  return parts.length === 0 ? '' : `with ${parts.join(' and ')}`;
}

const textOf = (columns: readonly Column[]) => columns.map(({ found }) => found).join('');

/** What keeps a near number from being an answer. */
export function becauseNear({ columns }: Alignment, distance: number): string {
  const differences = columns.flatMap(({ is, asked, found }) => {
    if (is === 'more') return [`has ${found} more`];
    if (is === 'lacks') return [`lacks ${asked}`];
    return is === 'alike' || is === 'differs' ? [`has ${found} for your ${asked}`] : [];
  });
  return `Only near, ${distance === 1 ? 'one character' : `${distance} characters`} away: ${listed(differences)}.`;
}

const listed = (words: readonly string[]) =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
