import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { collate } from '#compute/identifiers/collation.ts';

/** Three lines: typed, found, and a sign a column (= same, ~ fills, ≈ alike, × differs, + more, - lacks). */
const SIGNS = { same: '=', fills: '~', alike: '≈', differs: '×', more: '+', lacks: '-', between: ' ' } as const;
const drawn = (typed: string, number: string, asPart = true) => {
  const columns = collate(typed, number, asPart);
  const line = (of: 'typed' | 'found') => columns.map((column) => column[of] || ' ').join('');
  return [line('typed'), line('found'), columns.map(({ is }) => SIGNS[is]).join('')];
};

describe('what was typed over what is written', () => {
  test('the same, with its own spaces', () =>
    expect(drawn('WQX 4471', 'WQX 4471')).toEqual(['WQX 4471', 'WQX 4471', '=== ====']));
  test('an unread character is filled', () =>
    expect(drawn('WQX 44?1', 'WQX 4471')).toEqual(['WQX 44?1', 'WQX 4471', '=== ==~=']));
  test('another spelling keeps both’s marks', () =>
    expect(drawn('wqx-4471', 'WQX4471/2')).toEqual(['WQX-4471  ', 'WQX 4471/2', '=== ==== +']));
  test('a mark at the end is kept', () =>
    expect(drawn('WQX 44?1', 'WQX 4471-3 E.A.').slice(0, 2)).toEqual(['WQX 44?1       ', 'WQX 4471-3 E.A.']));
  test('a character that looks alike, and one that differs', () => {
    expect(drawn('WQX 44I1', 'WQX 4411')[2]).toBe('=== ==≈=');
    expect(drawn('WQX 4471', 'WQX 4472', false)[2]).toBe('=== ===×');
  });
  test('what was typed beyond the number has nothing below it', () =>
    expect(drawn('WQX 4471-3', 'WQX 4471')).toEqual(['WQX 4471-3', 'WQX 4471  ', '=== ==== -']));
  test('a doubtful reading is laid as it fits best', () =>
    expect(drawn('WQX 4472', 'WQX 44{1|7}2')[2]).toBe('=== ===='));

  test('nothing typed and nothing found is lost', () => {
    const number = fc.stringMatching(/^[A-Z]{2,3}[ -]?[0-9]{3,5}(?:-[AB])?$/);
    fc.assert(
      fc.property(number, number, fc.boolean(), (typed, found, asPart) => {
        const columns = collate(typed, found, asPart);
        const plain = (text: string) => text.replaceAll(/[^A-Z0-9]/g, '');
        expect(plain(columns.map((column) => column.typed).join(''))).toBe(plain(typed));
        expect(plain(columns.map((column) => column.found).join(''))).toBe(plain(found));
      }),
    );
  });
});
