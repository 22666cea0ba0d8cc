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
  'made-as': {
    lp: 'LP',
    album: 'LP',
    '12"': 'LP',
    ep: 'EP',
    '7"': 'single',
    '45': 'single',
    mc: 'cassette',
    'compact cassette': 'cassette',
  },
  state: {
    works: 'working',
    ok: 'working',
    good: 'working',
    broken: 'needs work',
    faulty: 'needs work',
    'to repair': 'needs work',
    untested: 'not tried',
    untried: 'not tried',
  },
  base: { pet: 'polyester', 'cellulose acetate': 'acetate', triacetate: 'acetate', pvc: 'PVC' },
  binder: { pu: 'polyurethane', urethane: 'polyurethane', 'polyester urethane': 'polyurethane' },
  'back-coated': { y: 'yes', x: 'yes', n: 'no' },
  'known-to-shed': { y: 'yes', x: 'yes', n: 'no' },
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

/** Facts that are dates. */
export const DATES: readonly string[] = ['recorded.on', 'lent.until', 'left.on', 'issued', 'made', 'active'];
/** Facts that have a unit, which a sheet may leave to its heading. */
export const MEASURES: readonly string[] = [
  'format.speed',
  'format.width',
  'format.level',
  'pack.reel-size',
  'pack.outside-diameter',
  'pack.hub-diameter',
  'largest-reel',
  'thickness',
  'speeds',
  'width',
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
  if (key === 'speed') return [text, text.replace(/^(\d+) 1\/3/u, '$1⅓')];
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
  if (/^none$/iu.test(text) && key !== 'condition') return ['none'];
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
  if (key === 'speeds' || key === 'width') return severalMeasures(key, text, sense.unit);
  if (key === 'equalisations') return [pieces(text).map((curve) => ({ curve }))];
  if (key === 'climate') return [pieces(text).map((file) => ({ file }))];
  const words = WORDS[SINGLE[key] ?? ''];
  if (words !== undefined) return [wordsOf(text), wordsOf(text).map((word) => words[word.toLowerCase()] ?? word)];
  if (key === 'initials' || key === 'did') return [wordsOf(text)];
  return [pieces(text)];
}

/** Lists whose words are those of another kind's fact. */
const SINGLE: Readonly<Record<string, string>> = { tracks: 'format.tracks', takes: 'pack.wound-on' };

const wordsOf = (text: string) => text.split(/ *[;,&\r\n]+ */u).filter((word) => word !== '');

/** What a unit begins with. */
const LETTER = /[\p{L}"″]/u;

/** `7.5/15 in/s`: a unit behind the last is that of all. */
function severalMeasures(key: string, text: string, unit: string | undefined): readonly Loose[] {
  const parts = text.split(key === 'width' ? /[;&\r\n]+|, /u : /[;&\r\n]+|, |\/(?= *\d)/u).map((part) => part.trim());
  const end = parts.at(-1) ?? '';
  const begins = end.search(LETTER);
  const last = begins < 0 ? undefined : end.slice(begins);
  const whole = parts.map((part) => (last === undefined || LETTER.test(part) ? part : `${part} ${last}`));
  const meant = whole.map((part) => measuresMeant(part, unit));
  return Array.from({ length: 4 }, (_, at) => meant.map((forms) => forms[at] ?? forms.at(-1) ?? ''));
}

function amountsMeant(text: string, unit: string | undefined): readonly string[] {
  const figures = text
    .replace(/[^\d.,]/gu, '')
    .replace(/[.,](?=\d{3}(?:\D|$))/gu, '')
    .replace(',', '.');
  const code = /\b[A-Z]{3}\b/u.exec(text)?.[0] ?? (/€/u.test(text) ? 'EUR' : unit);
  return code === undefined ? [text] : [text, `${figures} ${code}`];
}
