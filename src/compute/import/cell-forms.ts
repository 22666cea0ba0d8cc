import type { Loose } from '#model/entry.ts';
import { datesMeant } from './dates.ts';

/** How a column's cells are to be understood, where they alone don't say. */
export interface ColumnSense {
  /** The order of figures in its dates; undefined while nobody can tell. */
  readonly dates?: 'day-month' | 'month-day' | undefined;
  /** The unit of bare numbers. */
  readonly unit?: string | undefined;
  /** A spreadsheet took minutes and seconds for hours and minutes: `18:52:00`. */
  readonly minutesAsHours?: boolean | undefined;
  /** In times, a point stands for a colon. */
  readonly pointIsColon?: boolean | undefined;
}

const WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  status: {
    yes: 'held',
    y: 'held',
    have: 'held',
    here: 'held',
    owned: 'held',
    sold: 'gone',
    lost: 'missing',
    'on loan': 'lent',
  },
  kind: {
    copy: 'copy master',
    master: '',
    safety: 'safety copy',
    production: 'production master',
    running: 'running master',
    session: 'session tape',
    'cutting copy': 'cutting master',
    'eq master': 'cutting master',
    'prod. master': 'production master',
  },
  'pack.wind': {
    tail: 'tail out',
    tails: 'tail out',
    'tails out': 'tail out',
    'tail-out': 'tail out',
    head: 'head out',
    heads: 'head out',
    'heads out': 'head out',
    'head-out': 'head out',
  },
  'pack.wound-on': { hub: 'bare hub', pancake: 'bare hub', spool: 'reel', flanges: 'reel' },
  'format.tracks': {
    'full track': 'full-track mono',
    'full-track': 'full-track mono',
    'half track mono': 'half-track mono',
    'two track': 'two-track stereo',
    'two-track': 'two-track stereo',
    '2 track': 'two-track stereo',
    '2-track': 'two-track stereo',
    'quarter track': 'quarter-track stereo',
    '1/4 track': 'quarter-track stereo',
  },
};

const DATES = ['recorded.on', 'lent.until', 'left.on'];
const MEASURES = [
  'format.speed',
  'format.width',
  'format.level',
  'pack.reel-size',
  'pack.outside-diameter',
  'pack.hub-diameter',
];

/** Texts that a cell may mean, in the form that an entry has it, the likeliest first. The cell's own text comes first, so
 * that what is right as it stands stays.
 *
 * @param key  the dotted key of a fact that is one text. */
export function textsMeant(key: string, cell: string, sense: ColumnSense): readonly string[] {
  const text = cell
    .replace(/[\u00a0\u2009\u202f]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
  if (DATES.includes(key)) return datesMeant(text, sense.dates);
  if (key === 'length' || key === 'gaps') return timesMeant(text, sense);
  if (MEASURES.includes(key)) return measuresMeant(text, sense.unit);
  const word = WORDS[key]?.[text.toLowerCase()];
  return word === undefined || word === '' ? [text] : [text, word];
}

function timesMeant(text: string, sense: ColumnSense): readonly string[] {
  const hours = /^(\d{1,3}):(\d{2}):00(?:\.0+)?$/u.exec(text);
  if (sense.minutesAsHours === true && hours !== null) return [`${Number(hours[1])}:${hours[2]}`];
  const marked = /^(\d{1,3}) ?(?:['′’]|m|mins?) ?(\d{1,2}) ?(?:["″”]|''|s|secs?)?$/iu.exec(text);
  if (marked !== null) return [`${Number(marked[1])}:${(marked[2] ?? '').padStart(2, '0')}`];
  const point = /^(\d{1,3})[.,](\d{2})$/u.exec(text);
  if (point !== null && sense.pointIsColon === true) return [`${point[1]}:${point[2]}`];
  const bare = /^\d{1,4}(?:[.,]\d{1,3})?$/u.test(text);
  if (bare && (sense.unit === 'min' || sense.unit === 's')) return [`${text.replace(',', '.')} ${sense.unit}`];
  const plain = text.replace(/ ?(?:minutes?|mins)$/iu, ' min').replace(/ ?(?:seconds?|secs?)$/iu, ' s');
  return [text, plain, plain.replace(',', '.'), text.replace(/^(\d{1,3}):(\d{2}):(\d{2})\.0+$/u, '$1:$2:$3')];
}

function measuresMeant(text: string, unit: string | undefined): readonly string[] {
  const point = text.replace(/(\d),(\d{1,2})(?!\d)/gu, '$1.$2');
  const spelled = point
    .replace(/ ?(?:i\.?p\.?s\.?|in\/sec\.?|inches per second)$/iu, ' in/s')
    .replace(/ ?(?:cm ?\/ ?sec\.?|cms)$/iu, ' cm/s')
    .replace(/ ?(?:inch(?:es)?|"|″|”|'')$/iu, ' in');
  const bare = /^[\d.½¼¾⅓ /]+$/u.test(spelled);
  return [text, point, spelled, ...(bare && unit !== undefined ? [`${spelled} ${unit}`] : [])];
}

const pieces = (cell: string) =>
  cell
    .split(/[;\r\n]+/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** For a fact that is a list or lines of facts: the values that a cell may mean. */
export function listsMeant(key: string, cell: string, sense: ColumnSense): readonly Loose[] {
  const text = cell.trim();
  if (key === 'photos')
    return [
      text
        .split(/[;,\r\n]+/u)
        .map((name) => ({ file: name.trim() }))
        .filter(({ file }) => file !== ''),
    ];
  if (key === 'custody') return [[{ holder: text }]];
  if (key === 'condition')
    return [
      [
        {
          found: text
            .toLowerCase()
            .split(/ *[;,/&\r\n]+ */u)
            .filter((sign) => sign !== ''),
        },
      ],
    ];
  if (key === 'valuations') return amountsMeant(text, sense.unit).map((amount) => [{ amount }]);
  if (key === 'side') return [pieces(text.replace(/^(?:side|s\.?) ?(?=\w{1,2}$)/iu, ''))];
  return [pieces(text)];
}

function amountsMeant(text: string, unit: string | undefined): readonly string[] {
  const figures = text
    .replace(/[^\d.,]/gu, '')
    .replace(/[.,](?=\d{3}(?:\D|$))/gu, '')
    .replace(',', '.');
  const code = /\b[A-Z]{3}\b/u.exec(text)?.[0] ?? (/€/u.test(text) ? 'EUR' : unit);
  return code === undefined ? [text] : [text, `${figures} ${code}`];
}
