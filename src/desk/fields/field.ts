import type { EntryKind } from '#model/words.ts';

interface Named {
  /** As it stands in the entry. */
  readonly key: string;
  /** What the trade calls it. */
  readonly label: string;
  /** That `none` may stand there, for known to be none. */
  readonly none?: boolean;
}

/** One text: free, one of a list of words, or the id of another entry. */
export interface OneField extends Named {
  readonly is: 'one';
  readonly words?: readonly string[];
  readonly refers?: EntryKind;
  /** That it names a file beside the entry. */
  readonly file?: boolean;
  /** That it names facts, by their dotted keys. */
  readonly facts?: boolean;
  /** A form that is read. */
  readonly example?: string;
}

/** Several texts, or one. */
export interface ManyField extends Omit<OneField, 'is'> {
  readonly is: 'many';
}

/** Facts under keys of their own: once, or a line each. */
export interface GroupField extends Named {
  readonly is: 'map' | 'list';
  readonly fields: readonly Field[];
  /** The key that is meant when one text stands in place of the facts. */
  readonly short?: string;
}

/** Keys of the owner's own. */
export interface FreeField extends Named {
  readonly is: 'free';
  /** Keys that are offered. */
  readonly keys?: readonly string[];
  /** That texts alone may stand under the keys, or one text in their place. */
  readonly texts?: boolean;
}

/** How a fact is entered. The description is the same for the page's forms, for the list of facts that a reading may be
 * of, and for the order in which new keys are written. */
export type Field = OneField | ManyField | GroupField | FreeField;

type How =
  | string
  | readonly string[]
  | { readonly refers: EntryKind }
  | { readonly file: true; readonly example: string }
  | { readonly facts: true; readonly example: string };

function how(given: How | undefined) {
  if (given === undefined) return {};
  if (typeof given === 'string') return { example: given };
  return Array.isArray(given) ? { words: given as readonly string[] } : (given as object);
}

/** @param by  An example, the words to choose from, or what is named: an entry of a kind, a file, facts. */
export const one = (key: string, label: string, by?: How): OneField => ({ is: 'one', key, label, ...how(by) });
export const many = (key: string, label: string, by?: How): ManyField => ({
  is: 'many',
  key,
  label,
  none: true,
  ...how(by),
});
export const map = (key: string, label: string, fields: readonly Field[], short?: string): GroupField => ({
  is: 'map',
  key,
  label,
  fields,
  ...(short === undefined ? {} : { short }),
});
export const list = (key: string, label: string, fields: readonly Field[], short?: string): GroupField => ({
  ...map(key, label, fields, short),
  is: 'list',
  none: true,
});
export const free = (key: string, label: string, more: Pick<FreeField, 'keys' | 'texts'> = {}): FreeField => ({
  is: 'free',
  key,
  label,
  ...more,
});

/** Fields of which it may be said that there is known to be none. */
export const orNone = <F extends Field>(...fields: readonly F[]): readonly F[] =>
  fields.map((field) => ({ ...field, none: true }));
/** Fields of which nobody asks that. */
export const neverNone = <F extends Field>(field: F): F => ({ ...field, none: false });

/** A field's key and those under it, dotted, in order. */
export const keysOf = (fields: readonly Field[], above = ''): readonly string[] =>
  fields.flatMap((field) => {
    const key = `${above}${field.key}`;
    return 'fields' in field ? [key, ...keysOf(field.fields, `${key}.`)] : [key];
  });
