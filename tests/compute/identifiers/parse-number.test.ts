import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNumber } from '#compute/identifiers/parse-number.ts';
import { plainForm } from '#compute/identifiers/plain.ts';

const none = { plain: null, stem: null, side: null, cut: null, rest: null };

/** Rows C-133 to C-136 and C-472 to C-476 of the published values: the form of disc numbers as etched and printed
 *  (common practice, no source); NFKC of full-width forms, UAX #15. */
const PUBLISHED = [
  { row: 'C-133', text: '12345-3', expected: { stem: '12345', side: null, cut: '3', rest: null } },
  { row: 'C-134', text: 'HLX 2207-A', expected: { stem: 'HLX 2207', side: 'A', cut: null, rest: null } },
  { row: 'C-135', text: 'HLX2207B2', expected: { stem: 'HLX2207', side: 'B', cut: '2', rest: null } },
  { row: 'C-136', text: 'hlx 2207', expected: { stem: 'hlx 2207', side: null, cut: null, rest: null } },
  { row: 'C-472', text: 'HLX 2207-A-3', expected: { plain: 'HLX2207A', side: 'A', cut: '3' } },
  { row: 'C-473', text: 'HLX 2207', expected: { plain: 'HLX2207', side: null, cut: null } },
  { row: 'C-474', text: '00123', expected: { plain: '00123' } },
  { row: 'C-475', text: 'ＨＬＸ２２０７', expected: { plain: 'HLX2207' } },
  { row: 'C-476', text: '1972-3', expected: { ambiguous: ['cut 3 of matrix 1972', 'March 1972?'] } },
  /** C-559: the dash number counts lacquers cut from one matrix. */
  { row: 'C-559', text: '20713-4', expected: { stem: '20713', cut: '4', side: null } },
];

describe('a number taken apart', () => {
  test.each(PUBLISHED)('$row: $text', ({ text, expected }) => expect(parseNumber(text)).toMatchObject(expected));

  test.each([
    ['HLX 2207-A-3 ‖ TV', { stem: 'HLX 2207', side: 'A', cut: '3', rest: '‖ TV' }],
    ['TV ‖ HLX-2207-A1', { stem: 'HLX-2207', side: 'A', cut: '1', rest: 'TV ‖' }],
    ['H.L.X. 2207/A/3', { stem: 'H.L.X. 2207', side: 'A', cut: '3', rest: null }],
    ['HLX 2207 A//2', { stem: 'HLX 2207', side: 'A', cut: '2', rest: null }],
    ['C60-12345', { stem: 'C60-12345', side: null, cut: null }],
    ['7-1234', { stem: '7-1234', cut: null }],
    ['02207-12-3', { stem: '02207-12', cut: '3' }],
    ['0123 456-3', { stem: '0123 456', cut: '3' }],
    ['HLX 2207ST', { stem: 'HLX 2207ST', side: null, rest: null }],
    ['HLX 2207 LP', { stem: 'HLX 2207', side: null, rest: 'LP' }],
    ['△ HLX 22?7 B', { plain: 'HLX22?7B', stem: 'HLX 22?7', side: 'B', rest: '△' }],
    ['41', { stem: '41', cut: null }],
    ['ABC', { stem: 'ABC', side: null }],
  ])('%j, another house again', (text, expected) => expect(parseNumber(text)).toMatchObject(expected));

  test.each(['', '   '])('%j has no part at all', (text) => expect(parseNumber(text)).toEqual(none));
  test('signs alone are only the rest', () => expect(parseNumber(' ‖ △ ')).toEqual({ ...none, rest: '‖ △' }));

  test('what a reader could take otherwise is said, the first reading first', () => {
    expect(parseNumber('12345-1').ambiguous).toEqual(['cut 1 of matrix 12345', 'side 1 of 12345?']);
    expect(parseNumber('WQX 4471/2').ambiguous).toEqual([
      'cut 2 of matrix WQX 4471',
      'WQX 4471 and the number after it?',
    ]);
    expect(parseNumber('12345-1A').ambiguous).toEqual(['cut 1 of matrix 12345', 'side A of 12345-1?']);
  });

  test('a number with a side letter, or a cut past 2, isn’t said to be ambiguous', () => {
    expect(parseNumber('HLX 2207-A-1').ambiguous).toBeUndefined();
    expect(parseNumber('12345-3').ambiguous).toBeUndefined();
  });

  test('no text, however odd, stops it, and nothing is lost', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const { stem, side, cut, rest } = parseNumber(text);
        expect(text).toContain(stem ?? '');
        expect(plainForm(text)).toContain(cut ?? '');
        // A side letter is kept in its plain form, so letters are compared in that form.
        const letters = (from: string) => [...plainForm(from)].filter((one) => /[A-Z0-9]/.test(one));
        const kept = letters(`${stem ?? ''}${side ?? ''}${cut ?? ''}${rest ?? ''}`);
        expect(kept.toSorted()).toEqual(letters(text).toSorted());
      }),
    );
  });

  test('stem, side and cut come back from every way of joining them', () => {
    const stem = fc.stringMatching(/^[A-Z]{2,4}[0-9]{3,6}$/);
    const side = fc.constantFrom('A', 'B', 'C', 'D');
    const cut = fc.integer({ min: 1, max: 99 }).map(String);
    const joiner = fc.constantFrom('-', ' ', '/', '', '–', ' - ');
    fc.assert(
      fc.property(stem, side, cut, joiner, joiner, (number, letter, dash, first, second) => {
        const text = `${number}${first}${letter}${second}${dash}`;
        expect(parseNumber(text)).toMatchObject({ plain: number + letter, stem: number, side: letter, cut: dash });
      }),
    );
  });
});
