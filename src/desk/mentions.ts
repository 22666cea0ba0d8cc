import { isListWritten, isMapWritten, type Written, type WrittenPath } from '#read/written-value.ts';
import type { Field, ManyField, OneField } from './fields/field.ts';

/** One text of an entry, and where it stands. */
export interface Mention {
  readonly path: WrittenPath;
  readonly text: string;
}

/** The texts of an entry that stand in fields of a certain sort, in the order in which they are asked for. A text that
 * stands in place of a group's facts is the fact that it is short for. */
export function textsIn(
  fields: readonly Field[],
  facts: Written | undefined,
  fits: (field: OneField | ManyField, text: string, path: WrittenPath) => boolean,
  above: WrittenPath = [],
): readonly Mention[] {
  if (!isMapWritten(facts)) return [];
  const ofTexts = (field: OneField | ManyField, value: Written, path: WrittenPath): readonly Mention[] => {
    if (typeof value === 'string') return fits(field, value, path) ? [{ path, text: value }] : [];
    return isListWritten(value) ? value.flatMap((item, at) => ofTexts(field, item, [...path, at])) : [];
  };
  const ofGroup = (
    field: Extract<Field, { fields: unknown }>,
    value: Written,
    path: WrittenPath,
  ): readonly Mention[] => {
    if (isListWritten(value)) return value.flatMap((item, at) => ofGroup(field, item, [...path, at]));
    if (typeof value !== 'string') return textsIn(field.fields, value, fits, path);
    const short = field.fields.find(({ key }) => key === field.short);
    return short !== undefined && (short.is === 'one' || short.is === 'many') ? ofTexts(short, value, path) : [];
  };
  return fields.flatMap((field) => {
    const value = facts[field.key];
    if (value === undefined || field.is === 'free') return [];
    return 'fields' in field
      ? ofGroup(field, value, [...above, field.key])
      : ofTexts(field, value, [...above, field.key]);
  });
}
