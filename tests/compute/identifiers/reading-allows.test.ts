import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readingAllows } from '#compute/identifiers/reading-allows.ts';

describe('readingAllows', () => {
  test.each([
    ['HLX 2207-A', 'hlx2207a', 'spaces, dashes and case don’t count'],
    ['HLX 22?7-A', 'HLX 2207-A', 'an unread character may be any'],
    ['HLX 220{1|7}-A', 'HLX 2207-A', 'one of several'],
    ['HLX 220{1?}-A', 'HLX 2207-A', 'one in doubt may be what it looks like'],
    ['Mx. No. HLX 2207-A / stereo', 'HLX 2207-A', 'the label has more on it'],
    ['2207', 'HLX 2207-A', 'the label has a part of it'],
    ['HLX {', 'DRM 1', 'a reading that can’t be followed rules nothing out'],
  ])('%s can be %s: %s', (read, number) => expect(readingAllows(read, number)).toBe(true));

  test.each([
    ['HLX 2201-A', 'HLX 2207-A', 'a certain character is another'],
    ['HLX 220{1|4}-A', 'HLX 2207-A', 'neither of the two is it'],
    ['HLX 220{1?}-A', 'HLX 2208-A', 'no 1 looks like an 8'],
    ['HLX 22?7-A', 'HLX 2217-B', 'another character differs'],
  ])('%s can’t be %s: %s', (read, number) => expect(readingAllows(read, number)).toBe(false));

  test('a number can always be what it is read as, with any one character unread', () => {
    const number = fc.stringMatching(/^[A-Z]{1,3} [0-9]{3,5}-[A-D]$/);
    fc.assert(
      fc.property(number, fc.nat(), (written, at) => {
        const unread = [...written];
        const place = at % unread.length;
        if (/[A-Z0-9]/.test(unread[place] ?? '')) unread[place] = '?';
        return readingAllows(written, written) && readingAllows(unread.join(''), written);
      }),
    );
  });
});
