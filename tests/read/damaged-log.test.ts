import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Diagnostic } from '#model/diagnostic.ts';
import { readPlaceLogs } from '../../src/commands/place-logs.ts';
import { catalogueOf } from '../given/small-collection.ts';

/** A row as its logger means it. */
type Cells = readonly [time: string, temperature: string, humidity: string];

/** How a logger writes its rows and its bytes. */
interface Form {
  readonly name: string;
  readonly header: string;
  readonly row: (cells: Cells) => string;
  readonly lineEnd: string;
  readonly bytes: (text: string) => Uint8Array;
  readonly day: (isoDay: string) => string;
}

const HOURS = 170;
const START = Date.UTC(2024, 0, 13);
const iso = (hour: number) => new Date(START + hour * 3_600_000).toISOString();
const swapped = (bytes: Buffer) => bytes.swap16();

const PLAIN: Form = {
  name: 'plain',
  header: 'time,temperature_C,humidity_percent',
  row: (cells) => cells.join(','),
  lineEnd: '\n',
  bytes: (text) => Buffer.from(text),
  day: (day) => day,
};
const FORMS: readonly Form[] = [
  PLAIN,
  {
    ...PLAIN,
    name: 'semicolons and decimal commas',
    header: 'Date/Time;Temp (°C);RH (%)',
    row: ([time, ...air]) => [time, ...air.map((one) => one.replace('.', ','))].join(';'),
    lineEnd: '\r\n',
  },
  { ...PLAIN, name: 'tabs', header: 'time\ttemperature_C\thumidity_percent', row: (cells) => cells.join('\t') },
  {
    ...PLAIN,
    name: 'quoted',
    header: '"time","temperature_C","humidity_percent"',
    row: (cells) => cells.map((cell) => `"${cell}"`).join(','),
  },
  { ...PLAIN, name: 'carriage returns', lineEnd: '\r' },
  { ...PLAIN, name: 'a mark', bytes: (text) => Buffer.from(`\ufeff${text}`) },
  { ...PLAIN, name: 'UTF-16', bytes: (text) => Buffer.from(`\ufeff${text}`, 'utf16le') },
  { ...PLAIN, name: 'UTF-16, the other way', bytes: (text) => swapped(Buffer.from(`\ufeff${text}`, 'utf16le')) },
  {
    ...PLAIN,
    name: 'Latin-1',
    header: 'time,Temp (°C),RH (%)',
    bytes: (text) => Buffer.from(text, 'latin1'),
  },
  { ...PLAIN, name: 'days first', day: (day) => day.split('-').reverse().join('/') },
];

/** What befalls a log at a row, and what must be said of it: a code and a line, or nothing at all. */
interface Damage {
  readonly name: string;
  readonly rows: (sound: readonly Cells[], at: number, form: Form) => readonly (Cells | string)[];
  readonly code?: string;
  /** Lines below the damaged row's own. */
  readonly below?: number;
  readonly andMore?: boolean;
}

const unread = (name: string, change: (cells: Cells, form: Form) => Cells | string): Damage => ({
  name,
  rows: (sound, at, form) => sound.map((cells, row) => (row === at ? change(cells, form) : cells)),
  code: 'climate/row-unread',
});
const impossible = (name: string, change: (cells: Cells) => Cells): Damage => ({
  ...unread(name, change),
  code: 'climate/impossible',
});
const clockOf = ([time]: Cells) => time.slice(-8);

const DAMAGES: readonly Damage[] = [
  unread('no temperature', ([time, , humidity]) => [time, '', humidity]),
  unread('no humidity', ([time, temperature]) => [time, temperature, '']),
  unread('not available', ([time]) => [time, 'NA', 'NA']),
  unread('a minute past 59', ([time, ...air]) => [`${time.slice(0, -5)}61:00`, ...air]),
  unread('the hour 24', (cells) => [`${cells[0].slice(0, -8)}24:30:00`, cells[1], cells[2]]),
  unread('a day that no month has', (cells, { day }) => [`${day('2024-02-30')} ${clockOf(cells)}`, cells[1], cells[2]]),
  unread('a unit in the cell', ([time, temperature, humidity]) => [time, `${temperature} C`, humidity]),
  unread('a zero byte', ([time, , humidity]) => [time, '20\0.5', humidity]),
  unread('a row cut short', ([time]) => time),
  unread('an exponent', ([time, , humidity]) => [time, '2e1', humidity]),
  unread('infinity', ([time, , humidity]) => [time, 'Infinity', humidity]),
  unread('two points', ([time, , humidity]) => [time, '20.5.1', humidity]),
  unread('a word of the logger’s', () => 'END OF DATA'),
  unread('the header again', (_, { header }) => header),
  unread('a cell too many', (cells, { row, name }) =>
    name === 'quoted' ? `${row(cells)},"9"` : `${row(cells)}${/[\t;,]/.exec(row(cells))?.[0] ?? ','}9`,
  ),
  // It takes the rows that follow into itself, so a gap may be told too.
  { ...unread('an open quote', (cells) => `"${cells.join(' ')}`), andMore: true },
  impossible('a broken sensor’s 999', ([time, , humidity]) => [time, '999.9', humidity]),
  impossible('a broken sensor’s -99', ([time, , humidity]) => [time, '-99.9', humidity]),
  impossible('more than all the water', ([time, temperature]) => [time, temperature, '120.0']),
  impossible('less than none', ([time, temperature]) => [time, temperature, '-5.0']),
  {
    name: 'a row twice',
    rows: (sound, at) => [...sound.slice(0, at + 1), ...sound.slice(at)],
    code: 'climate/time-repeated',
    below: 1,
  },
  {
    name: 'the end of summer time',
    rows: (sound, at) => [...sound.slice(0, at + 1), ...sound.slice(at - 1)],
    code: 'climate/time-backwards',
    below: 1,
  },
  {
    name: 'a clock that was set back for good',
    rows: (sound, at, { day }) =>
      sound.map(([, ...air], row): Cells => {
        const [isoDay = '', clock = ''] = iso(row >= at ? row - 24 * 3650 : row).split('T');
        return [`${day(isoDay)} ${clock.slice(0, 8)}`, ...air];
      }),
    code: 'climate/time-backwards',
  },
  {
    name: 'a zone from here on',
    rows: (sound, at) =>
      sound.map(([time, ...air], row): Cells => (row >= at ? [`${time}+02:00`, ...air] : [time, ...air])),
    code: 'climate/time-backwards',
  },
  { name: 'a flat battery', rows: (sound, at) => sound.toSpliced(at, 5), code: 'climate/gap' },
  {
    name: 'a stuck thermometer',
    rows: (sound, at) =>
      sound.map(([time, temperature, humidity], row): Cells => {
        return row >= at && row < at + 50 ? [time, '31.31', humidity] : [time, temperature, humidity];
      }),
    code: 'climate/stuck',
  },
  // Of these nothing is to be said.
  { name: 'the start of summer time', rows: (sound, at) => sound.toSpliced(at, 1) },
  { name: 'empty lines', rows: (sound, at) => [...sound.slice(0, at), '', '', '', ...sound.slice(at)] },
  {
    name: 'spaces',
    rows: (sound) => sound.map(([time, ...air]): Cells => [time, ` ${air[0]}`, `${air[1]} `]),
  },
];

