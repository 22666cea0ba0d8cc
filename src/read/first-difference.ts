import { isListWritten, isMapWritten, sameWritten, type Written, type WrittenPath } from './written-value.ts';

/** The smallest step that brings one value nearer to another. */
export type Step =
  | { readonly is: 'put'; readonly path: WrittenPath; readonly value: Written }
  | { readonly is: 'insert'; readonly path: WrittenPath; readonly value: Written }
  | { readonly is: 'remove'; readonly path: WrittenPath };

/** The first step from what is written to what is to be written; undefined when they say the same. */
export function firstDifference(from: Written, to: Written, path: WrittenPath = []): Step | undefined {
  if (sameWritten(from, to)) return undefined;
  if (isMapWritten(from) && isMapWritten(to)) return inMap(from, to, path);
  if (isListWritten(from) && isListWritten(to)) return inList(from, to, path);
  return { is: 'put', path, value: to };
}

type WrittenMap = Readonly<Record<string, Written>>;

function inMap(from: WrittenMap, to: WrittenMap, path: WrittenPath): Step | undefined {
  for (const [key, before] of Object.entries(from)) {
    const after = Object.hasOwn(to, key) ? to[key] : undefined;
    if (after !== undefined && !sameWritten(before, after)) return firstDifference(before, after, [...path, key]);
  }
  // What is new comes before what goes: a map must not be empty between the two.
  for (const [key, value] of Object.entries(to)) {
    if (!Object.hasOwn(from, key)) return { is: 'insert', path: [...path, key], value };
  }
  const gone = Object.keys(from).find((key) => !Object.hasOwn(to, key));
  return gone === undefined ? undefined : { is: 'remove', path: [...path, gone] };
}

function inList(from: readonly Written[], to: readonly Written[], path: WrittenPath): Step | undefined {
  let at = 0;
  while (at < from.length && at < to.length && sameWritten(from[at], to[at])) at++;
  let tail = 0;
  while (tail < Math.min(from.length, to.length) - at && sameWritten(from.at(-1 - tail), to.at(-1 - tail))) tail++;
  const before = from[at];
  const after = to[at];
  if (to.length - tail > at && from.length - tail > at && before !== undefined && after !== undefined)
    return firstDifference(before, after, [...path, at]);
  if (after !== undefined && to.length - tail > at) return { is: 'insert', path: [...path, at], value: after };
  return { is: 'remove', path: [...path, at] };
}
