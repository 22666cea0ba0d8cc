import type { Diagnostic } from '#model/diagnostic.ts';
import type { Reel } from '#model/reel.ts';

/** The problems of each reel: those that stand in its entry, and those elsewhere that name it. By reel id. */
export function problemsByReel(
  problems: readonly Diagnostic[],
  reels: readonly Reel[],
): ReadonlyMap<string, readonly Diagnostic[]> {
  const idOf = new Map(reels.map((reel) => [reel.file, reel.id]));
  const byReel = new Map<string, Diagnostic[]>();
  for (const problem of problems) {
    const files = new Set([problem.place.file, ...problem.related.map((related) => related.place.file)]);
    for (const file of files) {
      const id = idOf.get(file);
      if (id === undefined) continue;
      const own = byReel.get(id);
      if (own === undefined) byReel.set(id, [problem]);
      else own.push(problem);
    }
  }
  return byReel;
}
