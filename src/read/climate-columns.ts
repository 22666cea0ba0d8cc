import type { LogColumns } from '#model/climate.ts';
import { splitRow } from './csv-row.ts';

/** Where a log's readings stand in its rows. */
export interface ColumnPlaces {
  readonly delimiter: string;
  /** How many the header names. */
  readonly count: number;
  readonly time: number;
  /** When the day has a column of its own. */
  readonly date: number | undefined;
  readonly temperature: number;
  readonly fahrenheit: boolean;
  readonly humidity: number;
}

export const COLUMN_KEYS = ['time', 'date', 'temperature_C', 'temperature_F', 'humidity_percent'] as const;
type ColumnKey = (typeof COLUMN_KEYS)[number];

/** A header names the quantity and the unit, or it isn't guessed at: `T` can be °F, and `H` can be a light. */
const SAYS: Record<Exclude<ColumnKey, 'time' | 'date'>, RegExp> = {
  temperature_C:
    /^(?:.*\b)?(?:temp\w*|t)[\s_,;:.()[\]-]*(?:in )?(?:deg(?:rees)?\.? ?)?[°º\ufffd]? ?c(?:elsius)?[\s)\]]*$/i,
  temperature_F:
    /^(?:.*\b)?(?:temp\w*|t)[\s_,;:.()[\]-]*(?:in )?(?:deg(?:rees)?\.? ?)?[°º\ufffd]? ?f(?:ahrenheit)?[\s)\]]*$/i,
  humidity_percent:
    /^(?:.*\b)?(?:rel\w*\.?[\s_]*)?(?:hum\w*|rh)[\s_,;:.()[\]-]*(?:in )?(?:% ?(?:rh)?|percent)[\s)\]]*$/i,
};
const SAYS_TIME =
  /^(?:date[\s_/-]*(?:and)?[\s_/-]*time|timestamp|datetime|time)(?:[\s_,()[\]-]*(?:utc|gmt|z|local)?(?:[+-]\d{1,2}(?::?\d\d)?)?[)\]]*)$/i;
const SAYS_DATE = /^date$/i;

/** Delimiters that loggers use; a comma last, since it may also be the point of a number. */
const DELIMITERS = ['\t', ';', ','];

/** Finds the columns in a header line; undefined when one of them isn't named clearly enough.
 * @param columns  what the logger's own header means, when the place's entry says so. */
export function placesOf(header: string, columns: LogColumns | undefined): ColumnPlaces | undefined {
  for (const delimiter of DELIMITERS) {
    if (!header.includes(delimiter)) continue;
    const names = splitRow(header, delimiter)?.map((name) => name.trim());
    const places = names === undefined ? undefined : placesIn(names, delimiter, columns);
    if (places !== undefined) return places;
  }
  return undefined;
}

function placesIn(
  names: readonly string[],
  delimiter: string,
  columns: LogColumns | undefined,
): ColumnPlaces | undefined {
  const find = (key: ColumnKey, says: RegExp) => {
    const mapped = columns?.get(key);
    if (mapped !== undefined) return named(names, mapped.trim());
    return only(names, says);
  };
  const date = find('date', SAYS_DATE);
  const time = find('time', SAYS_TIME);
  const celsius = columns?.has('temperature_F') ? undefined : find('temperature_C', SAYS.temperature_C);
  const fahrenheit = columns?.has('temperature_C') ? undefined : find('temperature_F', SAYS.temperature_F);
  const humidity = find('humidity_percent', SAYS.humidity_percent);
  const temperature = celsius ?? fahrenheit;
  if (time === undefined || temperature === undefined || humidity === undefined) return undefined;
  return { delimiter, count: names.length, time, date, temperature, fahrenheit: celsius === undefined, humidity };
}

function named(names: readonly string[], wanted: string): number | undefined {
  const exact = names.indexOf(wanted);
  const at = exact >= 0 ? exact : names.findIndex((name) => name.toLowerCase() === wanted.toLowerCase());
  return at < 0 ? undefined : at;
}

/** The one column whose name fits; two that fit are a question, not a choice. */
function only(names: readonly string[], says: RegExp): number | undefined {
  const fitting = names.flatMap((name, index) => (name.length < 80 && says.test(name) ? [index] : []));
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** What a log's columns are called. */
export const columnNames = (header: string): readonly string[] =>
  (splitRow(header, delimiterOf(header)) ?? []).map((name) => name.trim()).filter((name) => name !== '');

const delimiterOf = (header: string) => DELIMITERS.find((one) => header.includes(one)) ?? ',';

/** The mapping to ask for, ready to paste: our best guess at which column is which, for the owner to correct. */
export function proposedColumns(header: string): { readonly columns: LogColumns; readonly zone: string | undefined } {
  const names = columnNames(header);
  const guess = (like: RegExp, otherwise: string) => names.find((name) => like.test(name)) ?? otherwise;
  const time = guess(/time|date|stamp|^t_|utc|gmt/i, names[0] ?? '…');
  const rest = names.filter((name) => name !== time);
  const temperature = rest.find((name) => /temp|^t$|°|^t[\s_]/i.test(name)) ?? rest[0] ?? '…';
  const humidity = rest.find((name) => name !== temperature && /hum|rh|%/i.test(name)) ?? rest[1] ?? '…';
  const key =
    /f\b|fahrenheit/i.test(temperature) && !/c\b|celsius/i.test(temperature) ? 'temperature_F' : 'temperature_C';
  return {
    columns: new Map([
      ['time', time],
      [key, temperature],
      ['humidity_percent', humidity],
    ]),
    zone: zoneIn(time),
  };
}

/** The zone that a column's name gives, `t_UTC+2`: as the place's entry writes it. */
function zoneIn(name: string): string | undefined {
  const groups = /(?:utc|gmt)(?<sign>[+-])(?<hours>\d{1,2})(?::?(?<minutes>\d\d))?/i.exec(name)?.groups;
  if (groups === undefined) return undefined;
  return `${groups['sign']}${(groups['hours'] ?? '').padStart(2, '0')}:${groups['minutes'] ?? '00'}`;
}
