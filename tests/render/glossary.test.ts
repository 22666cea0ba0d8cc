import { expect, test } from 'vitest';
import { TERMS } from '#render/glossary.ts';

test('the words are sorted, and each anchor is its own', () => {
  const words = TERMS.map((term) => term.word);
  expect(words).toEqual([...words].sort());
  expect(new Set(TERMS.map((term) => term.slug)).size).toBe(TERMS.length);
});
