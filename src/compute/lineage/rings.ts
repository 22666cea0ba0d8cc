import { byText } from '#model/diagnostic.ts';

/** The reels that are their own ancestors, as rings: each in the order of copying, from the id that sorts first. Every
 * reel that lies on some ring is in at least one of those returned. Sorted by their ids.
 *
 * Strongly connected components by Tarjan's method, without recursion, so that a long chain is no danger; inside one,
 * the shortest ring through each reel that no ring yet holds.
 * Source: R. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1, 1972. */
export function findRings(
  nodes: readonly string[],
  next: (node: string) => readonly string[],
): readonly (readonly string[])[] {
  const rings: (readonly string[])[] = [];
  for (const component of components(nodes, next)) {
    const inside = new Set(component);
    const covered = new Set<string>();
    for (const node of [...component].sort(byText)) {
      if (covered.has(node)) continue;
      const ring = shortestRing(node, (one) => next(one).filter((other) => inside.has(other)));
      if (ring === undefined) continue;
      for (const one of ring) covered.add(one);
      rings.push(fromLowest(ring));
    }
  }
  return rings.sort((a, b) => byText(a.join(' '), b.join(' ')));
}

function fromLowest(ring: readonly string[]): readonly string[] {
  const lowest = [...ring].sort(byText)[0];
  const at = lowest === undefined ? 0 : ring.indexOf(lowest);
  return [...ring.slice(at), ...ring.slice(0, at)];
}

/** Breadth first from a node back to itself. */
function shortestRing(start: string, next: (node: string) => readonly string[]): readonly string[] | undefined {
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (let at = 0; at < queue.length; at++) {
    const node = queue[at] ?? start;
    for (const other of next(node)) {
      if (other === start) return pathTo(node, start, cameFrom);
      if (cameFrom.has(other)) continue;
      cameFrom.set(other, node);
      queue.push(other);
    }
  }
  return undefined;
}

function pathTo(end: string, start: string, cameFrom: ReadonlyMap<string, string>): readonly string[] {
  const path = [end];
  for (let node = end; node !== start; ) {
    node = cameFrom.get(node) ?? start;
    path.push(node);
  }
  return path.reverse();
}

interface Visit {
  readonly node: string;
  readonly others: readonly string[];
  at: number;
}

/** Components with a ring in them: of two nodes or more, or of one that leads to itself. */
function components(
  nodes: readonly string[],
  next: (node: string) => readonly string[],
): readonly (readonly string[])[] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const isOpen = new Set<string>();
  const found: (readonly string[])[] = [];
  const enter = (node: string): Visit => {
    order.set(node, order.size);
    low.set(node, order.size - 1);
    open.push(node);
    isOpen.add(node);
    return { node, others: next(node), at: 0 };
  };
  const lower = (node: string, to: number | undefined) => low.set(node, Math.min(low.get(node) ?? 0, to ?? 0));
  const leave = (node: string) => {
    if (low.get(node) !== order.get(node)) return;
    const component = open.splice(open.lastIndexOf(node));
    for (const one of component) isOpen.delete(one);
    if (component.length > 1 || next(node).includes(node)) found.push(component);
  };
  for (const root of nodes) {
    if (order.has(root)) continue;
    const visits = [enter(root)];
    for (let visit = visits.at(-1); visit !== undefined; visit = visits.at(-1)) {
      const other = visit.others[visit.at++];
      if (other === undefined) {
        visits.pop();
        leave(visit.node);
        const above = visits.at(-1);
        if (above !== undefined) lower(above.node, low.get(visit.node));
      } else if (!order.has(other)) {
        visits.push(enter(other));
      } else if (isOpen.has(other)) {
        lower(visit.node, order.get(other));
      }
    }
  }
  return found;
}
