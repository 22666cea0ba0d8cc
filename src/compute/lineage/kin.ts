import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { keeping } from '../kept.ts';

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
  let at = 0;
  for (const entry of [...reels, ...editions]) {
    const { namesReels, namesEditions } = names(entry, [], () => named(entry));
    for (const id of namesReels) join(at, reelAt.get(id));
    for (const id of namesEditions) join(at, editionAt.get(id));
    at += 1;
  }
  const kins = new Map<number, { reels: Reel[]; editions: Edition[] }>();
  const kinAt = (at: number) => {
    const top = topOf(at);
    const known = kins.get(top) ?? { reels: [], editions: [] };
    if (known.reels.length + known.editions.length === 0) kins.set(top, known);
    return known;
  };
  for (const [index, reel] of reels.entries()) kinAt(index).reels.push(reel);
  for (const [index, edition] of editions.entries()) kinAt(reels.length + index).editions.push(edition);
  return [...kins.values()];
}

interface Names {
  readonly namesReels: readonly string[];
  readonly namesEditions: readonly string[];
}

const names = keeping<Reel | Edition, Names>();

/** What of either kind an entry names, where a link may come of it. */
function named(entry: Reel | Edition): Names {
  if (entry.folder === 'reels') {
    return {
      namesReels: [...itemsOf(entry.copiedFrom), ...itemsOf(entry.copyLog).map(({ reel }) => reel)].flatMap(idOf),
      namesEditions: [...itemsOf(entry.editions), ...itemsOf(entry.cuts).map(({ edition }) => edition)].flatMap(idOf),
    };
  }
  return {
    namesReels: itemsOf(entry.sides).flatMap(({ reel }) => idOf(reel)),
    namesEditions: itemsOf(entry.reissueOf).flatMap(idOf),
  };
}

const idOf = (ref: Known<string> | undefined): readonly string[] => (ref === undefined ? [] : [ref.value]);
