import type { Node } from './tree.ts';

/** What stands in front matter, without its places: texts, lists and maps of them. */
export type Written = string | readonly Written[] | { readonly [key: string]: Written };

/** The steps to a value: keys, and an index into a list. */
export type WrittenPath = readonly (string | number)[];

/** `cuts[1].on` as steps: `['cuts', 1, 'on']`. */
export function pathOf(dotted: string): WrittenPath {
  return dotted.split('.').flatMap((part) => {
    const [key = '', ...indexes] = part.split('[');
    return [key, ...indexes.map((index) => Number.parseInt(index, 10))];
  });
}

/** A part of front matter as it is written. A key with nothing behind it is left out; an empty item is an empty text. */
export function writtenOf(node: Node): Written {
  if (node.is === 'scalar') return node.text;
  if (node.is === 'list') return node.items.map((item) => (item === undefined ? '' : writtenOf(item)));
  const map: Record<string, Written> = Object.create(null);
  for (const [key, value] of Object.entries(node.fields)) if (value !== undefined) map[key] = writtenOf(value);
  return map;
}

export const isMapWritten = (value: Written | undefined): value is { readonly [key: string]: Written } =>
  typeof value === 'object' && !Array.isArray(value);

export const isListWritten = (value: Written | undefined): value is readonly Written[] => Array.isArray(value);

/** Whether two values say the same; the order of a map's keys says nothing. */
export function sameWritten(a: Written | undefined, b: Written | undefined): boolean {
  if (a === b) return true;
  if (isListWritten(a) && isListWritten(b))
    return a.length === b.length && a.every((item, at) => sameWritten(item, b[at]));
  if (!isMapWritten(a) || !isMapWritten(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && sameWritten(a[key], b[key]))
  );
}

/** A value with one part of it changed or, with undefined, taken away. A map or list that loses its last part goes too.
 * Steps that lead through a text replace it. */
export function withChange(
  whole: Written | undefined,
  path: WrittenPath,
  to: Written | undefined,
): Written | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return to;
  if (typeof step === 'number') {
    const list = isListWritten(whole) ? [...whole] : [];
    const item = withChange(list[step], rest, to);
    list.splice(step, 1, ...(item === undefined ? [] : [item]));
    return list.length === 0 ? undefined : list;
  }
  const map: Record<string, Written> = Object.assign(Object.create(null), isMapWritten(whole) ? whole : {});
  const value = withChange(map[step], rest, to);
  if (value === undefined) delete map[step];
  else map[step] = value;
  return Object.keys(map).length === 0 ? undefined : map;
}

/** Without empty texts, lists and maps, which record nothing; undefined when nothing is left. */
export function withoutEmpty(value: Written): Written | undefined {
  if (typeof value === 'string') return value === '' ? undefined : value;
  if (isListWritten(value)) {
    const items = value.map(withoutEmpty).filter((item) => item !== undefined);
    return items.length === 0 ? undefined : items;
  }
  const map: Record<string, Written> = Object.create(null);
  for (const [key, inner] of Object.entries(value)) {
    const kept = withoutEmpty(inner as Written);
    if (kept !== undefined) map[key] = kept;
  }
  return Object.keys(map).length === 0 ? undefined : map;
}
