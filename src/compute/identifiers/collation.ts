import { align, type Standing } from './alignment.ts';
import { indexedForms } from './indexed-forms.ts';
import { plainForm } from './plain.ts';
import { type Asked, questionOf } from './question.ts';
import { charactersOf, parseReading } from './reading-pattern.ts';

/** A column of a collation: what was typed above, what is written below; `between` is a space or a dash. */
export interface CollationColumn {
  readonly is: Standing | 'between';
  readonly typed: string;
  readonly found: string;
}

/** What was typed laid over a number as written, character by character, with the spaces and dashes of both.
 *
 * @param asPart  what stands before and after what was typed is no difference; else it is one. */
export function collate(typed: string, number: string, asPart: boolean): readonly CollationColumn[] {
  const asked = questionOf(typed).forms[0]?.asked ?? [];
  const { columns } = closest(asked, number, asPart);
  const above = spelled(typed.trim());
  const below = spelled(number);
  const collated: CollationColumn[] = [];
  let from = 0;
  let at = 0;
  for (const { is, asked: one, found } of columns) {
    const before = is === 'more' ? '' : (above.marks[from] ?? '');
    const between = is === 'lacks' ? '' : (below.marks[at] ?? '');
    if (collated.length > 0 && before + between !== '') {
      collated.push({ is: 'between', typed: before.trim(), found: between.trim() });
    }
    const written = below.characters[at] ?? found;
    collated.push({ is, typed: one, found: is === 'lacks' ? '' : plainForm(written) === found ? written : found });
    if (is !== 'more') from += 1;
    if (is !== 'lacks') at += 1;
  }
  const [leftAbove, leftBelow] = [above.after.trim(), at === below.characters.length ? below.after.trim() : ''];
  if (leftAbove + leftBelow !== '') collated.push({ is: 'between', typed: leftAbove, found: leftBelow });
  return collated;
}

function closest(asked: readonly Asked[], number: string, asPart: boolean) {
  const each = indexedForms(number).map((plain) => align(asked, plain, asPart));
  return each.toSorted((a, b) => a.cost - b.cost)[0] ?? { columns: [], cost: 0 };
}

interface Spelled {
  readonly characters: readonly string[];
  /** The marks that stand before each. */
  readonly marks: readonly string[];
  /** The marks after the last. */
  readonly after: string;
}

/** A text's characters that are letters or figures (or unread), and the marks between them. */
function spelled(text: string): Spelled {
  const pattern = parseReading(text);
  const all = pattern.ok ? charactersOf(pattern.parts).map(({ mayBe }) => mayBe[0] ?? '?') : [...text];
  const characters: string[] = [];
  const marks: string[] = [];
  let mark = '';
  for (const one of all) {
    const plain = one === '?' ? '?' : plainForm(one);
    if (plain === '') mark += one;
    for (const _ of plain) {
      characters.push(plain.length === 1 ? one : plain);
      marks.push(mark);
      mark = '';
    }
  }
  return { characters, marks, after: mark };
}
