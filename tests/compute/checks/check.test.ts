import { describe, expect, test } from 'vitest';
import { between, crossCheck } from '#compute/checks/check.ts';

const place = (file: string, line = 1) => ({ file, line, column: 1, field: '' });
const doubt = { place: place('reels/a.md'), message: 'm', found: 'f', expected: 'e', action: 'a' };

describe('crossCheck', () => {
  const check = crossCheck({
    code: 'time/example',
    title: 'An example',
    severity: 'note',
    scope: 'reel',
    reads: ['duration', 'speed'],
    judge: (facts) => [{ ...doubt, found: Object.keys(facts).join(' ') }],
  });

  test('is silent while any fact that it reads is missing', () => {
    expect(check.run((name) => (name === 'duration' ? {} : undefined))).toEqual([]);
    expect(check.run((name) => (name === 'speed' ? {} : undefined))).toEqual([]);
  });

  test('gives its judge the facts that it reads, and no others', () => {
    expect(check.run(() => ({}))[0]?.found).toBe('duration speed');
  });

  test('signs each doubt with its code and severity', () => {
    expect(check.run(() => ({}))[0]).toMatchObject({ code: 'time/example', severity: 'note', related: [] });
  });

  test('lets a doubt be worse or milder than the check', () => {
    const milder = crossCheck({
      code: 'time/example',
      title: '',
      severity: 'warning',
      scope: 'reel',
      reads: [],
      judge: () => [{ ...doubt, severity: 'note' as const }],
    });
    expect(milder.run(() => ({}))[0]?.severity).toBe('note');
  });
});

describe('between', () => {
  const here = { place: place('reels/a.md', 9), message: 'first', found: '1', expected: 'like 2' };
  const there = { place: place('reels/b.md', 3), message: 'second', found: '2', expected: 'like 1' };

  test.each([
    [here, there],
    [there, here],
  ])('stands in the entry whose file name sorts last, whichever is named first', (one, other) => {
    expect(between(one, other)).toEqual({
      place: there.place,
      found: '2',
      expected: 'like 1',
      related: [{ message: 'first', place: here.place }],
    });
  });

  test('stands in the lower line within one entry', () => {
    expect(between(here, { ...there, place: place('reels/a.md', 12) }).place.line).toBe(12);
  });
});
