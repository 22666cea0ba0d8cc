import { describe, expect, test } from 'vitest';
import { type CurveAnswer, curveOf, type Years, yearsOf } from '#compute/equalisation/curve-of.ts';
import { OTHER_CURVES, STANDARDS } from '#compute/equalisation/standards.ts';
import { constantsInWords } from '#compute/equalisation/time-constants.ts';
import { CURVE_NAMES, type CurveName } from '#model/equalisation.ts';
import { inchesPerSecond, microseconds } from '#model/units.ts';
import { parsePartialDate } from '#validate/date.ts';
import { reckoned } from '../../given/reckoned.ts';
import { departures, rows, textOf } from '../../tables/published.ts';

const ask = (name: CurveName, inPerS: number, years?: Years) =>
  curveOf({ is: 'name', name }, inchesPerSecond(inPerS), years);
const constants = (answer: CurveAnswer) =>
  answer.is === 'resolved'
    ? constantsInWords(answer.curve)
    : answer.is === 'ambiguous'
      ? answer.meanings.map(constantsInWords)
      : answer.is;

/** `15 in/s NAB` as the table writes it. */
function named(text: string): [CurveName, number] {
  const [inPerS, , name] = text.split(' ');
  const known = CURVE_NAMES.find((one) => one === name);
  if (known === undefined) throw new Error(text);
  return [known, Number(inPerS)];
}

describe('a name at a speed', () => {
  const firm = rows('C-035', 'C-037', 'C-038', 'C-039', 'C-040', 'C-041', 'C-042', 'C-043');
  test.each(firm)('$id $inputs.curve ($source)', ({ inputs, expected, tolerance }) => {
    const answer = ask(...named(textOf(inputs, 'curve')));
    if (answer.is !== 'resolved') throw new Error(answer.is);
    const { lowUs, highUs } = answer.curve;
    const found = { low_us: lowUs === Infinity ? null : lowUs, high_us: highUs };
    expect(departures(found, expected, tolerance)).toEqual([]);
  });

  test.each(rows('C-036'))(
    '$id $inputs.curve: its year decides, or the owner is asked ($source)',
    ({ inputs, expected }) => {
      const [name, inPerS] = named(textOf(inputs, 'curve'));
      const answer = ask(name, inPerS);
      expect(answer.is).toBe('ambiguous');
      expect(constants(answer)).toEqual(['∞/35 µs', '∞/17.5 µs']);
      expect(constants(ask(name, inPerS, { from: 1990, until: 1990 }))).toBe(`∞/${expected['high_us']} µs`);
    },
  );

  test.each(rows('C-044', 'C-277', 'C-278'))('$id no standard defines it ($source)', ({ inputs }) => {
    const written = inputs['speed'] === undefined ? textOf(inputs, 'curve') : `${inputs['speed']} ${inputs['curve']}`;
    const answer = ask(...named(written));
    expect(answer.is).toBe('not-at-speed');
    expect(answer).toMatchObject({ namesAtSpeed: expect.arrayContaining([expect.any(String)]) });
  });

  test.each(rows('C-045'))('$id 7½ in/s CCIR before the change is asked about ($source)', ({ inputs, expected }) => {
    const answer = ask(...named(textOf(inputs, 'curve')), { until: 1965 });
    expect(answer.is).toBe('ambiguous');
    expect(constants(answer)).toContain(`∞/${expected['high_us']} µs`);
    expect(constants(answer)).toContain('∞/70 µs');
  });

  test.each(rows('C-279'))('$id $title ($source)', () => {
    const answer = ask('IEC', 30, { from: 1972, until: 1972 });
    if (answer.is !== 'resolved') throw new Error(answer.is);
    expect(constantsInWords(answer.curve)).toBe('∞/35 µs');
    expect(answer.otherwise.map(constantsInWords)).toEqual(['∞/17.5 µs']);
  });

  test.each(rows('C-280'))('$id $title ($source)', () => {
    const answer = ask('CCIR', 7.5, { from: 1964, until: 1964 });
    if (answer.is !== 'resolved') throw new Error(answer.is);
    expect(constantsInWords(answer.curve)).toBe('∞/100 µs');
    expect(answer.otherwise.map(constantsInWords)).toEqual(['∞/70 µs']);
  });

  test('a year that sources put on either side of the change stays open', () => {
    for (const year of [1965, 1966, 1967, 1968]) {
      expect(ask('CCIR', 7.5, { from: year, until: year }).is).toBe('ambiguous');
      expect(ask('IEC', 7.5, { from: year, until: year }).is).toBe('ambiguous');
    }
  });

  test.each(rows('C-248'))('$id $title ($source)', ({ expected }) => {
    const words = (written: unknown) => `${String(written).split(' ')[0]?.replace('inf', '∞')} µs`;
    expect(constants(ask('IEC2', 30))).toBe(words(expected['at30']));
    expect(constants(ask('IEC2', 15))).toBe(words(expected['at15']));
    expect(constants(ask('IEC2', 7.5))).toBe(words(expected['at7_5']));
    expect(constants(ask('IEC2', 3.75))).toBe(words(expected['at3_75']));
  });

  test('time constants written out need neither table nor year', () => {
    const answer = curveOf(
      { is: 'time-constants', lowUs: microseconds(3180), highUs: microseconds(50) },
      inchesPerSecond(4),
      undefined,
    );
    expect(answer).toMatchObject({ is: 'resolved', otherwise: [] });
  });

  test.each(['1972', '1971/1973', '197X'])('a recording of %s is in the years that it may be', (text) => {
    const date = parsePartialDate(text);
    const years = yearsOf(date.ok ? date.value : undefined);
    expect(constants(ask('IEC', 30, years))).toBe('∞/35 µs');
  });

  test('a decade with the change in it leaves the name open', () => {
    const date = parsePartialDate('198X');
    expect(ask('IEC', 30, yearsOf(date.ok ? date.value : undefined)).is).toBe('ambiguous');
  });
});

