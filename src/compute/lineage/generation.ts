import { valueOf } from '#model/fact.ts';
import type { Generation } from '#model/lineage.ts';
import type { Reel } from '#model/reel.ts';
import type { Kind } from '#model/words.ts';

/** First tapes: nothing earlier holds this programme as it is heard. An original master mixed from session tapes is
 * one too. Common practice, no source. */
const FIRST_KINDS: readonly Kind[] = ['session tape', 'original master'];

interface Counted {
  readonly shortest: number | null;
  readonly longest: number | null;
  readonly unknown: ReadonlySet<string>;
}

/** The generation of each reel over all known paths from a first tape, which is 1.
 *
 * A copy is its parent's plus one. A production master assembled from originals may be 1 or 2: its shortest takes the
 * originals as they are, its longest counts a copy. A reel whose parent nobody knows is an unknown link, counted once
 * however many paths lead over it. In a ring nothing is counted.
 *
 * @param parentsOf   the known parents of a reel, stated or logged, by id.
 * @param inRing      the reels that lie on a ring of copies. */
export function countGenerations(
  reels: readonly Reel[],
  parentsOf: (id: string) => readonly string[],
  inRing: ReadonlySet<string>,
): ReadonlyMap<string, Generation> {
  const byId = new Map(reels.map((reel) => [reel.id, reel]));
  const counted = new Map<string, Counted>();
  for (const reel of reels) {
    const waiting = [reel.id];
    for (let id = waiting.at(-1); id !== undefined; id = waiting.at(-1)) {
      const parents = parentsOf(id).filter((parent) => byId.has(parent));
      const pending = inRing.has(id) || counted.has(id) ? [] : parents.filter((parent) => !counted.has(parent));
      if (pending.length > 0) {
        waiting.push(...pending);
        continue;
      }
      waiting.pop();
      if (!counted.has(id)) counted.set(id, count(id, byId, parents, counted, inRing));
    }
  }
  return new Map(reels.map((reel) => [reel.id, generationOf(reel, counted.get(reel.id))]));
}

function generationOf(reel: Reel, counted: Counted | undefined): Generation {
  return {
    shortest: counted?.shortest ?? null,
    longest: counted?.longest ?? null,
    unknownLinks: counted?.unknown.size ?? 0,
    stated: reel.generation?.value ?? null,
  };
}

function count(
  id: string,
  byId: ReadonlyMap<string, Reel>,
  parents: readonly string[],
  counted: ReadonlyMap<string, Counted>,
  inRing: ReadonlySet<string>,
): Counted {
  const reel = byId.get(id);
  if (reel === undefined || inRing.has(id)) return { shortest: null, longest: null, unknown: new Set([id]) };
  if (isFirst(reel, parents, byId)) return { shortest: 1, longest: 1, unknown: new Set() };
  if (parents.length === 0) return { shortest: null, longest: null, unknown: new Set([id]) };
  const known = parents.map((parent) => ({
    kind: valueOf(byId.get(parent)?.kind),
    ...(counted.get(parent) ?? NOTHING),
  }));
  const assembled = valueOf(reel.kind) === 'production master';
  const steps = (kind: Kind | undefined) => (assembled && kind !== undefined && FIRST_KINDS.includes(kind) ? 0 : 1);
  return {
    shortest: least(known.flatMap((one) => (one.shortest === null ? [] : [one.shortest + steps(one.kind)]))),
    longest: most(known.flatMap((one) => (one.longest === null ? [] : [one.longest + 1]))),
    unknown: union(known.map((one) => one.unknown)),
  };
}

const NOTHING: Counted = { shortest: null, longest: null, unknown: new Set() };

/** Known to be a first tape: it says so, or it is of a first kind and nothing but first tapes went into it. */
function isFirst(reel: Reel, parents: readonly string[], byId: ReadonlyMap<string, Reel>): boolean {
  if (reel.copiedFrom?.is === 'none' && parents.length === 0) return true;
  const kind = valueOf(reel.kind);
  if (kind === undefined || !FIRST_KINDS.includes(kind)) return false;
  return parents.every((parent) => {
    const parentKind = valueOf(byId.get(parent)?.kind);
    return parentKind === undefined || FIRST_KINDS.includes(parentKind);
  });
}

/** Shares the set where only one parent has one, so that a long chain costs nothing. */
function union(sets: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  const full = [...new Set(sets.filter((set) => set.size > 0))];
  const [first, ...others] = full;
  if (first === undefined) return new Set();
  return others.length === 0 ? first : new Set(full.flatMap((set) => [...set]));
}

const least = (numbers: readonly number[]) => (numbers.length === 0 ? null : Math.min(...numbers));
const most = (numbers: readonly number[]) => (numbers.length === 0 ? null : Math.max(...numbers));
