import { expect, test } from 'vitest';
import { parseFrontMatter } from '#read/yaml.ts';
import { readFacts } from '#validate/read-facts.ts';
import type { Field } from '../../src/desk/fields/field.ts';
import { FIELDS, keyOrder } from '../../src/desk/fields/kinds.ts';
import { SCHEMAS } from './schemas.ts';

const KINDS = Object.keys(SCHEMAS) as (keyof typeof SCHEMAS)[];

test.each(KINDS)('the desk asks for every key of %s that is read, and for no other', (kind) => {
  expect([...keyOrder(kind)].sort()).toEqual([...SCHEMAS[kind].keysBelow].sort());
});

/** Of these `none` is read, and says nothing that leaving them out doesn't. */
const NOBODY_ASKS = ['accepted', 'private', 'reels'];

/** Each field as a line of an entry in which it alone says `none`. */
const withNone = (fields: readonly Field[], around: (inner: string) => string): { field: Field; yaml: string }[] =>
  fields.flatMap((field) => [
    { field, yaml: around(`${field.key}: none`) },
    ...('fields' in field
      ? withNone(field.fields, (inner) =>
          around(`${field.key}: ${field.is === 'list' ? `[{ ${inner} }]` : `{ ${inner} }`}`),
        )
      : []),
  ]);

test.each(KINDS)('of %s, “known to be none” is offered where it is read, and nowhere else', (kind) => {
  for (const { field, yaml } of withNone(FIELDS[kind], (inner) => inner)) {
    const { root } = parseFrontMatter(`${yaml}\n`, '');
    if (root === undefined) throw new Error(yaml);
    const { problems } = readFacts<unknown>(SCHEMAS[kind], root);
    // A missing key beside it is no news about none.
    const refused = problems.filter(({ code, found }) => code === 'entry/bad-value' && found.includes('none'));
    const chosen = field.is !== 'one' || field.words !== undefined;
    if (field.none === true) expect(refused, yaml).toEqual([]);
    else if (chosen && field.is !== 'free' && !NOBODY_ASKS.includes(field.key)) expect(refused, yaml).not.toEqual([]);
  }
});
