import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLog } from '../given/log.ts';

const OURS = 'time,temperature_C,humidity_percent\n';
const ROW = '2024-01-01 10:00:00,20.5,45\n';
const READING = [2, '2024-01-01T10:00:00', 20.5, 45];
const two = (count: number) => String(count).padStart(2, '0');

describe('a log as its logger wrote it', () => {
  test.each([
    ['our own header', `${OURS}${ROW}`],
    ['units in the header', `Date/Time,Temp (°C),RH (%)\n${ROW}`],
    ['units in brackets', `timestamp,Temperature [°C],Humidity [%RH]\n${ROW}`],
    ['units after a space', `datetime,temperature °C,rel. humidity %\n${ROW}`],
    ['semicolons and decimal commas', 'time;temperature_C;humidity_percent\n2024-01-01 10:00;20,5;45,0\n'],
    ['tabs', 'time\ttemperature_C\thumidity_percent\n2024-01-01T10:00\t20.5\t45\n'],
    ['every cell quoted', '"time","temperature_C","humidity_percent"\n"2024-01-01 10:00:00","20.5","45"\n'],
    ['a comma in a name', `time,"Temp, °C","RH, %"\n${ROW}`],
    ['carriage returns', `${OURS}${ROW}`.replaceAll('\n', '\r\n')],
    ['carriage returns alone', `${OURS}${ROW}`.replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${OURS}${ROW}`],
    ['no line end at the end', `${OURS}${ROW.trim()}`],
    ['the year first and a T', `${OURS}2024/01/01T10:00,20.5,45\n`],
    ['a zone of its own', `${OURS}2024-01-01T12:00:00+02:00,20.5,45\n`],
    ['Z', `${OURS}2024-01-01T10:00:00Z,20.5,45\n`],
    ['morning and afternoon', `${OURS}2024-01-01 10:00:00 AM,20.5,45\n`],
    ['fractions of seconds', `${OURS}2024-01-01 10:00:00.000,20.5,45\n`],
    ['Fahrenheit', 'time,temperature_F,humidity_percent\n2024-01-01 10:00:00,68.9,45\n'],
    ['day and time apart', 'date,time,temperature_C,humidity_percent\n2024-01-01,10:00:00,20.5,45\n'],
    ['columns in another order', 'humidity_percent,note,temperature_C,time\n45,dull,20.5,2024-01-01 10:00\n'],
  ])('%s', async (_what, log) => {
    const { readings, faults } = await readLog(log);
    expect(readings).toEqual([READING]);
    expect(faults).toEqual([]);
  });

  test('UTF-16, as spreadsheets write it', async () => {
    const text = `\ufeff${OURS}${ROW}`;
    const bytes = new Uint8Array(Uint16Array.from([...text].map((one) => one.charCodeAt(0))).buffer);
    expect((await readLog(bytes)).readings).toEqual([READING]);
  });

  test('a title and a serial number above the header', async () => {
    const { readings } = await readLog(`Plot: spare room\nSerial,4471\n\n${OURS}${ROW}`);
    expect(readings).toEqual([[5, ...READING.slice(1)]]);
  });

  test('the zone of its clock', async () => {
    expect((await readLog(`${OURS}${ROW}`, { zone: '+02:00' })).readings[0]?.[1]).toBe('2024-01-01T08:00:00');
  });

  test('days before months, once one of them shows it', async () => {
    const { readings } = await readLog(`${OURS}12/01/2024 10:00,20,45\n13/01/2024 10:00,20,45\n`);
    expect(readings.map((reading) => reading[1])).toEqual(['2024-01-12T10:00:00', '2024-01-13T10:00:00']);
  });

  test('months before days, once one of them shows it', async () => {
    const { readings } = await readLog(`${OURS}01/12/24 10:00 PM,20,45\n01/13/24 12:00 AM,20,45\n`);
    expect(readings.map((reading) => reading[1])).toEqual(['2024-01-12T22:00:00', '2024-01-13T00:00:00']);
  });

  test('a log that never shows which is the day isn’t guessed at', async () => {
    const { readings, faults } = await readLog(`${OURS}04/05/2024 10:00,20,45\n05/05/2024 10:00,20,45\n`);
    expect(readings).toEqual([]);
    expect(faults).toMatchObject([
      { code: 'climate/row-unread', line: 2, count: 2, action: expect.stringContaining('year first') },
    ]);
  });

  test('however the bytes come, it is the same log', async () => {
    const rows = Array.from({ length: 20 }, (_, hour) => `2024-01-01 ${two(hour)}:00,2${hour % 10}.5,4${hour % 10}`);
    const log = `time,Temp (°C),RH (%)\n${rows.join('\n')}`;
    const whole = await readLog(log, {}, 1 << 20);
    expect(whole.readings).toHaveLength(20);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 50 }), async (size) => {
        expect(await readLog(log, {}, size)).toEqual(whole);
      }),
      { numRuns: 20 },
    );
  });
});

describe('a header that isn’t clear', () => {
  const LOGGER = 't_UTC+2,T,RH\n2020-12-18 15:15:00,17.43,36.87\n';

  test('is asked about, with the answer ready to paste', async () => {
    const { readings, faults } = await readLog(LOGGER);
    expect(readings).toEqual([]);
    const paste = 'columns: { time: t_UTC+2, temperature_C: T, humidity_percent: RH }, zone: +02:00';
    expect(faults).toMatchObject([
      { code: 'climate/columns', line: 1, found: 't_UTC+2,T,RH', action: expect.stringContaining(paste) },
    ]);
  });

  test('is read once the columns are said', async () => {
    const columns = new Map([
      ['time', 't_UTC+2'],
      ['temperature_C', 'T'],
      ['humidity_percent', 'RH'],
    ]);
    const { readings } = await readLog(LOGGER, { columns, zone: '+02:00' });
    expect(readings).toEqual([[2, '2020-12-18T13:15:00', 17.43, 36.87]]);
  });

  test.each([
    'time,temperature,humidity_percent',
    'time,T,H',
    'time,temperature_C,humidity',
    'a line of nothing',
    'time,Temp 1 (°C),Temp 2 (°C),RH (%)',
  ])('%s', async (header) => {
    expect((await readLog(`${header}\n${ROW}`)).faults.map((fault) => fault.code)).toEqual(['climate/columns']);
  });

  test('a column that isn’t there is named', async () => {
    const columns = new Map([
      ['time', 'When'],
      ['temperature_C', 'T'],
      ['humidity_percent', 'RH'],
    ]);
    const { faults } = await readLog(`Time,T,RH\n${ROW}`, { columns });
    expect(faults[0]?.message).toContain('no column "When"');
  });

  test.each([
    ['an empty file', '', 1],
    ['nothing but line ends', '\r\n\r\n', 1],
    ['a byte order mark alone', '\ufeff', 1],
    ['a header and no row', OURS, 1],
    ['a title, a header and empty lines', `Plot: spare room\n\n${OURS}\n\n`, 3],
  ])('%s holds no reading, and it is said what to do', async (_, log, line) => {
    const { readings, faults } = await readLog(log);
    expect(readings).toEqual([]);
    expect(faults).toMatchObject([{ code: 'climate/empty', line, action: expect.stringContaining('Export the log') }]);
  });

  test('a log in UTF-16 without its mark isn’t asked for its columns', async () => {
    const { faults } = await readLog(new Uint8Array(Buffer.from(`${OURS}${ROW}`, 'utf16le')));
    expect(faults).toMatchObject([{ code: 'climate/columns', action: expect.stringContaining('UTF-8') }]);
  });
});

describe('rows that can’t be read', () => {
  test.each([
    '2024-01-01 10:30:00,,45',
    '2024-01-01 10:30:00,NA,NA',
    '2024-01-01 10:30:00,20.5 C,45',
    '2024-01-01 10:30:00,0x10,45',
    '2024-01-01 10:30:00,1e3,45',
    '2024-01-01 10:30:00',
    '2024-01-01 24:30:00,20,45',
    '2024-01-01 10:75:00,20,45',
    '2024-02-30 10:30:00,20,45',
    'END OF DATA',
    '"2024-01-01 10:30:00,20,45',
  ])('%j is counted, and what follows is read', async (row) => {
    const { readings, faults } = await readLog(`${OURS}${ROW}${row}\n2024-01-01 11:00:00,21,45\n`);
    expect(faults.map((fault) => [fault.code, fault.line, fault.count])).toEqual([['climate/row-unread', 3, 1]]);
    // An open quote takes what follows into itself, as in any CSV.
    expect(readings.length).toBe(row.startsWith('"') ? 1 : 2);
  });

  test('many of a kind are one fault, with the first line and a count', async () => {
    const time = (index: number) => `2024-01-${two(1 + Math.floor(index / 24))} ${two(index % 24)}:00`;
    const rows = Array.from({ length: 500 }, (_, index) =>
      index % 5 === 0 ? 'rubbish' : `${time(index)},2${index % 7}.1,4${index % 9}.5`,
    );
    const { faults } = await readLog(`${OURS}${rows.join('\n')}\n`);
    expect(faults).toMatchObject([
      { code: 'climate/row-unread', line: 2, count: 100, message: '100 rows of the log can’t be read.' },
    ]);
  });

  test('a line without an end is told once', async () => {
    const { readings, faults } = await readLog(`${OURS}${ROW}${'x'.repeat(1 << 18)}\n${ROW}`, {}, 1 << 12);
    expect(faults).toMatchObject([
      { code: 'climate/row-unread', line: 3, count: 1 },
      { code: 'climate/time-repeated', line: 4, count: 1 },
    ]);
    expect(readings).toHaveLength(2);
  });

  test('no damage stops the reading: random text never throws', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.string(), { maxLength: 30 }), fc.boolean(), async (lines, headed) => {
        const { faults } = await readLog(`${headed ? OURS : ''}${lines.join('\n')}`);
        expect(new Set(faults.map((fault) => fault.code)).size).toBe(faults.length);
      }),
      { numRuns: 300 },
    );
  });

  test('changed bytes of a sound log never throw, and each fault names a line', async () => {
    const rows = Array.from({ length: 24 }, (_, hour) => `2024-01-01 ${two(hour)}:00:00,20.${hour % 10},45`);
    const sound = new TextEncoder().encode(`${OURS}${rows.join('\n')}`);
    const change = fc.tuple(fc.nat(sound.length - 1), fc.integer({ min: 0, max: 255 }));
    await fc.assert(
      fc.asyncProperty(fc.array(change, { maxLength: 20 }), async (changes) => {
        const bytes = Uint8Array.from(sound);
        for (const [at, byte] of changes) bytes[at] = byte;
        const { faults } = await readLog(bytes);
        for (const fault of faults) expect(fault.line).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
