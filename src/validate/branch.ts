import { z } from 'zod';
import type { Fact } from '#model/fact.ts';
import type { Place } from '#model/place.ts';
import type { Node } from '#read/tree.ts';
import { isNone, NONE, refuse } from './leaf.ts';
import { report, type Trouble } from './trouble.ts';

/** Every key of T, so that a schema that forgets one doesn't compile; a value may still be undefined. */
export type Complete<T> = { [K in keyof Required<T>]: T[K] };

/** A schema of a map, which knows its keys for messages: `format`, `format.speed`, … */
export type MapSchema<T> = z.ZodType<T> & { readonly keysBelow: readonly string[] };

type Context = z.core.ParsePayload;

/** A map with these keys and no other.
 *
 * @param build      From the values under our keys, as written in entries, to the model.
 * @param shorthand  The key that is meant when one text stands in place of the map. */
export function mapOf<S extends z.core.$ZodShape, T>(
  shape: S,
  build: (fields: z.output<z.ZodObject<S, z.core.$strict>>, place: Place) => Complete<T>,
  shorthand?: keyof S & string,
): MapSchema<T> {
  const strict = z.strictObject(shape);
  const known = Object.keys(shape);
  const schema = z.transform<unknown, T>((input, ctx) => {
    const node = input as Node | undefined;
    const fields = node === undefined ? {} : fieldsOf(node, known, ctx, shorthand);
    if (fields === undefined) return undefined as never;
    const answer = strict.safeParse(fields);
    if (answer.success) return build(answer.data, (node ?? NOWHERE).place) as T;
    for (const issue of answer.error.issues) passOn(issue, known, ctx);
    return undefined as never;
  });
  return Object.assign(schema, { keysBelow: keysOf(shape) }) as unknown as MapSchema<T>;
}

const NOWHERE = { place: { file: '', line: 1, column: 1, field: '' } } as const;

function fieldsOf(node: Node, known: readonly string[], ctx: Context, shorthand: string | undefined) {
  if (node.is === 'map') return node.fields;
  if (node.is === 'scalar' && shorthand !== undefined) return { [shorthand]: node };
  const what = node.is === 'list' ? 'A list' : 'A single text';
  return refuse(ctx, {
    message: `${what} stands where facts under keys are read.`,
    expected: `keys such as ${known.slice(0, 4).join(', ')}`,
    action: 'Write a key, a colon and its value for each fact, set in under this one.',
  });
}

function passOn(issue: z.core.$ZodIssue, known: readonly string[], ctx: Context) {
  if (issue.code !== 'unrecognized_keys') {
    ctx.issues.push({ ...issue, input: undefined } as z.core.$ZodRawIssue);
    return;
  }
  for (const key of issue.keys) report(ctx, { is: 'unknown-key', known } satisfies Trouble, [...issue.path, key]);
}

function keysOf(shape: z.core.$ZodShape): string[] {
  return Object.entries(shape).flatMap(([key, schema]) => [key, ...below(schema).map((inner) => `${key}.${inner}`)]);
}

function below(schema: z.core.$ZodType): readonly string[] {
  const inner = schema instanceof z.ZodOptional ? schema.unwrap() : schema;
  return 'keysBelow' in inner ? (inner as MapSchema<unknown>).keysBelow : [];
}

/** A list of maps, one map by itself, or the word `none`. An empty list records nothing. */
export function listOf<T>(schema: MapSchema<T>) {
  const list = z.transform<unknown, Fact<readonly T[]> | undefined>((input, ctx) => {
    const node = input as Node;
    const place = node.place;
    if (isNone(node)) return { is: 'none', written: NONE, place };
    const nodes: readonly (Node | undefined)[] = node.is === 'list' ? node.items : [node];
    const value: T[] = [];
    for (const [index, item] of nodes.entries()) {
      const path = node.is === 'list' ? [index] : [];
      if (item === undefined)
        refuse(
          ctx,
          {
            message: 'An item of the list is empty.',
            expected: 'facts under keys',
            action: 'Take the empty item away.',
          },
          path,
        );
      else into(value, schema, item, ctx, path);
    }
    return nodes.length === 0 ? undefined : { is: 'known', value, written: '', place };
  });
  return Object.assign(list, { keysBelow: schema.keysBelow });
}

function into<T>(value: T[], schema: MapSchema<T>, item: Node, ctx: Context, path: readonly PropertyKey[]) {
  const answer = schema.safeParse(item);
  if (answer.success) value.push(answer.data);
  else
    for (const issue of answer.error.issues)
      ctx.issues.push({ ...issue, path: [...path, ...issue.path] } as z.core.$ZodRawIssue);
}

/** A map, or the word `none`. */
export function factOf<T>(schema: MapSchema<T>) {
  const either = z.transform<unknown, Fact<T>>((input, ctx) => {
    const node = input as Node;
    if (isNone(node)) return { is: 'none', written: NONE, place: node.place };
    const value: T[] = [];
    into(value, schema, node, ctx, []);
    const [only] = value;
    return only === undefined ? (undefined as never) : { is: 'known', value: only, written: '', place: node.place };
  });
  return Object.assign(either, { keysBelow: schema.keysBelow });
}
