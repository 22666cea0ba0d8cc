import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildCatalogue } from '#catalogue';
import { day } from '#model/dates.ts';
import { splitFiles } from '#read/collection.ts';
import { inside, noteHtml } from '#render/notes.ts';
import { handOver } from '#render/site.ts';
import { validateAll } from '#validate/entries.ts';

const file = (path: string, text: string) => ({ path, text });
const picture = { widthPx: 800, heightPx: 600, webp: 'photographs/a.webp', jpeg: 'photographs/a.jpg' };

beforeAll(() => {
  const read = splitFiles([
    file('reels/low-water-1.md', '---\ntitle: Low Water\nstatus: held\nnumbers:\n  matrix: [HLX 2207-A]\n---\n'),
    file('notes/a-note/index.md', '---\ntitle: A note\n---\n'),
  ]);
  const { entries, problems } = validateAll(read);
  const catalogue = buildCatalogue({
    entries,
    problems,
    photographs: new Map(),
    climate: new Map(),
    today: day('2026-03-20'),
  });
  const photographs = new Map([['notes/a-note/shelf.jpg', { ...picture, sizes: [picture], crops: new Map() }]]);
  handOver({ catalogue, photographs, base: '/sub/' });
});
afterAll(() => handOver(undefined));

const shown = (body: string) => noteHtml({ body, file: 'notes/a-note/index.md' }).toString();

describe('a note', () => {
  test('raw HTML is shown as the text that it is', () => {
    expect(shown('<script>alert(1)</script>\n\nso <b onclick="x()">there</b>')).toBe(
      '<p>&#x3C;script>alert(1)&#x3C;/script></p>\n<p>so &#x3C;b onclick="x()">there&#x3C;/b></p>',
    );
  });

  test.each([
    'javascript:alert(1)',
    'data:text/html,x',
    '../../etc/passwd',
    'no-such-entry.md',
    '/reels/x',
    '//host/x',
  ])('a link to %s leads nowhere and keeps its words', (address) =>
    expect(shown(`[words](${address})`)).toBe('<p>words</p>'),
  );

  test('a link to an entry’s file leads to its page', () =>
    expect(shown('[it](../../reels/low-water-1.md#cuts)')).toBe(
      '<p><a href="/sub/reels/low-water-1/#cuts">it</a></p>',
    ));

  test('a picture from elsewhere isn’t loaded', () =>
    expect(shown('![a map](http://host/x.png) ![b](//host/y.png)')).toBe(
      '<p>[picture not in the collection: a map] [picture not in the collection: b]</p>',
    ));

  test('a picture of the collection is the one that the site carries', () =>
    expect(shown('![the shelf](shelf.jpg)')).toBe(
      '<p><img src="/sub/photographs/a.webp" width="800" height="600" alt="the shelf" loading="lazy"></p>',
    ));

  test.each(['HLX 2207-A', 'hlx2207a', 'HLX 2207 A'])('a known number is a link in any spelling: %s', (number) =>
    expect(shown(`See ${number}.`)).toBe(`<p>See <a href="/sub/reels/low-water-1/">${number}</a>.</p>`),
  );

  test('a known id is a link, and neither a part of a word nor a number that nobody has', () => {
    expect(shown('low-water-1 is here')).toBe('<p><a href="/sub/reels/low-water-1/">low-water-1</a> is here</p>');
    expect(shown('low-water-12, HLX 2208-A, 1977')).toBe('<p>low-water-12, HLX 2208-A, 1977</p>');
  });

  test('nothing in code or in a link of its own becomes another link', () =>
    expect(shown('`low-water-1`')).toBe('<p><code>low-water-1</code></p>'));

  test('headings begin below those of the sheet', () =>
    expect(shown('# One\n\n## Two')).toBe('<h3>One</h3>\n<h4>Two</h4>'));

  test('tables and tick lists are understood', () => {
    expect(shown('| a |\n|---|\n| b |')).toContain('<td>b</td>');
    expect(shown('- [x] done')).toContain('checked');
  });
});

test.each([
  ['reels/x/index.md', 'a.jpg', 'reels/x/a.jpg'],
  ['reels/x/index.md', '../y.md', 'reels/y.md'],
  ['reels/x.md', '../../../etc/passwd', undefined],
  ['reels/x.md', 'https://host/x', undefined],
  ['reels/x.md', '%2e%2e/%2e%2e/x', undefined],
])('from %s the address %s is %s', (from, address, path) => expect(inside(from, address)).toBe(path));
