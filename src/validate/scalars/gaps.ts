import type { Gaps } from '#model/reel.ts';
import { parseDuration } from './duration.ts';
import { type Parsed, parsed } from './parsed.ts';

/** The gaps between titles: one duration for all, or `mixed`. */
export function parseGaps(text: string): Parsed<Gaps> {
  if (text === 'mixed') return parsed({ is: 'mixed' });
  const each = parseDuration(text);
  return each.ok ? parsed({ is: 'each', gapS: each.value }) : { ...each, expected: '3 s, none, or mixed' };
}
