import { describe, expect, test } from 'vitest';
import { MADE_BITS, makePassphrase, weakness } from '#compute/sharing/passphrase.ts';

describe('a made passphrase', () => {
  test('is five words that can be said, from the chance that it is given', () => {
    const asked: number[] = [];
    const made = makePassphrase((below) => {
      asked.push(below);
      return below - 1;
    });
    expect(made).toBe('zuzuz zuzuz zuzuz zuzuz zuzuz');
    expect(makePassphrase(() => 0)).toBe('babab babab babab babab babab');
    // 16 consonants three times, 5 vowels twice, five words: log2 of the product, worked out from what was asked for.
    expect(MADE_BITS).toBe(Math.floor(asked.reduce((bits, below) => bits + Math.log2(below), 0)));
    expect(MADE_BITS).toBe(83);
  });

  test('is never refused as weak when chance is even', () => {
    let at = 7;
    const chance = (below: number) => {
      at = (at * 48271) % 2147483647;
      return at % below;
    };
    for (let count = 0; count < 200; count += 1)
      expect(weakness(makePassphrase(chance), ['Low Water', 'low-water'])).toBeUndefined();
  });
});

describe('a weak passphrase is refused, with the reason', () => {
  test.each([
    ['', 'It has 0 characters'],
    ['marram', 'It has 6 characters'],
    ['aaaaaaaaaaaaaaaaaaaa', 'fewer than 8 different'],
    ['1984-03-12 0123 45678', 'figures only'],
    ['Password12345abcdef', 'anyone would try first'],
    ['Low Water side one 1', 'stand in this share'],
    [' ends with a space, though long ', 'begins or ends with a space'],
  ])('%j', (words, reason) => {
    expect(weakness(words, ['Low Water, side one', 'low-water'])).toContain(reason);
  });

  test.each(['tavok limen rudas pobet', 'velvet ladder, eleven pears', 'Früh am Morgen, vor dem Zug!'])(
    '%j will do',
    (words) => {
      expect(weakness(words, ['Low Water'])).toBeUndefined();
    },
  );
});
