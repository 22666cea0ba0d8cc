import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** A whole number from 1 up: a generation, a number of passes. */
export function parseWholeNumber(text: string): Parsed<number> {
  if (/^[1-9]\d{0,5}$/u.test(text)) return parsed(Number(text));
  return refused(`${quoted(text)} isn't a whole number from 1 up.`, '1, or 2', 'Write it in figures.');
}
