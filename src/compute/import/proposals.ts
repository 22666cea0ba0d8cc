import { columnsOf, formOf, keysOfSheet, type SheetKind } from '#model/entry-column.ts';
import { nearestOf } from '#model/nearest.ts';
import type { ColumnSense } from './cell-forms.ts';
import { senseOf } from './propose-columns.ts';
import { type Accepts, valueMeant } from './value-meant.ts';

/** What no fact with a form of its own can be read from: a text, and what could be an id of anything. */
const NONSENSE = ['zq, and otherwise', 'zq-nonsense'];
/** Ways to take a cell that the owner would be asked about next. */
const SENSES: readonly ColumnSense[] = [{}, { pointIsColon: true }, { dates: 'day-month' }, { dates: 'month-day' }];
const LOOKED_AT = 20;
const ENOUGH = 0.5;
const MOST = 5;

/** What a column without a known name is most often, when its cells have no form of their own. Common usage, no source. */
const OFTEN: Readonly<Record<SheetKind, readonly string[]>> = {
  reels: ['numbers.other', 'client', 'edition.label', 'place.shelf', 'body'],
  editions: ['artist', 'label', 'territory', 'body'],
  machines: ['belongs-to', 'body'],
  stocks: ['source', 'body'],
  places: ['address', 'body'],
  people: ['did', 'initials', 'body'],
};

/** Facts that a column may be, the likeliest first: those that its cells can be read as and other texts can't, one with a
 * name like its heading's, and what such columns often are. A fact of one text that another column has is left out.
 *
 * @param taken  The facts of the other columns. */
export function proposals(
  header: string,
  cells: readonly string[],
  kind: SheetKind,
  taken: ReadonlySet<string>,
  accepts: Accepts,
): readonly string[] {
  const free = (key: string) => !taken.has(key) || formOf(kind, key) === 'list';
  const looked = cells.slice(0, LOOKED_AT);
  const read = columnsOf(kind)
    .filter(({ key, form }) => form !== 'free' && !['id', 'title', 'body'].includes(key) && free(key))
    .map(({ key, form }) => {
      const plan = { as: key, ...senseOf(key, header, looked) };
      const means = (cell: string) =>
        SENSES.some((sense) => valueMeant({ ...plan, ...sense }, cell, form, false, accepts) !== undefined);
      return { key, share: NONSENSE.some(means) ? 0 : looked.filter(means).length / Math.max(1, looked.length) };
    })
    .filter(({ share }) => share >= ENOUGH)
    .sort((a, b) => b.share - a.share)
    .map(({ key }) => key);
  const alike = nearestOf(header, keysOfSheet(kind));
  return [...new Set([...(alike === undefined ? [] : [alike]), ...read, ...OFTEN[kind]])].filter(free).slice(0, MOST);
}
