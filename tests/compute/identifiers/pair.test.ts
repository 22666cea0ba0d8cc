import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mistakenFor } from '#compute/identifiers/confusables.ts';
import { pairSides } from '#compute/identifiers/pair.ts';

const pair = (...written: readonly string[]) =>
  pairSides(written.map((number, index) => ({ side: String(index + 1), written: number })));
const proposal = (...written: readonly string[]) => {
  const pairing = pair(...written);
  return pairing.pairs ? undefined : pairing.proposal;
};

/** Rows C-477 to C-483 of the published values: how the numbers of a record's sides go (common practice, no source). */
describe('published rows', () => {
  test('C-477: 12345 and 12346 are consecutive', () =>
    expect(pair('12345', '12346')).toEqual({ pairs: true, ways: 'consecutive' }));
  test('C-478: 12345 and 12347 don’t pair, and nothing is proposed: other houses skip', () =>
    expect(pair('12345', '12347')).toEqual({ pairs: false, readings: [] }));
  test('C-479: HLX 2207-A and HLX 2207-B pair by side letters', () =>
    expect(pair('HLX 2207-A', 'HLX 2207-B')).toEqual({ pairs: true, ways: 'side letters' }));
  test('C-480: sides may carry different cuts', () => expect(pair('12345-3', '12346-1').pairs).toBe(true));
  test('C-481: a dash is not compulsory', () => expect(pair('12345', '12346-2').pairs).toBe(true));
  test('C-482: 12871 and 12345 don’t pair, and no single misread makes them', () =>
    expect(pair('12871', '12345')).toEqual({ pairs: false, readings: [] }));
  test('C-483: a 9 read for a 6 gives 12346 and 12347', () =>
    expect(proposal('12349', '12347')).toMatchObject({ index: 0, at: 4, read: '9', meant: '6', gives: '12346' }));
  test('C-560: sides that are neither consecutive nor dashed give no proposal, so nothing but a note can come of it', () =>
    expect(pair('20713', 'KV 88')).toEqual({ pairs: false, readings: [] }));
});

describe('lawful ways to number a set', () => {
  test.each([
    ['straight through', ['701', '702', '703', '704']],
    ['automatic coupling', ['701', '703', '704', '702']],
    ['disc by disc', ['HLX 22-A', 'HLX 22-B', 'HLX 23-A', 'HLX 23-B']],
    ['letters of all four', ['HLX 2207-B', 'HLX 2207-D', 'HLX 2207-A', 'HLX 2207-C']],
    ['the other side first', ['12346', '12345']],
    ['dash figures for the sides', ['12345-1', '12345-2']],
    ['a letter in front', ['A-2207', 'B-2207']],
    ['over a hundred', ['0099', '0100']],
  ])('%s', (_, numbers) => expect(pair(...numbers).pairs).toBe(true));

  test('of a set of four, sides 1 and 4 alone may be three apart', () => {
    expect(
      pairSides([
        { side: '1', written: '701' },
        { side: '4', written: '704' },
      ]).pairs,
    ).toBe(true);
    expect(
      pairSides([
        { side: '1', written: '701' },
        { side: '2', written: '704' },
      ]).pairs,
    ).toBe(false);
  });

  test('one number on two sides doesn’t pair, nor two cuts of one side', () => {
    expect(pair('HLX 2207-A', 'HLX 2207-A').pairs).toBe(false);
    expect(pair('12345-3', '12345-1').pairs).toBe(false);
  });
});

describe('the single misread that would make them pair', () => {
  test('a nought for an O: the reading that leaves letters with letters is proposed', () =>
    expect(proposal('GYO 417-A', 'GY0 417-B')).toMatchObject({
      index: 1,
      at: 2,
      read: '0',
      meant: 'O',
      gives: 'GYO 417-B',
    }));
  test('a doubtful character is tried before all others', () =>
    expect(proposal('WQX 447{1|7}', 'WQX 44{1?}2')).toMatchObject({
      index: 1,
      meant: '7',
      doubt: 'doubtful',
      gives: 'WQX 4472',
    }));
  test('an unread one may be anything', () =>
    expect(proposal('WQX 4471', 'WQX 44?2')).toMatchObject({ meant: '7', gives: 'WQX 4472' }));
  test('two readings that would both do are no proposal, and both are given', () => {
    const pairing = pair('WQX 4471', 'WQX 447?');
    expect(pairing.pairs).toBe(false);
    if (!pairing.pairs)
      expect([pairing.proposal, pairing.readings.map(({ gives }) => gives)]).toEqual([
        undefined,
        ['WQX 4470', 'WQX 4472'],
      ]);
  });

  const letters = fc.stringMatching(/^[A-Z]{2,3}$/);
  const figures = fc.integer({ min: 100, max: 99_998 });

  test('a proposal always makes the numbers pair', () => {
    const number = fc
      .tuple(letters, figures, fc.constantFrom('', '-A', '-B', '-1'))
      .map(([a, b, c]) => `${a} ${b}${c}`);
    let proposed = 0;
    fc.assert(
      fc.property(number, fc.nat(), fc.nat(), (one, where, which) => {
        const other = one.includes('-A')
          ? one.replace('-A', '-B')
          : one.replace(/\d+/, (run) => String(Number(run) + 1));
        const places = [...other].flatMap((character, at) =>
          [...mistakenFor(character).keys()].map((read) => ({ at, read })),
        );
        const { at, read } = places[where % places.length] ?? { at: 0, read: '' };
        const pairing = pair(one, which % 2 ? `${other.slice(0, at)}${read}${other.slice(at + 1)}` : other);
        if (pairing.pairs) return;
        for (const reading of pairing.readings) {
          const written = [one, `${other.slice(0, at)}${read}${other.slice(at + 1)}`];
          const mended = written.map((number, index) => (index === reading.index ? reading.gives : number));
          expect(pair(...mended).pairs, JSON.stringify(reading)).toBe(true);
        }
        if (pairing.proposal === undefined) return;
        proposed += 1;
        expect(pairing.readings).toContainEqual(pairing.proposal);
      }),
      { numRuns: 500 },
    );
    expect(proposed).toBeGreaterThan(50);
  });

  test('numbers that pair are never charged with a misread, in either order', () => {
    fc.assert(
      fc.property(letters, figures, (stem, figure) => {
        expect(pair(`${stem} ${figure}`, `${stem}-${figure + 1}-2`).pairs).toBe(true);
        expect(pair(`${stem} ${figure + 1}`, `${stem} ${figure}`).pairs).toBe(true);
        expect(pair(`${stem} ${figure}-B`, `${stem} ${figure} A3`).pairs).toBe(true);
      }),
    );
  });
});
