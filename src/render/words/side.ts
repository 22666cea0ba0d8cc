import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { listed } from './number.ts';

/** A reel's short name within its set: `side 1`, `sides 1 and 2`, `safety copy`, `reel`. */
export function sideWords(reel: Reel): string {
  const sides = itemsOf(reel.sides).map((side) => side.value);
  if (valueOf(reel.kind) === 'safety copy') return ['safety', listed(sides)].filter(Boolean).join(' ');
  if (sides.length === 0) return 'reel';
  const word = valueOf(reel.kind) === 'running master' ? 'prog.' : 'side';
  return sides.length === 1 ? `${word} ${sides[0]}` : `${word}s ${listed(sides)}`;
}
