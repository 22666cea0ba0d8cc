import { byText } from '#model/diagnostic.ts';
import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import { type Edge, HOWS, type How, type NodeId, type Proposal } from '#model/lineage.ts';
import type { Reel } from '#model/reel.ts';
import { orderOf } from '../identifiers/sides.ts';
import { cutNode, editionNode, reelNode } from './nodes.ts';

/** Every link that the entries state or log, between reels, cuts and editions; the same link told twice is one, known
 * the better way, with both reasons. Sorted by from, to. */
export function knownEdges(entries: Pick<Entries, 'reels' | 'editions'>): readonly Edge[] {
  const edges = new EdgeSet();
  const reels = new Set(entries.reels.map((reel) => reel.id));
  const editions = new Set(entries.editions.map((edition) => edition.id));
  for (const reel of entries.reels) {
    addCopies(edges, reel, reels);
    addCuts(edges, reel, editions);
  }
  const byEdition = groupByEdition(entries.reels);
  for (const edition of entries.editions) {
    addRunOuts(edges, edition, byEdition.get(edition.id) ?? []);
    for (const earlier of itemsOf(edition.reissueOf)) {
      if (editions.has(earlier.value)) {
        edges.add(editionNode(earlier.value), editionNode(edition.id), 'stated', `reissue-of in ${edition.file}`);
      }
    }
  }
  for (const edition of entries.editions) addSources(edges, edition, byEdition.get(edition.id) ?? [], reels);
  return edges.sorted();
}

/** The known links with the program's proposals beside them. */
export function withProposals(known: readonly Edge[], proposals: readonly Proposal[]): readonly Edge[] {
  const proposed = proposals.map((one) => ({
    from: reelNode(one.parent),
    to: reelNode(one.reel),
    how: 'proposed' as const,
    because: one.reasons,
  }));
  return [...known, ...proposed].sort(byEnds);
}

const byEnds = (a: Edge, b: Edge): number =>
  byText(a.from, b.from) || byText(a.to, b.to) || HOWS.indexOf(a.how) - HOWS.indexOf(b.how);

function addCopies(edges: EdgeSet, reel: Reel, reels: ReadonlySet<string>): void {
  for (const parent of itemsOf(reel.copiedFrom)) {
    if (reels.has(parent.value)) {
      edges.add(reelNode(parent.value), reelNode(reel.id), 'stated', `copied-from in ${reel.file}`);
    }
  }
  for (const [index, line] of itemsOf(reel.copyLog).entries()) {
    if (line.reel !== undefined && reels.has(line.reel.value)) {
      edges.add(
        reelNode(reel.id),
        reelNode(line.reel.value),
        'logged',
        `line ${index + 1} of the copy log in ${reel.file}`,
      );
    }
  }
}

function addCuts(edges: EdgeSet, reel: Reel, editions: ReadonlySet<string>): void {
  for (const [index, cut] of itemsOf(reel.cuts).entries()) {
    const node = cutNode(reel.id, cut, index);
    edges.add(reelNode(reel.id), node, 'stated', `cuts in ${reel.file}`);
    if (cut.edition !== undefined && editions.has(cut.edition.value)) {
      edges.add(node, editionNode(cut.edition.value), 'stated', `cuts in ${reel.file}`);
    }
  }
}

/** A run-out that carries a cut number joins the edition to that cut, when just one reel of that side has it. */
function addRunOuts(edges: EdgeSet, edition: Edition, reels: readonly Reel[]): void {
  for (const runOut of itemsOf(edition.runOuts)) {
    const { cut, side } = runOut;
    if (cut === undefined || side === undefined) continue;
    const sideReels = reels.filter((reel) =>
      itemsOf(reel.sides).some((one) => orderOf(one.value) === orderOf(side.value)),
    );
    const nodes = sideReels.flatMap((reel) =>
      itemsOf(reel.cuts).flatMap((one, index) =>
        one.number?.value === cut.value ? [cutNode(reel.id, one, index)] : [],
      ),
    );
    const [only, ...others] = nodes;
    if (only !== undefined && others.length === 0) {
      edges.add(
        only,
        editionNode(edition.id),
        'stated',
        `the run-out of side ${side.written} in ${edition.file}: ${runOut.written.written}`,
      );
    }
  }
}

/** Reels that lead straight to an edition: those that its sides name, and, among the reels that name the edition,
 * those from which no cut and no further copy of the same edition leads there. */
function addSources(edges: EdgeSet, edition: Edition, reels: readonly Reel[], known: ReadonlySet<string>): void {
  const node = editionNode(edition.id);
  for (const side of itemsOf(edition.sides)) {
    if (side.reel !== undefined && known.has(side.reel.value) && !hasCutTo(edges, side.reel.value, node)) {
      edges.add(reelNode(side.reel.value), node, 'stated', `side ${side.side.written} in ${edition.file}`);
    }
  }
  const own = new Set(reels.map((reel) => reelNode(reel.id)));
  for (const reel of reels) {
    const copied = edges.from(reelNode(reel.id)).some((edge) => own.has(edge.to));
    if (!copied && !hasCutTo(edges, reel.id, node))
      edges.add(reelNode(reel.id), node, 'stated', `edition in ${reel.file}`);
  }
}

const hasCutTo = (edges: EdgeSet, reel: string, edition: NodeId): boolean =>
  edges
    .from(reelNode(reel))
    .some((edge) => edge.to.startsWith('cut:') && edges.from(edge.to).some((next) => next.to === edition));

function groupByEdition(reels: readonly Reel[]): ReadonlyMap<string, readonly Reel[]> {
  const groups = new Map<string, Reel[]>();
  for (const reel of reels) {
    for (const edition of itemsOf(reel.editions)) {
      const group = groups.get(edition.value);
      if (group === undefined) groups.set(edition.value, [reel]);
      else group.push(reel);
    }
  }
  return groups;
}

/** Edges by their start, one for each pair of ends. */
class EdgeSet {
  readonly #byFrom = new Map<NodeId, Edge[]>();

  add(from: NodeId, to: NodeId, how: How, reason: string): void {
    const edges = this.#byFrom.get(from) ?? [];
    this.#byFrom.set(from, edges);
    const known = edges.findIndex((edge) => edge.to === to);
    const before = edges[known];
    if (before === undefined) {
      edges.push({ from, to, how, because: [reason] });
    } else if (!before.because.includes(reason)) {
      const better = HOWS.indexOf(how) < HOWS.indexOf(before.how) ? how : before.how;
      edges[known] = { from, to, how: better, because: [...before.because, reason] };
    }
  }

  from(node: NodeId): readonly Edge[] {
    return this.#byFrom.get(node) ?? [];
  }

  sorted(): readonly Edge[] {
    return [...this.#byFrom.values()].flat().sort(byEnds);
  }
}
