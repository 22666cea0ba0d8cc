import { expect, test } from 'vitest';
import { holdsTurns, withoutTurns } from '#model/turned-text.ts';
import { quietAttributes } from '#render/quiet-attributes.ts';

test('angles within attributes are written as entities; tags and texts stay', () => {
  const html = '<p title="a > b"><img alt="<script>x</script>" src="/x.jpg">1 &lt; "2" <b>\'s</b></p>';
  expect(quietAttributes(html)).toBe(
    '<p title="a &gt; b"><img alt="&lt;script&gt;x&lt;/script&gt;" src="/x.jpg">1 &lt; "2" <b>\'s</b></p>',
  );
});

test('a sign that turns the text after it round is replaced by one that can be seen', () => {
  // Source: Unicode Bidirectional Algorithm (UAX #9), table 4: LRE, RLE, LRO, RLO, PDF, LRI, RLI, FSI, PDI.
  const all = [0x202a, 0x202b, 0x202d, 0x202e, 0x202c, 0x2066, 0x2067, 0x2068, 0x2069];
  expect(withoutTurns(`a${String.fromCodePoint(...all)}b`)).toBe(`a${'\ufffd'.repeat(9)}b`);
  expect(withoutTurns('שלום low water')).toBe('שלום low water');
});

test('whether there is one is known from the bytes, for every character', () => {
  for (let code = 0x80; code < 0x3000; code += 1) {
    const text = `—${String.fromCodePoint(code)}…`;
    expect(holdsTurns(new TextEncoder().encode(text)), code.toString(16)).toBe(withoutTurns(text) !== text);
  }
});
