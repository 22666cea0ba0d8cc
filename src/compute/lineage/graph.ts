import { byText } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import type { Edge, EditionLineage, Generation, Lineage, NodeId, Proposal, ReelLineage } from '#model/lineage.ts';
import type { Reel } from '#model/reel.ts';
import { keeping, keepingEqual } from '../kept.ts';
import { knownEdges, withProposals } from './edges.ts';
import { editionLineages } from './edition-lineage.ts';
import { countGenerations } from './generation.ts';
import { type Kin, kinsOf } from './kin.ts';
import { proposeMatches } from './match.ts';
import { reelOf } from './nodes.ts';
import { findRings } from './rings.ts';

/** What was copied from what, over the whole collection: reels, the lacquers cut from them, editions and reissues on
 * one graph; each reel's generation; the rings that can't be; and the copy-log lines that fit a reel nobody linked.
 *
 * Each kin is traced by itself, and one whose entries are the same objects as the last time keeps what was found. */
export function traceLineage(entries: Entries): Lineage {
  const kins = kinsOf(entries).map(traced);
  const known = kins.flatMap((kin) => kin.edges);
  const proposals = keepSame(proposeMatches(entries, known), entries.reels);
  const byReel = new Map(kins.flatMap((kin) => kin.byReel));
  const byEdition = new Map(lineagesOf(kins, proposals).map((one) => [one.edition, one]));
  let edges: readonly Edge[] | undefined;
  return {
    // Few ask for all of them at once, and putting them in order is long work.
    get edges() {
      edges ??= withProposals(known, proposals);
      return edges;
    },
    byReel: new Map(entries.reels.flatMap(({ id }) => pair(id, byReel.get(id)))),
    byEdition: entries.editions.flatMap(({ id }) => byEdition.get(id) ?? []),
    proposals,
    cycles: kins.flatMap((kin) => kin.cycles).sort((a, b) => byText(a.join(' '), b.join(' '))),
  };
}

const pair = <T>(id: string, value: T | undefined): readonly (readonly [string, T])[] =>
  value === undefined ? [] : [[id, value]];

interface TracedKin {
  readonly kin: Kin;
  /** Sorted by from, to. */
  readonly edges: readonly Edge[];
  readonly byReel: readonly (readonly [id: string, lineage: ReelLineage])[];
  /** By the known links alone. */
  readonly byEdition: readonly EditionLineage[];
  readonly cycles: readonly (readonly string[])[];
}

const kept = keeping<object, TracedKin>();

function traced(kin: Kin): TracedKin {
  const members = [...kin.reels, ...kin.editions];
  const [first] = members;
  return first === undefined ? traceKin(kin) : kept(first, members, () => traceKin(kin));
}

function traceKin(kin: Kin): TracedKin {
  const edges = knownEdges(kin);
  const parents = ends(edges, 'to', 'from');
  const children = ends(edges, 'from', 'to');
  const ids = kin.reels.map((reel) => reel.id);
  const cycles = findRings(ids, (id) => children.get(id) ?? []);
  const generations = countGenerations(kin.reels, (id) => parents.get(id) ?? [], new Set(cycles.flat()));
  return {
    kin,
    edges,
    byReel: ids.map((id) => [id, new TracedReel(id, parents, children, generations)]),
    byEdition: editionLineages(kin, { into: by(edges, 'to'), outOf: by(edges, 'from') }),
    cycles,
  };
}

const keptProposals = keepingEqual<Reel, readonly Proposal[]>();

/** The same objects as the last time, where they say the same. */
function keepSame(proposals: readonly Proposal[], reels: readonly Reel[]): readonly Proposal[] {
  if (proposals.length === 0) return proposals;
  const byId = new Map(reels.map((reel) => [reel.id, reel]));
  return [...Map.groupBy(proposals, (one) => one.parent)].flatMap(([id, own]) => {
    const parent = byId.get(id);
    return parent === undefined ? own : keptProposals(parent, own);
  });
}

const keptEditions = keepingEqual<object, EditionLineage>();

