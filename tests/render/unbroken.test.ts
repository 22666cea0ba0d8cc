import { describe, expect, test } from 'vitest';
import { unbroken } from '#render/words/unbroken.ts';

describe('a sentence in which no day and no number is broken at its hyphen', () => {
  test('keeps a day and a number in one piece, and every other word as it is', () => {
    expect(String(unbroken('Found sticky on 2026-09-28; half-speed cut 4534-1, side 102-C, tail-out.'))).toBe(
      'Found sticky on <span class="whole">2026-09-28</span>; half-speed cut <span class="whole">4534-1</span>, side <span class="whole">102-C</span>, tail-out.',
    );
  });

  test('makes no markup of what an entry says', () => {
    expect(String(unbroken('<b> 1-2 & more'))).toBe('&lt;b&gt; <span class="whole">1-2</span> &amp; more');
  });
});