const PLACES = [3, 27, 61, 88, 115];

const HEADERS: readonly ((header: string) => string)[] = [
  () => '2024-01-12 22:00:00,20,40',
  (header) => header.slice(0, -9),
  (header) => header.replace(/C\b/, ''),
  (header) => header.replace(/time/i, 'mark'),
  (header) => header.replace(/%|percent/, 'g'),
  (header) => header.replaceAll(/[,;\t]/g, '|'),
  () => 'x'.repeat(5000),
];

interface Case {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** `code line`, or nothing. */
  readonly told: readonly string[];
  readonly andMore?: boolean;
}

function casesOf(form: Form): readonly Case[] {
  const sound = Array.from({ length: HOURS }, (_, hour): Cells => {
    const [day = '', clock = ''] = iso(hour).split('T');
    return [`${form.day(day)} ${clock.slice(0, 8)}`, `${18 + (hour % 7)}.5`, `${40 + (hour % 5)}.5`];
  });
  const text = (header: string, rows: readonly (Cells | string)[]) =>
    [header, ...rows.map((row) => (typeof row === 'string' ? row : form.row(row)))].join(form.lineEnd);
  const damaged = DAMAGES.flatMap((damage) =>
    PLACES.map((at) => ({
      name: `${form.name}, ${damage.name}, ${at}`,
      bytes: form.bytes(text(form.header, damage.rows(sound, at, form))),
      // The header is line 1, and the first row of readings line 2.
      told: damage.code === undefined ? [] : [`${damage.code} ${at + 2 + (damage.below ?? 0)}`],
      andMore: damage.andMore === true,
    })),
  );
  const headers = HEADERS.map((change, at) => ({
    name: `${form.name}, header ${at}`,
    bytes: form.bytes(text(change(form.header), sound)),
    told: ['climate/columns 1'],
  }));
  const cut = PLACES.map((at) => ({
    name: `${form.name}, cut off in row ${at}`,
    bytes: form.bytes(`${text(form.header, sound.slice(0, at))}${form.lineEnd}${sound[at]?.[0] ?? ''}`),
    told: [`climate/row-unread ${at + 2}`],
  }));
  const none = { name: `${form.name}, no rows`, bytes: form.bytes(form.header), told: ['climate/empty 1'] };
  return [...damaged, ...headers, ...cut, none];
}

const CASES = FORMS.flatMap(casesOf);

test('more than a thousand kinds of damage are each told once, with their line, and stop nothing', async () => {
  expect(new Set(CASES.map(({ name }) => name)).size).toBe(CASES.length);
  expect(CASES.length).toBeGreaterThan(1000);
  const folder = await mkdtemp(join(tmpdir(), 'logs-'));
  try {
    await mkdir(join(folder, 'places', 'room'), { recursive: true });
    const files = CASES.map((_, index) => `log-${index}.csv`);
    await Promise.all(
      CASES.map(({ bytes }, index) => writeFile(join(folder, 'places', 'room', files[index] ?? ''), bytes)),
    );
    const { entries } = await catalogueOf({
      'places/room/index': `climate: [${files.map((file) => `{ file: ${file} }`).join(', ')}]`,
    });
    const { climate, problems } = await readPlaceLogs(
      folder,
      entries.places,
      files.map((file) => `places/room/${file}`),
    );
    const told = Map.groupBy(problems, ({ place }) => place.file);
    const wrong = CASES.flatMap(({ name, told: expected, andMore = false }, index) => {
      const all = (told.get(`places/room/${files[index]}`) ?? []).map(({ code, place }) => `${code} ${place.line}`);
      const found = andMore ? all.slice(0, 1) : all;
      return found.join() === expected.join() ? [] : [`${name}: ${found.join(', ')}, not ${expected.join(', ')}`];
    });
    expect(wrong).toEqual([]);
    expect(problems.every(saysAll)).toBe(true);
    expect(climate.get('room')?.readings).toBeGreaterThan(10_000);
  } finally {
    await rm(folder, { recursive: true });
  }
});

const saysAll = ({ message, found, expected, action }: Diagnostic) =>
  [message, found, expected, action].every((words) => (words ?? '') !== '');
