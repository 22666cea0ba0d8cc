import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';

/** Reels and editions that name one another, straight or over others: no link leads from one kin to another. */
export interface Kin {
  /** In order of id. */
  readonly reels: readonly Reel[];
  /** In order of id. */
  readonly editions: readonly Edition[];
}

/** A collection cut into kins. Every reel and every edition is in just one; in the order of their first reels, then of
 * their first editions.
 *
 * Sets joined by whatever names an entry, each found by the highest above it. Source: R. Tarjan, Efficiency of a good
 * but not linear set union algorithm, Journal of the ACM 22, 1975. */
export function kinsOf({ reels, editions }: Pick<Entries, 'reels' | 'editions'>): readonly Kin[] {
  const reelAt = new Map(reels.map((reel, at) => [reel.id, at]));
  const editionAt = new Map(editions.map((edition, at) => [edition.id, reels.length + at]));
  const above = Array.from({ length: reels.length + editions.length }, (_, at) => at);
  const topOf = (at: number): number => {
    let top = at;
    for (let next = above[top] ?? top; next !== top; next = above[top] ?? top) {
      above[top] = above[next] ?? next;
      top = next;
    }
    return top;
  };
  const join = (at: number, other: number | undefined) => {
    if (other !== undefined) above[topOf(other)] = topOf(at);
  };
  for (const [at, reel] of reels.entries()) {
    for (const parent of itemsOf(reel.copiedFrom)) join(at, reelAt.get(parent.value));
    for (const { reel: copy } of itemsOf(reel.copyLog)) if (copy !== undefined) join(at, reelAt.get(copy.value));
    for (const edition of itemsOf(reel.editions)) join(at, editionAt.get(edition.value));
    for (const { edition } of itemsOf(reel.cuts)) if (edition !== undefined) join(at, editionAt.get(edition.value));
  }
  for (const [index, edition] of editions.entries()) {
    const at = reels.length + index;
    for (const earlier of itemsOf(edition.reissueOf)) join(at, editionAt.get(earlier.value));
    for (const { reel } of itemsOf(edition.sides)) if (reel !== undefined) join(at, reelAt.get(reel.value));
  }
  const kins = new Map<number, { reels: Reel[]; editions: Edition[] }>();
  const kinAt = (at: number) => {
    const top = topOf(at);
    const known = kins.get(top) ?? { reels: [], editions: [] };
    if (known.reels.length + known.editions.length === 0) kins.set(top, known);
    return known;
  };
  for (const [at, reel] of reels.entries()) kinAt(at).reels.push(reel);
  for (const [at, edition] of editions.entries()) kinAt(reels.length + at).editions.push(edition);
  return [...kins.values()];
}
