import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { CALCULATIONS } from '../../src/commands/reckon/calculations.ts';
import { reckon } from '../../src/commands/reckon.ts';
import { reckoned } from '../given/reckoned.ts';

const FOLDER = mkdtempSync(join(tmpdir(), 'reckon-'));
afterAll(() => rmSync(FOLDER, { recursive: true }));

async function spoken(args: readonly string[], terminal: boolean, piped = false) {
  const said = { out: '', err: '' };
  const io = {
    out: (text: string) => {
      said.out += text;
    },
    err: (text: string) => {
      said.err += text;
    },
    cwd: FOLDER,
    now: new Date(2026, 2, 12, 6, 30),
    env: {},
    terminal,
    piped,
  };
  return { exit: await reckon(args, io), ...said };
}

describe('an answer', () => {
  test('has value, unit, band, inputs, formula and source', async () => {
    const { exit, json } = await reckoned('tape-length', [
      ...['--outside-diameter', '260 mm ± 2 mm', '--hub-diameter', '100 mm', '--thickness', '52 µm'],
    ]);
    expect(exit).toBe(0);
    const said = { name: 'tape-length', unit: 'm', formula: expect.any(String), source: expect.any(String) };
    expect(json).toMatchObject(said);
    expect(json['value']).toBeCloseTo(869.98, 1);
    expect(json['low']).toBeLessThan(Number(json['value']));
    expect(json['high']).toBeGreaterThan(Number(json['value']));
    expect(json['inputs']).toContainEqual({ name: 'outside-diameter', written: '260 mm ± 2 mm', basis: 'stated' });
    expect(json['inputs']).toContainEqual({ name: 'error of hub-diameter', written: '± 1 mm', basis: 'assumed' });
    expect(json).not.toHaveProperty('rows');
  });

  test('an exact input leaves no band', async () => {
    const { json } = await reckoned('playing-time', ['--length', '2500ft', '--speed', '15in/s']);
    expect(json).not.toHaveProperty('low');
  });

  test('an error of nothing is an error that was written', async () => {
    const { json } = await reckoned('tape-length', [
      ...['--outside-diameter', '252 mm ± 1 mm', '--hub-diameter', '100 mm ± 0 mm', '--thickness', '52 µm ± 0 µm'],
    ]);
    expect(Number(json['high']) - Number(json['value'])).toBeCloseTo(7.63, 1);
  });

  test('a stated duration is good to half a second', async () => {
    const { json } = await reckoned('tape-length', ['--duration', '18:52', '--speed', '30 in/s']);
    expect(Number(json['high']) - Number(json['low'])).toBeCloseTo(0.762, 6);
  });

  test('a key given several times gives a row each, the first one being the answer', async () => {
    const { json } = await reckoned('replay-difference', [
      ...['--recorded', '15 in/s NAB', '--replayed', '15 in/s IEC'],
      ...['--frequency', '63', '--frequency', '1 kHz', '--frequency', '16000'],
    ]);
    const rows = json['rows'] as { input: string; value: number }[];
    expect(rows.map((row) => row.input)).toEqual(['63', '1 kHz', '16000']);
    expect(rows.map((row) => Number(row.value.toFixed(2)))).toEqual([2.32, 0, -2.74]);
    expect(json['value']).toBe(rows[0]?.value);
  });

  test('two keys given several times go together in their order', async () => {
    const { json } = await reckoned('dew-point', [
      ...['--temperature', '20 °C', '--humidity', '50 %'],
      ...['--temperature', '25 °C', '--humidity', '60 %'],
    ]);
    const rows = json['rows'] as { input: unknown }[];
    expect(rows.map((row) => row.input)).toEqual([
      { temperature: '20 °C', humidity: '50 %' },
      { temperature: '25 °C', humidity: '60 %' },
    ]);
  });

  test.each([
    ['duration-sum', '--duration', '4:10'],
    ['noise-after-copies', '--signal-to-noise', '65'],
  ])('several of one kind are one question to %s, not rows', async (name, key, value) => {
    expect((await reckoned(name, [key, value, key, value])).json).not.toHaveProperty('rows');
  });

  test('titles have one gap fewer than there are titles', async () => {
    const three = ['--duration', '1:00', '--duration', '1:00', '--duration', '1:00'];
    expect((await reckoned('duration-sum', [...three, '--gap', '3 s'])).json['value']).toBe(186);
    expect((await reckoned('duration-sum', ['--duration', '1:00', '--gap', '3 s'])).json['value']).toBe(60);
  });

  test('a temperature below freezing is a value, not a key', async () => {
    expect((await reckoned('dew-point', ['--temperature', '-5 °C', '--humidity', '80 %'])).exit).toBe(0);
  });

  test('--key=value is read too', async () => {
    expect((await reckoned('playing-time', ['--length=2500 ft', '--speed=15 in/s'])).json['value']).toBe(2000);
  });

  test('a name in mil is taken as the whole tape, and what it means as a name is said', async () => {
    const args = ['--outside-diameter', '260 mm', '--hub-diameter', '100 mm', '--thickness', '1.5 mil'];
    const { exit, out, err } = await spoken(['tape-length', ...args], true);
    expect([exit, err]).toEqual([0, '']);
    expect(out).toMatch(/^tape-length: /);
    for (const part of ['1187', ' m, ', 'formula', 'source', 'assumed', '50 to 52 µm']) expect(out).toContain(part);
  });

  test('the same words give the same bytes', async () => {
    const args = ['--recorded', '15 in/s NAB', '--replayed', '7.5 in/s NAB', '--frequency', '100'];
    expect((await reckoned('replay-difference', args)).text).toBe((await reckoned('replay-difference', args)).text);
  });
});

