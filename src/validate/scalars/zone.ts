import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** How far the clock of a logger was ahead of UTC: `+02:00`, `-05:00`, `Z`. */
export function parseZone(text: string): Parsed<string> {
  if (text === 'Z' || text === 'UTC') return parsed('+00:00');
  if (/^[+-](?:0\d|1[0-4]):[0-5]\d$/u.test(text)) return parsed(text);
  return refused(
    `${quoted(text)} isn't an offset from UTC.`,
    '+02:00, or Z',
    'Write the sign, two figures, a colon and two figures.',
  );
}
