import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { charactersOf, isSureThroughout, likeliestText, parseReading } from '#compute/identifiers/reading-pattern.ts';

const partsOf = (written: string) => {
  const pattern = parseReading(written);
  if (!pattern.ok) throw new Error(pattern.because);
  return pattern.parts;
};

describe('a reading, letter by letter', () => {
  test('plain characters are sure', () => {
    expect(isSureThroughout(partsOf('WQX 4471'))).toBe(true);
    expect(likeliestText(partsOf('WQX 4471'))).toBe('WQX 4471');
  });

  test('`?` is one character that can’t be read', () => {
    expect(charactersOf(partsOf('4?1'))[1]).toEqual({ is: 'character', doubt: 'unread', mayBe: [], at: 1 });
    expect(likeliestText(partsOf('4?1'))).toBe('4?1');
  });

  test('`{1|7}` is one of these, the first the likeliest', () => {
    expect(charactersOf(partsOf('447{1|7}'))[3]).toEqual({
      is: 'character',
      doubt: 'one of',
      mayBe: ['1', '7'],
      at: 3,
    });
    expect(likeliestText(partsOf('447{1|7}'))).toBe('4471');
  });

  test('`{1?}` is read so and in doubt', () => {
    expect(charactersOf(partsOf('44{1?}2'))[2]).toEqual({ is: 'character', doubt: 'doubtful', mayBe: ['1'], at: 2 });
    expect(isSureThroughout(partsOf('44{1?}2'))).toBe(false);
  });

  test('boxes on a form are ticked or empty, drawn or typed', () => {
    const ticks = (written: string) => partsOf(written).flatMap((part) => (part.is === 'box' ? [part.ticked] : []));
    expect(ticks('☑30 in/s ☐15')).toEqual([true, false]);
    expect(ticks('[x] 30 in/s [ ] 15 [X] mono')).toEqual([true, false, true]);
  });

  test('` / ` is a line break, and a stroke within a word is a stroke', () => {
    expect(partsOf('30 in/s / AES').filter((part) => part.is === 'line break')).toHaveLength(1);
    expect(likeliestText(partsOf('30 in/s / AES'))).toBe('30 in/s AES');
  });

  test('square brackets with anything else in them stand for themselves', () => {
    expect(likeliestText(partsOf('[copy] 2'))).toBe('[copy] 2');
  });

  test.each(['44{1', '44{17}', '44{}', '44{1|}', '4}', '{{1|7}}', '{12?}'])(
    '%s can’t be followed, and says why',
    (written) => {
      const pattern = parseReading(written);
      expect(pattern.ok).toBe(false);
      if (!pattern.ok) expect(pattern.because).toMatch(/\{1\|7\}/);
    },
  );

  test('any text without braces keeps every character', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme' }).filter((text) => !/[{}[\]☑☒☐✓✔?]| \/ /.test(text)),
        (text) => {
          expect(likeliestText(partsOf(text))).toBe(text);
        },
      ),
    );
  });
});