describe('the table of curves', () => {
  const table = rows(
    'C-236',
    'C-237',
    'C-238',
    'C-239',
    'C-240',
    'C-241',
    'C-242',
    'C-243',
    'C-244',
    'C-245',
    'C-246',
    'C-247',
  );
  test.each(table)('$id $title ($source)', ({ inputs, expected }) => {
    const speed = inchesPerSecond(Number(textOf(inputs, 'speed').split(' ')[0]));
    const wanted = {
      lowUs: expected['t1_us'] === 'infinite' ? Infinity : expected['t1_us'],
      highUs: expected['t2_us'],
    };
    const [first] = textOf(inputs, 'curve').split(/[ (]/);
    const all = [...STANDARDS, ...OTHER_CURVES].filter((row) => row.speedMmPerS === speed);
    const same = all.filter((row) => row.lowUs === wanted.lowUs && row.highUs === wanted.highUs);
    expect(same.length).toBeGreaterThan(0);
    const names: string[] = same.map((row) => ('name' in row ? String(row.name) : row.called));
    expect(names.some((name) => name === first || name.startsWith(`${first} `))).toBe(true);
  });

  test('each row has a source, and no row stands twice', () => {
    expect(STANDARDS.filter((row) => row.source === '')).toEqual([]);
    const keys = STANDARDS.map((row) => `${row.name} ${row.speedMmPerS} ${row.lowUs}/${row.highUs}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('it is sorted by name, then speed from fast to slow', () => {
    const key = (row: (typeof STANDARDS)[number]) =>
      `${row.name.padEnd(5)} ${String(1000 - row.speedMmPerS).padStart(8, '0')}`;
    expect(STANDARDS.map(key)).toEqual(STANDARDS.map(key).sort());
  });
});

describe('reckon', () => {
  test('30 in/s IEC is asked about, by either name or the year', async () => {
    const args = ['--recorded', '30 in/s IEC', '--replayed', '15 in/s IEC', '--frequency', '1000'];
    const { exit, json } = await reckoned('replay-difference', args);
    expect(exit).toBe(2);
    expect(json.problems?.[0]).toMatchObject({ code: 'equalisation/date-trap', place: { field: 'recorded' } });
    for (const way of ['IEC1', 'IEC2', '--year']) expect(json.problems?.[0]?.action).toContain(way);
  });

  test.each([
    ['1972', -4.86],
    ['1990', 0],
  ])('in %s it is %s dB at 10 kHz on 15 in/s IEC', async (year, db) => {
    const args = ['--recorded', '30 in/s IEC', '--replayed', '15 in/s IEC', '--frequency', '10 kHz', '--year', year];
    expect((await reckoned('replay-difference', args)).json['value']).toBeCloseTo(db, 2);
  });

  test('AES at 15 in/s is no curve, and what is one there is named', async () => {
    const args = ['--recorded', '15 in/s AES', '--replayed', '15 in/s IEC', '--frequency', '1000'];
    const { exit, json } = await reckoned('replay-difference', args);
    expect(exit).toBe(2);
    expect(json.problems?.[0]).toMatchObject({
      code: 'equalisation/not-at-speed',
      expected: expect.stringContaining('NAB'),
    });
  });

  test('a name without its speed is no curve', async () => {
    const { exit } = await reckoned('replay-difference', [
      '--recorded',
      'IEC2',
      '--replayed',
      '15 in/s IEC',
      '--frequency',
      '63',
    ]);
    expect(exit).toBe(2);
  });
});
