import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineDiff } from '../../src/desk/line-diff.ts';

test('only what differs is told, in the order of the text', () => {
  expect(lineDiff('a\nb\nc\nd\n', 'a\nB\nc\nd\ne\n')).toEqual(['− b', '+ B', '+ e']);
  expect(lineDiff('a\n', 'a\n')).toEqual([]);
  expect(lineDiff('a\r\nb\r\n', 'a\nb\n')).toEqual([]);
  expect(lineDiff('x\nx\n', 'x\n')).toEqual(['− x']);
  expect(lineDiff('', 'a')).toEqual(['− ', '+ a']);
});

const text = fc.array(fc.constantFrom('a', 'b', 'c', '', '- x'), { maxLength: 12 }).map((lines) => lines.join('\n'));

test('what goes and what comes, taken together, makes the one text of the other', () => {
  fc.assert(
    fc.property(text, text, (before, after) => {
      const count = (lines: readonly string[]) => {
        const counts = new Map<string, number>();
        for (const line of lines) counts.set(line, (counts.get(line) ?? 0) + 1);
        return counts;
      };
      const counts = count(before.split('\n'));
      for (const line of lineDiff(before, after)) {
        const plain = line.slice(2);
        counts.set(plain, (counts.get(plain) ?? 0) + (line.startsWith('+ ') ? 1 : -1));
      }
      const expected = count(after.split('\n'));
      for (const [line, times] of counts) expect(times).toBe(expected.get(line) ?? 0);
    }),
  );
});

test('two long texts with nothing in common end soon', () => {
  const many = (sign: string) => Array.from({ length: 20_000 }, (_, at) => `${sign}${at}`).join('\n');
  expect(lineDiff(many('a'), many('b'))).toHaveLength(40_000);
});
