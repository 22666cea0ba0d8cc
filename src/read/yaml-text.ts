import { isListWritten, type Written } from './written-value.ts';

/** How a text was quoted before, which is kept where the new one allows it. */
export type Quoting = 'PLAIN' | 'QUOTE_SINGLE' | 'QUOTE_DOUBLE' | undefined;

/** A character that begins something else than a text, or that YAML reserves. */
const INDICATOR = /^[-?:,[\]{}#&*!|>'"%@`=<~]/u;
/** What another reader of YAML could take for a number, a date, a time, or for nothing. */
const OTHER_TYPE = /^(?:[+.]?[\d][\d.,:_+eExXoO/-]*|\.+|true|false|null|on|off)$/iu;
const UNPRINTABLE = /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\ufeff\ufffe\uffff]/u;

/** A text as a YAML scalar that reads back as exactly it, on one line.
 *
 * @param inFlow  Whether it stands within brackets, where commas and brackets end a text. */
export function yamlScalar(text: string, inFlow: boolean, before?: Quoting): string {
  if (UNPRINTABLE.test(text)) return doubleQuoted(text);
  if (before === 'QUOTE_SINGLE') return `'${text.replaceAll("'", "''")}'`;
  if (before === 'QUOTE_DOUBLE' || !canBePlain(text, inFlow)) return doubleQuoted(text);
  return text;
}

function canBePlain(text: string, inFlow: boolean): boolean {
  if (text === '' || text !== text.trim() || INDICATOR.test(text) || OTHER_TYPE.test(text)) return false;
  if (/:(?:\s|$)|\s#/u.test(text)) return false;
  return !inFlow || !/[,[\]{}]/u.test(text);
}

function doubleQuoted(text: string): string {
  const escaped = JSON.stringify(text);
  return escaped.replace(/[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/gu, (sign) => {
    return `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`;
  });
}

/** A value on one line, within brackets where it has parts. */
export function flowText(value: Written, inFlow = false): string {
  if (typeof value === 'string') return yamlScalar(value, inFlow);
  if (isListWritten(value)) return `[${value.map((item) => flowText(item, true)).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, inner]) => pairText(key, inner as Written));
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

/** A key and its value within brackets. */
export const pairText = (key: string, value: Written): string => `${yamlScalar(key, true)}: ${flowText(value, true)}`;

/** What follows a key and its colon on lines of its own: a map as a key a line, a list of maps as an item a line, and
 * anything else behind the colon.
 *
 * @param column  The key's own; from 0. */
export function blockText(value: Written, column: number): string {
  if (typeof value === 'string') return ` ${yamlScalar(value, false)}`;
  const inner = ' '.repeat(column + 2);
  if (isListWritten(value)) {
    if (value.every((item) => typeof item === 'string')) return ` ${flowText(value)}`;
    return value.map((item) => `\n${inner}- ${flowText(item)}`).join('');
  }
  return Object.entries(value)
    .map(([key, item]) => `\n${inner}${yamlScalar(key, false)}: ${flowText(item as Written)}`)
    .join('');
}