/** What each edition came from, in no order; of kins that a proposal joins, by all of their links together. */
function lineagesOf(kins: readonly TracedKin[], proposals: readonly Proposal[]): readonly EditionLineage[] {
  const joined = joinedBy(kins, proposals);
  const notAlone = new Set(joined.flatMap(({ all }) => [...all]));
  const alone = kins.flatMap((kin) => (notAlone.has(kin) ? [] : kin.byEdition));
  const together = joined.flatMap(({ all, by: own }) => {
    const edges = withProposals(
      [...all].flatMap((one) => one.edges),
      own,
    );
    const reels = [...all].flatMap((one) => one.kin.reels);
    const editions = [...all].flatMap((one) => one.kin.editions);
    const found = editionLineages({ reels, editions }, { into: by(edges, 'to'), outOf: by(edges, 'from') });
    return found.map((one, at) => keptEditions(editions[at] ?? one, one));
  });
  return [...alone, ...together];
}

interface Joined {
  readonly all: Set<TracedKin>;
  readonly by: Proposal[];
}

function joinedBy(kins: readonly TracedKin[], proposals: readonly Proposal[]): readonly Joined[] {
  if (proposals.length === 0) return [];
  const kinOf = new Map(kins.flatMap((kin) => kin.byReel.map(([id]) => [id, kin] as const)));
  const groups = new Map<TracedKin, Joined>();
  for (const proposal of proposals) {
    const group: Joined = { all: new Set(), by: [] };
    for (const id of [proposal.parent, proposal.reel]) {
      const kin = kinOf.get(id);
      if (kin === undefined) continue;
      const before = groups.get(kin) ?? { all: new Set([kin]), by: [] };
      if (before.all.isSubsetOf(group.all)) continue;
      for (const one of before.all) group.all.add(one);
      group.by.push(...before.by);
    }
    group.by.push(proposal);
    for (const kin of group.all) groups.set(kin, group);
  }
  return [...new Set(groups.values())];
}

type Ends = ReadonlyMap<string, readonly string[]>;

/** A reel's place in the graph. All that lies above or below it is gathered when it is asked for: for every reel of a
 * long chain at once it would fill the memory. */
class TracedReel implements ReelLineage {
  readonly generation: Generation;
  readonly parents: readonly string[];
  readonly children: readonly string[];
  readonly #id: string;
  readonly #allParents: Ends;
  readonly #allChildren: Ends;

  constructor(id: string, parents: Ends, children: Ends, generations: ReadonlyMap<string, Generation>) {
    this.#id = id;
    this.#allParents = parents;
    this.#allChildren = children;
    this.parents = parents.get(id) ?? [];
    this.children = children.get(id) ?? [];
    this.generation = generations.get(id) ?? { shortest: null, longest: null, unknownLinks: 0, stated: null };
  }

  get ancestors(): readonly string[] {
    return beyond(this.#id, this.#allParents);
  }

  get descendants(): readonly string[] {
    return beyond(this.#id, this.#allChildren);
  }
}

/** All that can be reached, nearest first; the reel itself only where it lies on a ring. */
function beyond(id: string, next: Ends): readonly string[] {
  const reached = new Set(next.get(id) ?? []);
  for (const one of reached) for (const other of next.get(one) ?? []) reached.add(other);
  return [...reached];
}

/** The reels at the other end of each reel's links, in the order of the links. */
function ends(edges: readonly Edge[], here: 'from' | 'to', there: 'from' | 'to'): Ends {
  const found = new Map<string, string[]>();
  for (const edge of edges) {
    const id = reelOf(edge[here]);
    const other = reelOf(edge[there]);
    if (id === undefined || other === undefined) continue;
    const others = found.get(id);
    if (others === undefined) found.set(id, [other]);
    else others.push(other);
  }
  return found;
}

function by(edges: readonly Edge[], end: 'from' | 'to'): (node: NodeId) => readonly Edge[] {
  const found = new Map<NodeId, Edge[]>();
  for (const edge of edges) {
    const others = found.get(edge[end]);
    if (others === undefined) found.set(edge[end], [edge]);
    else others.push(edge);
  }
  return (node) => found.get(node) ?? [];
}
