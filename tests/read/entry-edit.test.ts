import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CannotEdit, editBody, editEntry } from '#read/entry-edit.ts';
import { splitEntry } from '#read/front-matter.ts';
import { pathOf, sameWritten, type Written, withChange, withoutEmpty, writtenOf } from '#read/written-value.ts';

const ORDER = ['title', 'status', 'kind', 'length', 'format', 'format.speed', 'format.tracks', 'cuts', 'readings'];

const ENTRY = `---
# what this is
title: Saltwater Almanac, side 1   # as on the spine
status:   held
length: "18:52"
format: { width: 1/4 in,   speed: '30 in/s' }  # label
contents:
  - { title: Low Water, length: "4:10" }

  - title: Marram   # a false start
    length: "3:36"
place:
  shelf: C2
  # stored: flat
also:
  seller's words: |
    as found
    in the attic
---
Body, *kept*.
`;

const edit = (path: string, to: Written | undefined, text = ENTRY) =>
  editEntry(text, [{ path: pathOf(path), to }], ORDER);

/** The lines of the new text that the old one doesn't have, and the other way round. */
function changedLines(before: string, after: string) {
  const old = before.split('\n');
  const now = after.split('\n');
  return { gone: old.filter((line) => !now.includes(line)), come: now.filter((line) => !old.includes(line)) };
}

function read(text: string): Written {
  const { entry, problems } = splitEntry({ path: 'reels/a.md', text });
  if (entry === undefined) throw new Error(JSON.stringify(problems));
  return writtenOf(entry.root);
}

describe('a change leaves every other line as it was', () => {
  test('a text keeps its quotes, its blanks and its comment', () => {
    expect(changedLines(ENTRY, edit('length', '19:02'))).toEqual({
      gone: ['length: "18:52"'],
      come: ['length: "19:02"'],
    });
    expect(changedLines(ENTRY, edit('status', 'lent')).come).toEqual(['status:   lent']);
    expect(changedLines(ENTRY, edit('title', 'Saltwater Almanac, side 2')).come).toEqual([
      'title: Saltwater Almanac, side 2   # as on the spine',
    ]);
    expect(changedLines(ENTRY, edit('format.speed', '15 in/s')).come).toEqual([
      "format: { width: 1/4 in,   speed: '15 in/s' }  # label",
    ]);
  });
  test('a new key is a new line where the order has it', () => {
    const text = edit('kind', 'copy master');
    expect(changedLines(ENTRY, text)).toEqual({ gone: [], come: ['kind: copy master'] });
    expect(text).toContain('status:   held\nkind: copy master\nlength:');
  });
  test('a new key within brackets stays within them', () => {
    expect(edit('format.tracks', 'two-track stereo')).toContain(
      "format: { width: 1/4 in,   speed: '30 in/s', tracks: two-track stereo }  # label",
    );
  });
  test('a new key stands behind the comments that are set in under the one before', () => {
    const change = { path: ['pack'], to: { wind: 'tail out' } };
    expect(editEntry(ENTRY, [change], ['title', 'place', 'pack'])).toContain(
      '  # stored: flat\npack:\n  wind: tail out\n',
    );
    expect(edit('place.at', 'spare-room')).toContain('  shelf: C2\n  at: spare-room\n');
  });
  test('an item is added as a line, and taken away as its lines', () => {
    const more = edit('contents[2]', { title: 'Third, and last', length: '1:00' });
    expect(changedLines(ENTRY, more)).toEqual({ gone: [], come: ['  - { title: "Third, and last", length: "1:00" }'] });
    const fewer = edit('contents[1]', undefined);
    expect(changedLines(ENTRY, fewer)).toEqual({
      gone: ['  - title: Marram   # a false start', '    length: "3:36"'],
      come: [],
    });
    expect(edit('contents[1].title', undefined)).toContain('  - length: "3:36"\n');
  });
  test('a whole list that differs in one place changes one line', () => {
    const contents: Written = [
      { title: 'Low Water', length: '4:11' },
      { title: 'Marram', length: '3:36' },
    ];
    expect(changedLines(ENTRY, edit('contents', contents)).come).toEqual(['  - { title: Low Water, length: "4:11" }']);
  });
  test('a list that becomes "none" takes its lines with it', () => {
    expect(edit('contents', 'none')).toContain('# label\ncontents: none\nplace:');
  });
  test('a map that isn’t there yet is begun as a block', () => {
    expect(edit('cuts[0].number', '1')).toContain('---\nBody');
    expect(edit('cuts[0].number', '1')).toContain('cuts:\n  - { number: "1" }\n');
    expect(edit('pack.wind', 'tail out')).toContain('pack:\n  wind: tail out\n');
  });
  test('the last part of a map takes the map with it', () => {
    expect(edit('place.shelf', undefined)).not.toMatch(/place|shelf/);
  });
  test('a key that stands with nothing behind it is filled in', () => {
    const text = '---\ntitle: A\nlength: # measured\nstatus: held\n---\n';
    expect(edit('length', '1:00', text)).toBe('---\ntitle: A\nlength: "1:00" # measured\nstatus: held\n---\n');
  });
  test('line ends and a byte order mark stay', () => {
    const windows = `\ufeff${ENTRY.replaceAll('\n', '\r\n')}`;
    expect(edit('length', '19:02', windows)).toBe(windows.replace('18:52', '19:02'));
    const added = edit('kind', 'copy master', windows);
    expect(added).toBe(windows.replace('held\r\n', 'held\r\nkind: copy master\r\n'));
    expect(edit('contents[1]', undefined, windows)).not.toMatch(/[^\r]\n/);
  });
  test('a text in many lines keeps those that don’t change', () => {
    expect(changedLines(ENTRY, edit("also.seller's words", 'as found\nin the cellar'))).toEqual({
      gone: ['    in the attic'],
      come: ['    in the cellar'],
    });
    expect(changedLines(ENTRY, edit("also.seller's words", 'as found\nwet\nin the attic'))).toEqual({
      gone: [],
      come: ['    wet'],
    });
    expect(edit("also.seller's words", 'as found')).toContain("  seller's words: |\n    as found\n---\n");
  });
  test('an account keeps the lines that don’t change, whatever they end in', () => {
    const mixed = '---\ntitle: A\n---\none\r\ntwo\nthree\r\n';
    expect(editBody(mixed, 'one\n2\nthree\n')).toBe(mixed.replace('two', '2'));
  });
  test('another account leaves the facts', () => {
    expect(editBody(ENTRY, 'New.\n')).toBe(ENTRY.replace('Body, *kept*.\n', 'New.\n'));
  });
});

