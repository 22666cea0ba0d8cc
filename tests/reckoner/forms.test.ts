import { describe, expect, test } from 'vitest';
import { day } from '#model/dates.ts';
import { CALCULATIONS_OF_VALUES } from '#reckoner/calculations.ts';
import { calculationForms } from '#reckoner/forms.ts';
import { workOutForm } from '#reckoner/work-out-form.ts';
import { CALCULATIONS } from '../../src/commands/reckon/calculations.ts';
import { reckoned } from '../given/reckoned.ts';

const TODAY = day('2026-03-20');
const AROUND = { cwd: '', now: new Date('2026-03-20T06:00:00') };
const forms = await calculationForms(TODAY);

/** They read the collection or a file, which no browser has. */
const WITH_FILES = [...CALCULATIONS.keys()].filter(
  (name) => !CALCULATIONS_OF_VALUES.some((calculation) => calculation.name === name),
);

describe('the forms of the reckoner', () => {
  test('are one for each name of the command that needs no file', () => {
    expect(forms.map(({ name }) => name).sort()).toEqual(CALCULATIONS_OF_VALUES.map(({ name }) => name).sort());
    expect(WITH_FILES).toEqual(['storage-years-over-log']);
  });

  test.each(forms)('$name is worked out already, with its formula and its source', ({ answer }) => {
    if (answer.is === 'refused') throw new Error(JSON.stringify(answer.problems));
    expect(answer.figures.length).toBeGreaterThan(0);
    expect(answer.formula).not.toBe('');
    expect(answer.source).not.toBe('');
  });

  test('take the same keys as the command', () => {
    for (const { name, keys } of forms) {
      expect(keys.map((key) => key.name)).toEqual(CALCULATIONS.get(name)?.keys.map((key) => key.name));
    }
  });

  test('show the band where something was measured', () => {
    const answer = forms.find(({ name }) => name === 'tape-length')?.answer;
    expect(answer?.is === 'answered' && answer.figures[0]).toMatch(/^[\d.]+ m, [\d.]+ to [\d.]+$/);
  });

  test('give the figure of the command', async () => {
    const keys = { 'outside-diameter': '260 mm ± 1 mm', 'hub-diameter': '100 mm', thickness: '52 µm' };
    const calculation = CALCULATIONS_OF_VALUES.find(({ name }) => name === 'tape-length');
    if (calculation === undefined) throw new Error('no tape-length');
    const answer = await workOutForm(calculation, new Map(Object.entries(keys)), AROUND);
    const args = Object.entries(keys).flatMap(([key, value]) => [`--${key}`, value]);
    const { json } = await reckoned('tape-length', args);
    // By hand: π(260² − 100²)/(4·0.052) mm = 869.98 m.
    expect(Number(json['value'])).toBeCloseTo(869.98, 0);
    expect(answer.is === 'answered' && answer.figures[0]).toMatch(/^870 m, /);
  });

  test('tell what is empty or can’t be read, key by key, and never answer', async () => {
    for (const calculation of CALCULATIONS_OF_VALUES) {
      const needed = calculation.keys.filter((key) => key.optional !== true);
      const empty = await workOutForm(calculation, new Map(), AROUND);
      if (needed.length > 0) {
        expect(empty.is === 'refused' && empty.problems.map(({ key }) => key)).toEqual(needed.map(({ name }) => name));
      }
    }
    const dewPoint = CALCULATIONS_OF_VALUES.find(({ name }) => name === 'dew-point');
    if (dewPoint === undefined) throw new Error('no dew-point');
    const answer = await workOutForm(
      dewPoint,
      new Map([
        ['temperature', 'warm'],
        ['humidity', '50 %'],
      ]),
      AROUND,
    );
    expect(answer).toMatchObject({ is: 'refused', problems: [{ key: 'temperature' }] });
  });
});