const PACK = ['--hub-diameter', '100 mm', '--thickness', '52 µm'];
const CURVES = ['--recorded', '15 in/s NAB', '--replayed', '15 in/s IEC'];
const UNREAD: readonly (readonly [what: string, args: readonly string[], code: string, field: string])[] = [
  ['a bare speed', ['playing-time', '--length', '2500 ft', '--speed', '15'], 'entry/bad-value', 'speed'],
  ['a missing key', ['playing-time', '--length', '2500 ft'], 'entry/missing', 'speed'],
  ['another key', ['transition-frequency', '--time-constant', '35us', '--speed', '1'], 'entry/unknown-key', 'speed'],
  ['no value', ['playing-time', '--length', '--speed', '15 in/s'], 'entry/missing', 'length'],
  ['a stray word', ['transition-frequency', '--time-constant', '35', 'us'], 'entry/bad-value', ''],
  [
    'half a mil',
    ['print-through-frequency', '--thickness', '0.5 mil', '--speed', '15 in/s'],
    'entry/bad-value',
    'thickness',
  ],
  ['19.44', ['duration-sum', '--duration', '19.44'], 'entry/bad-value', 'duration'],
  ['a date two ways', ['date', '--text', '12/4/74'], 'entry/ambiguous-date', 'text'],
  [
    'a pack under its hub',
    ['tape-length', '--outside-diameter', '90 mm', ...PACK],
    'entry/bad-value',
    'outside-diameter',
  ],
  ['two questions', ['tape-length', '--outside-diameter', '90 mm', '--duration', '1:00'], 'entry/missing', 'duration'],
  ['no frequency', ['replay-difference', ...CURVES, '--frequency', '0'], 'entry/bad-value', 'frequency'],
  ['no such log', ['storage-years-over-log', '--log', 'none.csv'], 'entry/bad-value', 'log'],
  ['a folder for a log', ['storage-years-over-log', '--log', '.'], 'entry/bad-value', 'log'],
  ['no such name', ['playing-tim', '--length', '2500 ft'], 'entry/unknown-key', ''],
];

