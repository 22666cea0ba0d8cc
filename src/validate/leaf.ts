import { z } from 'zod';
import type { Fact, Known } from '#model/fact.ts';
import type { Node } from '#read/tree.ts';
import type { Parser, Refusal } from './scalars/parsed.ts';
import { report } from './trouble.ts';

type Context = z.core.ParsePayload;

/** A value that must be there, written as one text. `none` is no answer to it.
 *
 * @param example  What to write when it is missing. */
export function known<T>(parse: Parser<T>, example = 'a value') {
  return z.transform<unknown, Known<T>>((input, ctx) => {
    const node = input as Node | undefined;
    return node === undefined ? report(ctx, { is: 'missing', expected: example }) : read(node, parse, ctx);
  });
}

/** A value, or the word `none`. */
export function fact<T>(parse: Parser<T>) {
  return z.transform<unknown, Fact<T>>((input, ctx) => {
    const node = input as Node;
    if (isNone(node)) return { is: 'none', written: NONE, place: node.place };
    return read(node, parse, ctx);
  });
}

/** A list of values, one value by itself, or the word `none`, alone or as the list's only item. An empty list records
 * nothing; `undefined` is what it gives. */
export function many<T>(parse: Parser<T>) {
  return z.transform<unknown, Fact<readonly Known<T>[]> | undefined>((input, ctx) => {
    const node = input as Node;
    const listed = items(node, parse, ctx);
    return listed?.is === 'known' && listed.value.length === 0 ? undefined : listed;
  });
}

/** Like `many`, but it must be there, and an empty list is an answer. */
export function neededMany<T>(parse: Parser<T>, example: string) {
  return z.transform<unknown, Fact<readonly Known<T>[]>>((input, ctx) => {
    const node = input as Node | undefined;
    return node === undefined ? report(ctx, { is: 'missing', expected: example }) : items(node, parse, ctx);
  });
}

/** A list of which nobody asks whether it is known to be empty. */
export function plainMany<T>(parse: Parser<T>) {
  return z.transform<unknown, readonly Known<T>[]>((input, ctx) => {
    const node = input as Node | undefined;
    if (node === undefined) return [];
    const listed = items(node, parse, ctx);
    return listed?.is === 'known' ? listed.value : [];
  });
}

function items<T>(node: Node, parse: Parser<T>, ctx: Context): Fact<readonly Known<T>[]> {
  if (node.is === 'map') return refuse(ctx, notAText(node));
  const place = node.place;
  if (isNone(node)) return { is: 'none', written: NONE, place };
  if (node.is === 'scalar') return { is: 'known', value: [read(node, parse, ctx)], written: node.text, place };
  const [first] = node.items;
  if (node.items.length === 1 && isNone(first)) return { is: 'none', written: NONE, place };
  const value: Known<T>[] = [];
  for (const [index, item] of node.items.entries()) {
    if (item === undefined) refuse(ctx, EMPTY_ITEM, [index]);
    else if (isNone(item)) refuse(ctx, NONE_BESIDE_OTHERS, [index]);
    else value.push(read(item, parse, ctx, [index]));
  }
  return { is: 'known', value, written: value.map((item) => item?.written).join(', '), place };
}

function read<T>(node: Node, parse: Parser<T>, ctx: Context, path: readonly PropertyKey[] = []): Known<T> {
  if (node.is !== 'scalar') return refuse(ctx, notAText(node), path);
  const answer = parse(node.text);
  if (!answer.ok) return refuse(ctx, answer, path);
  return { is: 'known', value: answer.value, written: node.text, place: node.place };
}

/** The word that says that a fact is known to be none. */
export const NONE = 'none';
export const isNone = (node: Node | undefined): boolean => node?.is === 'scalar' && node.text === NONE;

export function refuse(ctx: Context, refusal: Omit<Refusal, 'ok'>, path: readonly PropertyKey[] = []): never {
  return report(ctx, { is: 'bad-value', refusal }, path);
}

const EMPTY_ITEM = {
  message: 'An item of the list is empty.',
  expected: 'a value',
  action: 'Take the empty item away.',
} as const;

const NONE_BESIDE_OTHERS = {
  message: '"none" stands beside other values.',
  expected: 'none by itself, or the values',
  action: 'Take one or the other away.',
} as const;

function notAText(node: Node) {
  const what = node.is === 'list' ? 'A list' : 'A map';
  // An unquoted [x] or {x} at the start of a value is YAML for a list or a map.
  const action = 'Write one value; put it in quotes if it begins with [ or {, or has a colon and a space in it.';
  return { message: `${what} stands where one text is read.`, expected: 'one text', action } as const;
}
