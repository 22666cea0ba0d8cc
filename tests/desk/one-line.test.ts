import { expect, test } from 'vitest';
import { editEntry } from '#read/entry-edit.ts';
import { isListWritten, isMapWritten, type Written, type WrittenPath } from '#read/written-value.ts';
import type { Field } from '../../src/desk/fields/field.ts';
import { type DeskKind, FIELDS, keyOrder } from '../../src/desk/fields/kinds.ts';
import { lineDiff } from '../../src/desk/line-diff.ts';

const KINDS = Object.keys(FIELDS) as DeskKind[];

/** Something for every field: two of what there may be several of. */
function filled(fields: readonly Field[]): Record<string, Written> {
  const facts: Record<string, Written> = {};
  for (const field of fields) {
    const { key } = field;
    if (field.is === 'one') facts[key] = `${key}, before`;
    else if (field.is === 'many') facts[key] = [`${key} 1`, `${key}: 2`];
    else if (field.is === 'map') facts[key] = filled(field.fields);
    else if (field.is === 'list') facts[key] = [filled(field.fields), filled(field.fields)];
    else facts[key] = { own: 'a text', deeper: { several: ['one', 'two'] } };
  }
  return facts;
}

const quoted = (text: string) => JSON.stringify(text);

function inBrackets(value: Written): string {
  if (typeof value === 'string') return quoted(value);
  if (isListWritten(value)) return `[${value.map(inBrackets).join(', ')}]`;
  return `{ ${Object.entries(value)
    .map(([key, inner]) => `${quoted(key)}: ${inBrackets(inner as Written)}`)
    .join(', ')} }`;
}

/** Every fact a line of its own, with a remark behind it. */
function onLines(value: Written, indent: string): string {
  if (typeof value === 'string') return ` ${quoted(value)} # a remark\n`;
  if (isListWritten(value)) {
    const items = value.map((item) => {
      if (typeof item === 'string') return `${indent}- ${quoted(item)}   # as read\n`;
      return `${indent}-\n${indent}  # of this line\n${keyed(item, `${indent}  `)}`;
    });
    return `\n${items.join('')}`;
  }
  return `\n${keyed(value, indent)}`;
}
const keyed = (map: Written, indent: string) =>
  isMapWritten(map)
    ? Object.entries(map)
        .map(([key, inner]) => `${indent}${key}:${onLines(inner as Written, `${indent}  `)}`)
        .join('')
    : '';

/** Each text on several lines. */
function onSeveral(value: Written, indent: string, sign: string): string {
  if (typeof value === 'string') return ` ${sign}\n${indent}first of it\n${indent}${value}\n${indent}last of it\n`;
  if (isListWritten(value))
    return `\n${value
      .map((item) =>
        typeof item === 'string'
          ? `${indent}-${onSeveral(item, `${indent}  `, sign)}`
          : `${indent}-${onSeveral(item, `${indent}  `, sign).replace(/^\n\s*/u, ' ')}`,
      )
      .join('')}`;
  return `\n${Object.entries(value)
    .map(([key, inner]) => `${indent}${key}:${onSeveral(inner as Written, `${indent}  `, sign)}`)
    .join('')}`;
}

function textPaths(value: Written, above: WrittenPath = []): WrittenPath[] {
  if (typeof value === 'string') return [above];
  if (isListWritten(value)) return value.flatMap((item, at) => textPaths(item, [...above, at]));
  return Object.entries(value).flatMap(([key, inner]) => textPaths(inner as Written, [...above, key]));
}

const brackets = (facts: Written) =>
  isMapWritten(facts)
    ? Object.entries(facts)
        .map(([key, value]) => `${key}: ${inBrackets(value as Written)}\n`)
        .join('')
    : '';

const HANDS: readonly (readonly [name: string, write: (facts: Written) => string, now: string])[] = [
  ['in brackets', brackets, 'another, "now": #1'],
  ['on lines, with remarks', (facts) => keyed(facts, ''), 'another, "now": #1'],
  ['in Windows’ line ends', (facts) => keyed(facts, '').replaceAll('\n', '\r\n'), 'another, "now": #1'],
  ['as blocks of lines', (facts) => onSeveral(facts, '', '|').slice(1), 'first of it\nanother, "now": #1\nlast of it'],
  ['as folded lines', (facts) => onSeveral(facts, '', '>').slice(1), 'first of it another, "now": #1 last of it'],
  ['as plain lines', (facts) => onSeveral(facts, '', '').slice(1), 'first of it another last of it'],
];

test.each(KINDS.flatMap((kind) => HANDS.map(([name, write, now]) => ({ kind, name, write, now }))))(
  'each fact of $kind, written $name, is changed as one line',
  ({ kind, write, now }) => {
    for (const [at, field] of FIELDS[kind].entries()) {
      // Each between its neighbours, of which nothing may change.
      const around = FIELDS[kind].slice(Math.max(at - 1, 0), at + 2);
      // A colon ends a plain text on several lines.
      const facts = JSON.parse(JSON.stringify(filled(around)).replaceAll(': 2"', ' 2"')) as Record<string, Written>;
      const end = write(facts).includes('\r\n') ? '\r\n' : '\n';
      const text = ['---', write(facts).trimEnd(), '---', 'As it came.', ''].join(end);
      // Of two lines of a list the second: the first keeps its form.
      const paths = textPaths(facts[field.key] ?? {}, [field.key]).filter((path) => path[1] !== 0);
      expect(paths).not.toEqual([]);
      for (const path of paths) {
        const changed = editEntry(text, [{ path, to: now }], keyOrder(kind));
        const lines = lineDiff(text, changed);
        expect(lines.map(([sign]) => sign).join(''), `${path.join('.')}\n${lines.join('\n')}`).toBe('−+');
        expect(changed.split('\r\n').length).toBe(text.split('\r\n').length);
      }
    }
  },
);