describe('what can’t be read', () => {
  test.each(UNREAD)('%s: exit 2, and the problem on stdout', async (_what, args, code, field) => {
    const { exit, out, err } = await spoken([...args, '--format', 'json'], false);
    expect([exit, err]).toEqual([2, '']);
    const [problem] = JSON.parse(out).problems;
    const place = { file: 'command line', line: 1, column: 1, field };
    expect(problem).toMatchObject({ code, severity: 'error', place, related: [] });
    for (const part of ['message', 'action', 'found', 'expected']) expect(problem[part]).not.toBe('');
  });

  test('keys that are repeated unequally often are asked about', async () => {
    const twice = ['--temperature', '20 °C', '--temperature', '21 °C'];
    const thrice = ['--humidity', '40 %', '--humidity', '41 %', '--humidity', '42 %'];
    const { exit, json } = await reckoned('dew-point', [...twice, ...thrice]);
    expect(exit).toBe(2);
    expect(json.problems).toMatchObject([{ code: 'entry/bad-value', place: { field: 'temperature' } }]);
  });

  test('a program that reads the answer gets JSON without asking, and words when it asks for text', async () => {
    const args = ['playing-time', '--length', '2500 ft', '--speed', '15 in/s'];
    expect(JSON.parse((await spoken(args, false, true)).out)).toMatchObject({ name: 'playing-time', value: 2000 });
    expect((await spoken([...args, '--format', 'text'], false, true)).out).toContain('33:20');
    expect((await spoken(args, true)).out).toContain('33:20');
  });

  test('another format is refused', async () => {
    expect((await spoken(['date', '--text', '1974', '--format', 'xml'], false)).exit).toBe(2);
  });

  test('every key that can’t be read is told, not the first alone', async () => {
    const { json } = await reckoned('playing-time', ['--length', 'long', '--speed', 'fast']);
    expect(json.problems?.map((problem) => problem.place.field)).toEqual(['length', 'speed']);
  });

  test('at a terminal it is told in words, once', async () => {
    const { exit, out, err } = await spoken(['playing-time', '--length', '2500 ft', '--speed', '15'], true);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toContain('which unit is it?');
  });

  test('no name at all lists the calculations', async () => {
    const { exit, err } = await spoken([], true);
    expect(exit).toBe(2);
    for (const name of CALCULATIONS.keys()) expect(err).toContain(name);
  });
});

describe('a log', () => {
  const over = (file: string, ...more: readonly string[]) =>
    spoken(['storage-years-over-log', '--log', file, '--format', 'json', ...more], false);

  test('with some damage answers, and tells the damage beside the answer', async () => {
    const rows = Array.from(
      { length: 24 },
      (_, hour) => `2024-01-01 ${String(hour).padStart(2, '0')}:00,20.${hour % 10},45`,
    );
    rows[10] = 'rubbish';
    writeFileSync(join(FOLDER, 'room.csv'), `time,temperature_C,humidity_percent\n${rows.join('\n')}\n`);
    const { exit, out } = await over('room.csv');
    expect(exit).toBe(0);
    const answer = JSON.parse(out);
    const place = { file: 'room.csv', line: 12 };
    expect(answer.problems).toMatchObject([{ code: 'climate/row-unread', severity: 'note', place }]);
    expect(answer.value).toBeGreaterThan(40);
  });

  test('with a header and nothing under it is no log', async () => {
    writeFileSync(join(FOLDER, 'empty.csv'), 'time,temperature_C,humidity_percent\n');
    expect((await over('empty.csv')).exit).toBe(2);
  });

  test('in wholly dry air has no measure', async () => {
    writeFileSync(join(FOLDER, 'dry.csv'), 'time,temperature_C,humidity_percent\n2024-01-01 10:00,20,0\n');
    expect((await over('dry.csv')).exit).toBe(2);
  });

  test('may have a comma in the logger’s own names', async () => {
    writeFileSync(join(FOLDER, 'comma.csv'), 'When,"Temp, °C",RH\n2024-01-01 10:00,20,45\n2024-01-01 11:00,20,45\n');
    const { exit } = await over('comma.csv', '--columns', 'time=When,temperature_C=Temp, °C,humidity_percent=RH');
    expect(exit).toBe(0);
  });
});

test('each name that was promised is there, with a form for every key', () => {
  expect([...CALCULATIONS.keys()].sort()).toEqual([
    'bake-window',
    'date',
    'dew-point',
    'duration-sum',
    'groove-pitch',
    'half-speed',
    'noise-after-copies',
    'number',
    'pack-diameter',
    'playing-time',
    'print-through-frequency',
    'replay-difference',
    'storage-years',
    'storage-years-over-log',
    'tape-length',
    'transition-frequency',
  ]);
  for (const { keys } of CALCULATIONS.values()) for (const key of keys) expect(key.form).not.toBe('');
});
