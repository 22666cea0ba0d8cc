import { type Parsed, parsed, quoted, refused } from './parsed.ts';

const WORDS: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['no', false],
]);

/** `yes` or `no`. */
export function parseYesNo(text: string): Parsed<boolean> {
  const value = WORDS.get(text.toLowerCase());
  if (value !== undefined) return parsed(value);
  const meant = { true: 'yes', false: 'no' }[text.toLowerCase()];
  const action = meant === undefined ? 'Write yes or no, or leave the key out if it is not known.' : `Write ${meant}.`;
  return refused(`${quoted(text)} is neither yes nor no.`, 'yes, or no', action);
}
