import type { ColumnPlan } from '#compute/import/propose-columns.ts';
import type { Accounted, ImportedRows } from '#compute/import/read-rows.ts';
import { many, plain } from '../problem-list.ts';

/** What each column was taken for, for the owner to agree with or to change. */
export function columnsReport(plans: readonly ColumnPlan[]): string {
  const width = Math.min(30, Math.max(...plans.map(({ header }) => header.length), 0));
  return plans.map((plan) => `  ${plain(plan.header.slice(0, 60)).padEnd(width)}  ${meaning(plan)}\n`).join('');
}

function meaning({ as, by, dates, unit, minutesAsHours, pointIsColon }: ColumnPlan): string {
  if (as === '?') return 'not known: kept under also:';
  const notes = [
    dates === undefined
      ? as === 'recorded.on'
        ? 'day or month first? not known'
        : ''
      : `${dates.replace('-', ' before ')}`,
    unit === undefined ? '' : `bare numbers in ${unit}`,
    minutesAsHours === true ? '18:52:00 read as 18:52, minutes and seconds' : '',
    pointIsColon === true ? '19.44 read as 19:44' : '',
  ].filter((note) => note !== '');
  return `${as}, by ${by}${notes.length === 0 ? '' : ` (${notes.join('; ')})`}`;
}

/** Where every filled cell went. */
export function accountText(accounted: Accounted, { loose }: ImportedRows): string {
  const { cells, asFacts, inAlso, sayNothing, headings } = accounted;
  const lines = [
    `${many(cells, 'filled cell')}: ${asFacts} read as facts, ${inAlso} kept as they stand under also:, ${sayNothing} that say nothing (-, ?), ${headings} headings, ${accounted.loose} alone in their row.\n`,
    ...loose.slice(0, 10).map(({ line, text }) => `  row ${line} isn't a reel: ${plain(text.slice(0, 80))}\n`),
    loose.length > 10 ? `  and ${loose.length - 10} more such rows\n` : '',
  ];
  return lines.join('');
}