describe('what can’t be edited is refused', () => {
  test.each([
    ['no front matter', 'title: A\n'],
    ['an alias', '---\ntitle: &a A\nset: *a\n---\n'],
    ['no facts', '---\n# nothing\n---\n'],
    ['brackets that stay open', '---\ntitle: [A\n---\n'],
  ])('%s', (_, text) => {
    expect(() => edit('title', 'B', text)).toThrow(CannotEdit);
  });
  test('the last fact of all can’t be taken away', () => {
    expect(() => edit('title', undefined, '---\ntitle: A\n---\n')).toThrow(CannotEdit);
  });
});

const key = fc.constantFrom('title', 'status', 'length', 'format', 'cuts', 'speed', 'note', 'a key', 'yes', '1974');
const word = fc.oneof(
  fc.constantFrom(
    '18:52',
    'none',
    'yes',
    '1974~',
    '[x] 30 in/s',
    'a: b',
    'a #b',
    "it's",
    '- x',
    '"',
    '{1|7}?',
    '☑ 15',
    '*',
    '& b',
    'a,b',
    '@',
    '~',
    'null',
    'a\nb',
    ' a ',
    '#',
    ': ',
    'a:',
    '\\',
    '?',
    'é😀',
    '\u2028',
    '\ufeffx',
    'true',
    '0x1F',
    '1e3',
    '=',
    '<<',
  ),
  fc.string({ minLength: 1, maxLength: 12 }),
  fc.string({ minLength: 1, maxLength: 8, unit: 'grapheme' }),
);
const value = fc.letrec<{ any: Written }>((tie) => ({
  any: fc.oneof(
    { maxDepth: 3, depthSize: 'small' },
    word,
    fc.array(tie('any'), { minLength: 1, maxLength: 3 }),
    fc.dictionary(key, tie('any'), { minKeys: 1, maxKeys: 3 }),
  ),
})).any;
const facts = fc.dictionary(key, value, { minKeys: 1, maxKeys: 6 });

