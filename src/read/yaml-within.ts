import type { Scalar } from 'yaml';
import { isBlockScalar, type Splice } from './yaml-splice.ts';

/** A change within a text that is written on several lines, so that its other lines stay. undefined where it can't be told
 * which letter of the text stands where, as in quotes with escapes.
 *
 * The letters are found by counting those that are no blanks: line ends and indents may stand for blanks, or for nothing.
 *
 * @param yaml  The whole front matter.
 * @param end   Just past the last character of the text in it. */
export function withinText(
  yaml: string,
  node: Scalar.Parsed,
  end: number,
  before: string,
  after: string,
): Splice | undefined {
  const from = node.range[0];
  const raw = yaml.slice(from, end);
  const literal = node.type === 'BLOCK_LITERAL';
  if (!raw.includes('\n') || /^'.*''|^".*\\/su.test(raw)) return undefined;
  const quote = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE' ? 1 : 0;
  const starts = lettersIn(raw, isBlockScalar(node) ? raw.indexOf('\n') : quote, raw.length - quote);
  const letters = lettersIn(before, 0, before.length);
  if (letters.length !== starts.length || letters.some((at, count) => before[at] !== raw[starts[count] ?? -1]))
    return undefined;
  const { same, rest } = common(before, after);
  // The letter that the change comes behind, and the one that it comes before; blanks that stay are left with them.
  const last = letters.findLastIndex((at) => at < same);
  const next = letters.findIndex((at) => at >= before.length - rest);
  const keepsBlanks = last + 1 < letters.length && letters[last + 1] === same;
  const startsAt = keepsBlanks ? starts[last + 1] : (starts[last] ?? NaN) + 1;
  const keepsRest = next > 0 && (letters[next - 1] ?? 0) + 1 === before.length - rest;
  const endsAt = next < 0 ? raw.length - quote : keepsRest ? (starts[next - 1] ?? NaN) + 1 : starts[next];
  const textFrom = keepsBlanks ? same : (letters[last] ?? -1) + 1;
  const textTo = next < 0 ? before.length : keepsRest ? before.length - rest : (letters[next] ?? 0);
  const put = after.slice(textFrom, after.length - (before.length - textTo));
  if (startsAt === undefined || endsAt === undefined || Number.isNaN(startsAt) || Number.isNaN(endsAt))
    return undefined;
  if (endsAt < startsAt || (put.includes('\n') && !literal)) return undefined;
  const indent = /\n( *)\S/u.exec(raw)?.[1] ?? '';
  return { start: from + startsAt, end: from + endsAt, text: put.replaceAll('\n', `\n${indent}`) };
}

/** Where the characters of a text are that are no blanks. */
function lettersIn(text: string, from: number, to: number): readonly number[] {
  const letters: number[] = [];
  for (let at = from; at < to; at++) if (!/\s/u.test(text[at] ?? '')) letters.push(at);
  return letters;
}

/** How many characters two texts have in common at their beginning, and at their end. */
export function common(before: string, after: string): { readonly same: number; readonly rest: number } {
  const most = Math.min(before.length, after.length);
  let same = 0;
  while (same < most && before[same] === after[same]) same++;
  let rest = 0;
  while (rest < most - same && before.at(-1 - rest) === after.at(-1 - rest)) rest++;
  return { same, rest };
}
