import fc from 'fast-check';
import type { Loose } from '#model/entry.ts';
import { splitFiles } from '#read/collection.ts';
import type { Written } from '#read/written-value.ts';
import { validateAll } from '#validate/entries.ts';
import { yamlOf } from '../../src/commands/import/entry-text.ts';
import type { Field } from '../../src/desk/fields/field.ts';
import { FIELDS } from '../../src/desk/fields/kinds.ts';

/** Texts that a cell, a line of facts or YAML could take for something else. */
const ODD = [
  '=1+1',
  '-5',
  "'quoted'",
  '@x',
  ' blank in front',
  'a; b',
  'a: b',
  '"already"',
  '[x]',
  '{y}',
  'two\nlines',
  'a, "b"',
  "'=x",
  '?',
  'unknown',
  'yes',
  '0012',
  'Ødegård',
  'T.K.',
  'low-water',
  '18:52',
];
/** What a value gives that can't be read. A reference to nothing is read, and told. */
export const UNREAD: readonly string[] = [
  'entry/bad-value',
  'entry/ambiguous-date',
  'entry/missing',
  'entry/unknown-key',
];

/** Other forms of what the fields' examples show. */
const FORMS = [
  '1:06:40',
  '19 min 44 s',
  '3 s',
  '36 h',
  '7½ in/s',
  '76.2 cm/s',
  '15 ips',
  '10½ in',
  '250 mm ± 1 mm',
  '52 µm',
  '1974?',
  '197X',
  '1974/1976',
  '1974-03/..',
  '122 °F',
  '450 GBP',
  'IEC2',
  '3180/50',
  'xywh=percent:0.5,0,99.5,12.25',
  '2026-03-11T22:00',
  'none',
  'mixed',
  '3',
  'f'.repeat(64),
  'numbers.matrix',
  'owner',
];

const textOf = (facts: Readonly<Record<string, Written>>, body: string) =>
  `---\n${yamlOf(Object.entries(facts))}---\n${body}`;

const problemsOf = (facts: Readonly<Record<string, Written>>) =>
  validateAll(
    splitFiles([{ path: 'reels/a.md', text: textOf({ title: 'A', status: 'held', ...facts }, '') }]),
  ).problems.filter(({ code }) => UNREAD.includes(code));

/** What shows what a field is like; nothing for one that has no example. */
function exampleOf(field: Field): Written | undefined {
  if ('fields' in field) return examplesOf(field.fields);
  if (field.is === 'free') return undefined;
  return field.words?.[0] ?? field.example ?? (field.refers === undefined ? undefined : 'low-water');
}

const examplesOf = (fields: readonly Field[]): Record<string, Written> =>
  Object.fromEntries(
    fields.flatMap((one) => {
      const example = exampleOf(one);
      return example === undefined ? [] : [[one.key, one.is === 'list' ? [example] : example]];
    }),
  );

/** Whether an entry may have a value for a field, with its neighbours as their examples have them. */
function fits(path: readonly Field[], value: Written): boolean {
  const whole = [...path].reverse().reduce<Written>((inner, field, at) => {
    const filled =
      at === 0 || !('fields' in field) ? inner : { ...examplesOf(field.fields), ...(inner as Record<string, Written>) };
    return { [field.key]: field.is === 'list' && at > 0 ? [filled] : filled };
  }, value) as Record<string, Written>;
  return problemsOf(whole).length === 0;
}

function valueOf(field: Field, above: readonly Field[]): fc.Arbitrary<Loose> {
  const path = [...above, field];
  if (field.is === 'free')
    return fc.letrec<{ loose: Loose }>((tie) => ({
      loose: fc.oneof(
        { maxDepth: 2 },
        fc.constantFrom(...ODD, 'none'),
        fc.array(tie('loose'), { minLength: 1, maxLength: 2 }),
        fc.dictionary(fc.constantFrom('a', 'B c', 'd:e'), tie('loose'), {
          minKeys: 1,
          maxKeys: 2,
          noNullPrototype: true,
        }),
      ),
    })).loose;
  if ('fields' in field) {
    const must = field.fields.filter((one) => !problemFree(path, one)).map(({ key }) => key);
    const facts = fc.record(Object.fromEntries(field.fields.map((one) => [one.key, valueOf(one, path)])), {
      requiredKeys: must,
      noNullPrototype: true,
    });
    const some = facts.filter((one) => Object.keys(one).length > 0) as fc.Arbitrary<Loose>;
    return field.is === 'map' ? some : fc.array(some, { minLength: 1, maxLength: 3 });
  }
  const as = (value: string) => (field.is === 'many' && value !== 'none' ? [value] : value);
  const isFree = ['a: b, and otherwise', '0012', 'low-water'].every((text) => fits(path, as(text)));
  const values = isFree
    ? ODD
    : [...new Set([...(field.words ?? []), ...(field.example === undefined ? [] : [field.example]), ...FORMS])].filter(
        (value) => fits(path, as(value)),
      );
  if (values.length === 0) throw new Error(`no value fits ${path.map(({ key }) => key).join('.')}`);
  const one = fc.constantFrom(...values);
  if (field.is !== 'many') return one;
  return fc.array(one, { minLength: 1, maxLength: 3 }).map((list) => (list.includes('none') ? 'none' : list));
}

/** Whether the facts of a line are read without one of them. */
function problemFree(path: readonly Field[], left: Field): boolean {
  const [top, ...inner] = path;
  if (top === undefined) return true;
  const without = (field: Field, rest: readonly Field[]): Written => {
    const [next, ...more] = rest;
    const fields = 'fields' in field ? field.fields : [];
    const facts = examplesOf(fields.filter((one) => next !== undefined || one.key !== left.key));
    if (next !== undefined) facts[next.key] = without(next, more);
    return field.is === 'list' ? [facts] : facts;
  };
  return problemsOf({ [top.key]: without(top, inner) }).length === 0;
}

/** A reel's entry, with any of its facts in any form that is read. */
export function anyReel(): fc.Arbitrary<string> {
  const fields = FIELDS.reels;
  const facts = fc.record(Object.fromEntries(fields.map((field) => [field.key, valueOf(field, [])])), {
    requiredKeys: ['title', 'status'],
    noNullPrototype: true,
  });
  const body = fc.constantFrom('', 'An account.\n', '=1+1\n\n- a list\n- "of" two, things\n', "'quoted', first\n");
  return fc.tuple(facts, body).map(([some, text]) => textOf(some as Record<string, Written>, text));
}
