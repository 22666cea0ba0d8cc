import { describe, expect, test } from 'vitest';
import { PRIVATE_BY_DEFAULT, privateKeyOf, SEEN_ALL_THE_SAME } from '#model/privacy.ts';
import { AUDIENCES } from '#model/words.ts';

const OWN = new Set(['recorded.by']);

describe('privateKeyOf', () => {
  test('every key that is private by default is so for every audience, but for what the table gives it', () => {
    for (const audience of AUDIENCES) {
      for (const key of PRIVATE_BY_DEFAULT) {
        const given = SEEN_ALL_THE_SAME[audience].includes(key);
        expect(privateKeyOf(key, audience, new Set())).toBe(given ? undefined : key);
      }
    }
  });

  test.each([
    ['custody.price', 'insurer', 'custody'],
    ['custody.how', 'insurer', undefined],
    ['custody.how', 'friend', 'custody'],
    ['valuations.amount', 'insurer', undefined],
    ['valuations', 'valuer', 'valuations'],
    ['recorded', 'researcher', 'recorded.by'],
    ['recorded.on', 'researcher', undefined],
    ['placement', 'friend', undefined],
  ] as const)('%s for the %s is covered by %s', (key, audience, covering) => {
    expect(privateKeyOf(key, audience, OWN)).toBe(covering);
  });

  test('what the owner made private stays so even where the table gives it', () => {
    expect(privateKeyOf('custody.how', 'valuer', new Set(['custody.how']))).toBeDefined();
  });
});
