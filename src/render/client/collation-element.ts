import { type CollationColumn, collate } from '#compute/identifiers/collation.ts';
import { element } from './element.ts';
import { asWritten } from './lead-element.ts';

const NO_BREAK = '\u00a0';

/** What was typed over what is written, in columns with a line under each that says how the two stand; and the same in
 *  words, so that it doesn't rest on the lines.
 *
 * @param near  a number that doesn't fit: what it lacks keeps it from fitting. */
export function collationElement(typed: string, number: string, near: boolean): HTMLElement {
  const columns = collate(typed, number, !near);
  const picture = element(
    'div',
    { class: 'coll', role: 'img', 'aria-label': `typed ${typed}, found ${number}` },
    element('span', { class: 'lab', 'aria-hidden': 'true' }, element('i', {}, 'typed'), element('b', {}, 'found')),
    ...columns.map((column) => columnElement(column, near)),
  );
  return element('div', { class: 'collw' }, picture, element('p', { class: 'cap chars' }, ...inWords(columns, near)));
}

function columnElement({ is, typed, found }: CollationColumn, near: boolean): HTMLElement {
  const [above, below] = [typed || NO_BREAK, found || NO_BREAK];
  const attributes = { class: `k ${lineOf(is, near)}`.trim(), 'aria-hidden': 'true' };
  return element('span', attributes, element('i', {}, above), element('b', {}, below));
}

function lineOf(is: CollationColumn['is'], near: boolean): string {
  if (is === 'same' || is === 'fills') return is === 'same' ? 'same' : 'fill';
  if (is === 'alike') return 'like';
  if (is === 'differs' || (is === 'lacks' && near)) return 'off';
  return is === 'between' ? '' : 'ex';
}

function inWords(columns: readonly CollationColumn[], near: boolean): readonly (Node | string)[] {
  const of = (is: CollationColumn['is']) => columns.filter((column) => column.is === is);
  const parts: readonly (readonly [string, readonly string[]])[] = [
    ['same', of('same').map(({ found }) => found)],
    ['fills the ?', of('fills').map(({ found }) => found)],
    ['looks alike', of('alike').map(({ typed, found }) => `${found} for ${typed}`)],
    ['differs', of('differs').map(({ typed, found }) => `${found} for ${typed}`)],
    ['more', of('more').map(({ found }) => found)],
    [near ? 'lacks' : 'typed beyond it', of('lacks').map(({ typed }) => typed)],
  ];
  return parts
    .filter(([, characters]) => characters.length > 0)
    .flatMap(([words, characters], at) => [
      `${at === 0 ? '' : ' · '}${words} `,
      ...characters.flatMap((one) => [asWritten(one), ' ']),
    ]);
}
