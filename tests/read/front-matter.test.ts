import { describe, expect, test } from 'vitest';
import { splitEntry } from '#read/front-matter.ts';

const split = (text: string, path = 'reels/low-water.md') => splitEntry({ path, text });
const codes = (text: string) => split(text).problems.map(({ code, place }) => `${code} ${place.line}:${place.column}`);

function textAt(text: string, key: string) {
  const node = split(text).entry?.root.fields[key];
  return node?.is === 'scalar' ? node.text : node;
}

describe('scalars stay texts', () => {
  test.each([
    ['0123', '0123'],
    ['32:15', '32:15'],
    ['1974-03-01', '1974-03-01'],
    ['1967-04', '1967-04'],
    ['yes', 'yes'],
    ['~', '~'],
    ['null', 'null'],
    ['1e3', '1e3'],
    ['1.10', '1.10'],
    ['0o17', '0o17'],
    ['"quoted"', 'quoted'],
    ['|\n  two\n  lines', 'two\nlines'],
  ])('%s', (yaml, text) => expect(textAt(`---\nnumber: ${yaml}\n---\n`, 'number')).toBe(text));

  test('a key with nothing behind it is there, and has no value', () => {
    const root = split('---\ntitle:\nside: ""\n---\n').entry?.root;
    expect(Object.keys(root?.fields ?? {})).toEqual(['title', 'side']);
    expect(root?.fields['title']).toBeUndefined();
    expect(root?.fields['side']).toBeUndefined();
  });
});

