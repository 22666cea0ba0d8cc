import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** A SHA-256 in 64 hexadecimal figures. */
export function parseSha256(text: string): Parsed<string> {
  if (/^[0-9a-f]{64}$/iu.test(text)) return parsed(text.toLowerCase());
  return refused(
    `${quoted(text)} isn't a SHA-256.`,
    '64 figures from 0 to 9 and a to f',
    'Take it again from the program that made it.',
  );
}