/** Facts written out in one of several hands: keys a line or in brackets, with comments, blank lines and other ends. */
function inHand(whole: Written, hand: { flow: number; comments: boolean; crlf: boolean; bom: boolean }): string {
  const quote = (text: string) =>
    JSON.stringify(text).replace(
      /[\u007f-\u009f\u2028\u2029\ufeff]/g,
      (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
    );
  const flow = (v: Written): string =>
    typeof v === 'string'
      ? quote(v)
      : Array.isArray(v)
        ? `[ ${v.map(flow).join(' , ')} ]`
        : `{${Object.entries(v)
            .map(([k, i]) => `${quote(k)}: ${flow(i)}`)
            .join(', ')}}`;
  const remark = hand.comments ? '  # a remark' : '';
  const block = (v: Written, depth: number): string => {
    const indent = '  '.repeat(depth);
    if (typeof v === 'string' || depth >= hand.flow) return ` ${flow(v)}${remark}`;
    if (Array.isArray(v)) return v.map((item) => `\n${indent}-${block(item, 99)}`).join('');
    return Object.entries(v)
      .map(
        ([k, i]) => `\n${indent}${quote(k)}:${block(i, depth + 1)}${hand.comments ? `\n${indent}# of ${depth}` : ''}`,
      )
      .join('');
  };
  const text = `---${hand.flow === 0 ? `\n${flow(whole)}` : block(whole, 0)}\n---\nBody: [kept\n`;
  return (hand.bom ? '\ufeff' : '') + (hand.crlf ? text.replaceAll('\n', '\r\n') : text);
}
const hand = fc.record({
  flow: fc.integer({ min: 0, max: 4 }),
  comments: fc.boolean(),
  crlf: fc.boolean(),
  bom: fc.boolean(),
});

/** A path that may or may not be there. */
const path = fc.array(
  fc.oneof({ weight: 3, arbitrary: key as fc.Arbitrary<string | number> }, { weight: 1, arbitrary: fc.nat(2) }),
  { minLength: 0, maxLength: 3 },
);

describe('for any entry in any hand', () => {
  test('what is read after an edit is what was asked for and nothing else, and the body stays', () => {
    fc.assert(
      fc.property(facts, hand, key, path, fc.option(value, { nil: undefined }), (whole, how, first, rest, to) => {
        const text = inHand(whole, how);
        const steps = [first, ...rest];
        const before = read(text);
        const wanted = withChange(before, steps, to === undefined ? undefined : withoutEmpty(to));
        fc.pre(wanted !== undefined);
        const after = editEntry(text, [{ path: steps, to }], ORDER);
        expect(sameWritten(read(after), wanted)).toBe(true);
        expect(after.endsWith(how.crlf ? 'Body: [kept\r\n' : 'Body: [kept\n')).toBe(true);
        expect(after.startsWith('\ufeff')).toBe(how.bom);
        if (how.crlf) expect(after).not.toMatch(/[^\r]\n/);
        if (sameWritten(before, wanted)) expect(after).toBe(text);
      }),
      { numRuns: 300 },
    );
  });
  test('a text that is changed and changed back gives the same bytes', () => {
    fc.assert(
      fc.property(facts, hand, word, (whole, how, text) => {
        const original = inHand(whole, how);
        const [first] = Object.entries(read(original)).filter(([, v]) => typeof v === 'string');
        fc.pre(first !== undefined);
        const [at, was] = first as [string, string];
        const there = editEntry(original, [{ path: [at], to: text }], ORDER);
        expect(editEntry(there, [{ path: [at], to: was }], ORDER)).toBe(original);
      }),
      { numRuns: 100 },
    );
  });
});

describe('the demo collection', () => {
  const root = resolve(import.meta.dirname, '../../collection/reels');
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.md'));
  test.each(files)('%s takes a change of its title as one line', (file) => {
    const text = readFileSync(join(root, file), 'utf8');
    const { gone, come } = changedLines(text, edit('title', 'Another, "quoted": one', text));
    expect([gone.length, come.length]).toEqual([1, 1]);
    const kept = edit('readings', undefined, text);
    expect(sameWritten(read(kept), withChange(read(text), ['readings'], undefined))).toBe(true);
  });
});