describe('places', () => {
  const text = '---\ntitle: Low Water\ncuts:\n  - { number: "1", on: 1978 }\n  - number: "2"\n---\nBody.\n';
  test('each value knows its line, its column and its dotted key', () => {
    const cuts = split(text).entry?.root.fields['cuts'];
    const second = cuts?.is === 'list' ? cuts.items[1] : undefined;
    const number = second?.is === 'map' ? second.fields['number'] : undefined;
    expect(number?.place).toEqual({ file: 'reels/low-water.md', line: 5, column: 13, field: 'cuts[1].number' });
  });
  test('keys know theirs', () => {
    expect(split(text).entry?.root.keyPlaces.get('cuts')).toMatchObject({ line: 3, column: 1, field: 'cuts' });
  });
  test('the body begins on the line behind the closing one', () => {
    expect(split(text).entry).toMatchObject({ body: 'Body.\n', bodyLine: 7 });
  });
  test.each([
    ['Windows line ends', text.replaceAll('\n', '\r\n')],
    ['line ends of an old Mac', text.replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${text}`],
    ['blanks behind the three hyphens', text.replaceAll('---\n', '--- \t\n')],
  ])('%s change nothing', (_, other) => expect(split(other).entry).toEqual(split(text).entry));
});

describe('front matter that is not whole', () => {
  test.each([
    ['no front matter', 'Low Water\n', 'entry/unclosed 1:1'],
    ['an empty file', '', 'entry/unclosed 1:1'],
    ['no closing line', '---\ntitle: Low Water\n', 'entry/unclosed 1:1'],
    ['a closing line with more on it', '---\ntitle: Low Water\n----\n---\n', 'entry/unclosed 3:1'],
    ['nothing between the lines', '---\n---\n', 'entry/missing 2:1'],
    ['only a comment', '---\n# nothing yet\n---\n', 'entry/missing 2:1'],
    ['a list at the top', '---\n- title\n---\n', 'entry/missing 2:1'],
    ['a word at the top', '---\ntitle\n---\n', 'entry/missing 2:1'],
    ['a tab for a blank', '---\nformat:\n\tspeed: 15 in/s\n---\n', 'entry/not-yaml 3:1'],
    ['an open quotation mark', '---\ntitle: "Low Water\n---\n', 'entry/not-yaml 2:18'],
    ['a second document', '---\ntitle: x\n...\nstatus: held\n---\n', 'entry/not-yaml 4:1'],
    ['a repeated key', '---\ntitle: x\ntitle: y\n---\n', 'entry/repeated-key 3:1'],
  ])('%s: %j is told at its place', (_, text, told) => expect(codes(text)[0]).toBe(told));

  test('a value that begins with a star is told to be put in quotes', () => {
    expect(split('---\ntitle: *Low* Water\n---\n').problems[0]?.action).toContain('in quotes');
    expect(codes('---\ntitle: *Low*\n---\n')).toEqual(['entry/code-refused 2:8']);
  });
});

describe('front matter that asks to be run', () => {
  test.each(['---js', '---JS', '--- js', '---javascript', '---json', '---coffee', '---toml', '---yaml'])(
    '%s is refused and not run',
    (first) => {
      const bait = `${first}\n{ title: (globalThis.wasRun = true, "x") }\n---\n`;
      expect(codes(bait)).toEqual(['entry/code-refused 1:1']);
      expect(globalThis).not.toHaveProperty('wasRun');
    },
  );

  test.each([
    ['a tag', 'title: !!js/function "x"', 'entry/code-refused 2:8'],
    ['a binary tag', 'title: !!binary aGVsZA==', 'entry/code-refused 2:8'],
    ['a tag of its own on a list', 'tones: !mine [1 kHz]', 'entry/code-refused 2:8'],
    ['an anchor', 'title: &a Low Water', 'entry/code-refused 2:8'],
    ['an anchor on a map', 'format: &a { speed: x }', 'entry/code-refused 2:9'],
    ['a key that is a list', '? [a, b]\n: x', 'entry/code-refused 2:3'],
  ])('%s is refused where it stands', (_, yaml, told) => expect(codes(`---\n${yaml}\n---\n`)[0]).toBe(told));

  test('a bomb of aliases is refused before it grows', () => {
    const levels = Array.from({ length: 30 }, (_, i) => `k${i}: &a${i} [${`*a${i - 1},`.repeat(i === 0 ? 0 : 9)}x]`);
    const started = performance.now();
    expect(codes(`---\n${levels.join('\n')}\n---\n`).every((told) => told.startsWith('entry/code-refused'))).toBe(true);
    expect(performance.now() - started).toBeLessThan(2000);
  });
});

describe('hostile keys', () => {
  test('__proto__ and constructor are keys like any other', () => {
    const root = split('---\n__proto__: { polluted: x }\nconstructor: y\ntoString: z\n---\n').entry?.root;
    expect(Object.keys(root?.fields ?? {})).toEqual(['__proto__', 'constructor', 'toString']);
    expect({}).not.toHaveProperty('polluted');
  });
});

describe('texts made to take long', () => {
  const SIZE = 100_000;
  // Each would take minutes, or the stack, if a step took the square of its length.
  test.each([
    ['blank lines', '\n'.repeat(SIZE)],
    ['blanks', `${' '.repeat(SIZE)}a: b\n`],
    ['open brackets', `a: ${'['.repeat(SIZE)}\n`],
    ['closed brackets', `a: ${'['.repeat(SIZE / 2)}${']'.repeat(SIZE / 2)}\n`],
    ['dashes', `${'- '.repeat(SIZE / 2)}\n`],
    ['keys', Array.from({ length: SIZE / 10 }, (_, i) => `k${i}: v\n`).join('')],
    ['one key again and again', 'a: b\n'.repeat(SIZE / 5)],
    ['anchors', Array.from({ length: SIZE / 12 }, (_, i) => `k${i}: &a${i} x\n`).join('')],
    ['quotation marks', `a: '${"''".repeat(SIZE / 2)}'\n`],
    ['comments', '# x\n'.repeat(SIZE / 4)],
    ['hyphens', `a: b\n${'-'.repeat(SIZE)}\n`],
  ])('%s end within seconds, read or refused', (_, yaml) => {
    const started = performance.now();
    const { problems, entry } = split(`---\n${yaml}---\n`);
    expect(entry !== undefined || problems.length > 0).toBe(true);
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

describe('bodies', () => {
  test('raw HTML is noted where it stands, counted from the top of the file', () => {
    const told = split('---\ntitle: x\n---\n\nText\n\n<script>alert(1)</script>\n').problems;
    expect(told).toMatchObject([{ code: 'entry/html-shown-as-text', severity: 'note', place: { line: 7, column: 1 } }]);
  });
  test.each(['a < b', '<https://example.org/>', '`<b>`', '    <b>in code</b>', 'no sign at all'])(
    '%j is no HTML',
    (body) => {
      expect(split(`---\ntitle: x\n---\n\n${body}\n`).problems).toEqual([]);
    },
  );
});

describe('addresses', () => {
  test.each([
    ['reels/low-water.md', 'reels', 'low-water'],
    ['people/ansel/index.md', 'people', 'ansel'],
    ['collection.md', 'collection', ''],
  ])('%s', (path, folder, id) => expect(split('---\ntitle: x\n---\n', path).address).toEqual({ folder, id }));

  test.each([
    ['reels/none.md', 'entry/bad-value'],
    ['people/owner.md', 'entry/bad-value'],
    ['reels/Low Water.md', 'entry/bad-value'],
    ['reels/marée.md', 'entry/bad-value'],
    [`reels/${'x'.repeat(252)}.md`, 'entry/bad-value'],
    ['reels/low-water/notes.md', 'entry/out-of-place'],
    ['records/low-water.md', 'entry/out-of-place'],
  ])('%s is %s', (path, code) => {
    const { address, problems } = split('---\ntitle: x\n---\n', path);
    expect(address).toBeUndefined();
    expect(problems).toMatchObject([{ code, place: { file: path, line: 1 } }]);
  });

  test.each(['marée'.normalize('NFC'), 'marée'.normalize('NFD')])(
    'either Unicode form of %s is offered one plain name',
    (name) => {
      expect(split('', `reels/${name}.md`).problems[0]?.action).toContain('to maree for example');
    },
  );
});
