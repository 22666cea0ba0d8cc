import { DATES } from '#compute/import/cell-forms.ts';
import type { KindShown } from '#compute/import/kind-shown.ts';
import type { ColumnPlan } from '#compute/import/propose-columns.ts';
import type { Accounted, ImportedEntry, ImportedRows } from '#compute/import/read-rows.ts';
import { SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { ONE_OF } from '../../desk/fields/kinds.ts';
import type { Io } from '../io.ts';
import { many, plain } from '../problem-list.ts';
import type { Planned } from './plan-entries.ts';

const SHOWN = 3;

/** What a row of the sheet was taken for, and how to say otherwise. */
export function kindText(kind: SheetKind, by: KindShown['by'] | 'as you said'): string {
  const otherwise = kind !== 'reels' && by !== 'as you said' ? `, by ${by}: --kind says otherwise` : '';
  return `a row is one ${ONE_OF[kind]}${otherwise}`;
}

/** What each column was taken for, for the owner to agree with or to change. */
export function columnsReport(plans: readonly ColumnPlan[], makes: ReadonlySet<SheetKind>): string {
  const width = Math.min(30, Math.max(...plans.map(({ header }) => header.length), 0));
  return plans.map((plan) => `  ${plain(plan.header.slice(0, 60)).padEnd(width)}  ${meaning(plan, makes)}\n`).join('');
}

function meaning({ as, by, dates, unit, minutesAsHours, pointIsColon }: ColumnPlan, makes: ReadonlySet<SheetKind>) {
  if (as === '?') return 'not known: kept under also:';
  const notes = [
    dates !== undefined ? dates.replace('-', ' before ') : DATES.includes(as) ? 'day or month first? not known' : '',
    unit === undefined ? '' : `bare numbers in ${unit}`,
    minutesAsHours === true ? '18:52:00 read as 18:52, minutes and seconds' : '',
    pointIsColon === true ? '19.44 read as 19:44' : '',
    as.startsWith('edition.') && !makes.has('editions') ? 'kept under also: until --make editions' : '',
  ].filter((note) => note !== '');
  return `${as}, by ${by}${notes.length === 0 ? '' : ` (${notes.join('; ')})`}`;
}

/** Where every filled cell went. */
export function accountText(accounted: Accounted, { loose }: Pick<ImportedRows, 'loose'>): string {
  const { cells, asFacts, inAlso, sayNothing, headings } = accounted;
  const lines = [
    `${many(cells, 'filled cell')}: ${asFacts} read as facts, ${inAlso} kept as they stand under also:, ${sayNothing} that say nothing (-, ?), ${headings} headings, ${accounted.loose} alone in their row.\n`,
    ...loose.slice(0, 10).map(({ line, text }) => `  row ${line} isn't in an entry: ${plain(text.slice(0, 80))}\n`),
    loose.length > 10 ? `  and ${loose.length - 10} more such rows\n` : '',
  ];
  return lines.join('');
}

/** That rows name records, stocks or rooms of which entries could be made. */
export function namedText(entries: readonly ImportedEntry[], makes: ReadonlySet<SheetKind>): string {
  const names = (pattern: RegExp) =>
    new Set(entries.flatMap(({ named }) => named.filter(({ key }) => pattern.test(key)).map(({ text }) => text))).size;
  const kinds = [
    ['editions', names(/^edition/u)],
    ['stocks', names(/^stock$/u)],
    ['places', names(/^place\.at$/u)],
  ] as const;
  const left = kinds.filter(([kind, count]) => count > 0 && !makes.has(kind)).map(([kind]) => kind);
  if (left.length === 0) return '';
  return `Rows name ${left.join(', ')} that aren't ids: --make ${left.join(',')} makes entries of them, to be looked at first.\n`;
}

/** What would be written, or was. */
export function tell(planned: readonly Planned[], written: boolean, json: boolean, io: Io): void {
  const of = (state: Planned['state']) => planned.filter((one) => one.state === state);
  const copies = planned.reduce((sum, one) => sum + one.copies.length, 0);
  if (!json && !written) for (const { file, text } of shown(of('new'))) io.out(`${file}\n${text}\n`);
  if (!json && !written && of('new').length > shown(of('new')).length)
    io.err(`and ${of('new').length - shown(of('new')).length} more like these (--format json lists all).\n`);
  const news = SHEET_KINDS.map((kind) => ({ kind, count: of('new').filter((one) => one.kind === kind).length }))
    .filter(({ count }) => count > 0)
    .map(({ kind, count }) => many(count, `new ${ONE_OF[kind]}`).replace(/persons$/u, 'people'));
  const verb = written ? 'Wrote' : 'Would write';
  io.err(
    `${verb} ${news.length === 0 ? 'nothing new' : news.join(', ')}${copies === 0 ? '' : ` and ${many(copies, 'photograph')}`}`,
  );
  io.err(
    `${of('filled').length === 0 ? '' : `, and add facts to ${of('filled').length}`}; ${of('there').length} already there, left as they are.\n`,
  );
  const lacking = of('there').filter(({ lacks }) => lacks.length > 0);
  if (lacking.length > 0)
    io.err(`Of these, ${lacking.length} lack facts that the sheet has: --fill adds them, and changes nothing else.\n`);
  if (!written) io.err('Nothing is written yet: --write writes.\n');
  else io.err('"npm run check" says what it makes of them.\n');
}

/** The first few of each kind. */
const shown = (planned: readonly Planned[]) =>
  SHEET_KINDS.flatMap((kind) => planned.filter((one) => one.kind === kind).slice(0, SHOWN));
