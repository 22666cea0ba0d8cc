const MONTHS: readonly (readonly string[])[] = [
  ['jan', 'gen'],
  ['feb', 'fev'],
  ['mar', 'mär', 'maerz'],
  ['apr', 'abr', 'avr'],
  ['may', 'mai', 'mag'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'ago', 'aou', 'aoû'],
  ['sep', 'set'],
  ['oct', 'okt', 'out', 'ott'],
  ['nov'],
  ['dec', 'dez', 'dic', 'déc'],
];

/** Of two figures for a year, those from here on are taken as 19–; below it nobody can tell, and nothing is read. */
const SURELY_NINETEEN = 30;

const two = (figures: string | number) => String(figures).padStart(2, '0');

/** ISO 8601-2 spellings of a date as a sheet writes it.
 * @param order  of day and month where both are figures; undefined while nobody knows. */
export function datesMeant(text: string, order: 'day-month' | 'month-day' | undefined): readonly string[] {
  const circa = /^(?:circa|ca\.?|c\.?|about|approx\.?|around) ?(.+)$/iu.exec(text);
  const doubt = /^(.+?) ?(?:\(\?\)|\?)$/u.exec(text);
  if (circa !== null) return datesMeant(circa[1] ?? '', order).map((date) => `${date}~`);
  if (doubt !== null && !/^\d{4}\?$/u.test(text))
    return [text, ...datesMeant(doubt[1] ?? '', order).map((date) => `${date}?`)];
  const figured = /^(\d{1,2})[./ -](\d{1,2})[./ -](\d{4}|'?\d{2})$/u.exec(text);
  if (figured !== null) return fromFigures(figured, order);
  const withTime = /^(\d{4}-\d{2}-\d{2})[T ]00:00(?::00)?/u.exec(text);
  if (withTime !== null) return [withTime[1] ?? ''];
  const yearFirst = /^(\d{4})[./](\d{1,2})(?:[./](\d{1,2}))?$/u.exec(text);
  if (yearFirst !== null)
    return [
      [yearFirst[1], two(yearFirst[2] ?? ''), ...(yearFirst[3] === undefined ? [] : [two(yearFirst[3])])].join('-'),
    ];
  const monthYear = /^(\d{1,2})[./-](\d{4})$/u.exec(text);
  if (monthYear !== null) return [`${monthYear[2]}-${two(monthYear[1] ?? '')}`];
  const decade = /^(\d{3})0'?s$/u.exec(text);
  if (decade !== null) return [`${decade[1]}X`];
  const range = /^(\d{4}) ?[-–] ?(\d{4})$/u.exec(text);
  if (range !== null) return [`${range[1]}/${range[2]}`];
  return [text, ...inWords(text)];
}

function fromFigures(figured: RegExpExecArray, order: 'day-month' | 'month-day' | undefined): readonly string[] {
  const [, first = '', second = '', written = ''] = figured;
  const year = yearMeant(written);
  if (year === undefined) return [];
  const surely =
    Number(first) > 12 ? 'day-month' : Number(second) > 12 ? 'month-day' : first === second ? 'day-month' : order;
  if (surely === undefined) return [];
  const [day, month] = surely === 'day-month' ? [first, second] : [second, first];
  return [`${year}-${two(month)}-${two(day)}`];
}

function yearMeant(written: string): string | undefined {
  if (written.length === 4) return written;
  const figures = Number(written.replace("'", ''));
  return figures >= SURELY_NINETEEN ? `19${two(figures)}` : undefined;
}

/** `12 April 1974`, `April 12, 1974`, `Apr 74`. */
function inWords(text: string): readonly string[] {
  const parts = text
    .slice(0, 60)
    .toLowerCase()
    .split(/[\s,.-]+|(?<=\d)(?:st|nd|rd|th)\b/u)
    .filter((part) => part !== '' && part !== 'of');
  const month = parts.findIndex((part) => monthNamed(part) > 0);
  const figures = parts.filter((part) => /^'?\d{1,4}$/u.test(part));
  if (month < 0 || parts.length !== figures.length + 1) return [];
  const year = yearMeant(figures.at(-1) ?? '');
  const number = two(monthNamed(parts[month] ?? ''));
  if (year === undefined) return [];
  if (figures.length === 1) return [`${year}-${number}`];
  return figures.length === 2 && Number(figures[0]) <= 31 ? [`${year}-${number}-${two(Number(figures[0]))}`] : [];
}

const monthNamed = (part: string) =>
  /^\d/u.test(part) ? 0 : MONTHS.findIndex((starts) => starts.some((start) => part.startsWith(start))) + 1;

/** The order of day and month that a column's dates show, where one of them has a figure over 12. Undefined where none
 * shows it, or they disagree. */
export function orderShown(cells: readonly string[]): 'day-month' | 'month-day' | undefined {
  let [dayFirst, monthFirst] = [false, false];
  for (const cell of cells) {
    const figured = /^\s*(\d{1,2})[./ -](\d{1,2})[./ -]'?\d{2,4}\s*$/u.exec(cell);
    if (figured === null) continue;
    if (Number(figured[1]) > 12) dayFirst = true;
    if (Number(figured[2]) > 12) monthFirst = true;
  }
  return dayFirst === monthFirst ? undefined : dayFirst ? 'day-month' : 'month-day';
}
