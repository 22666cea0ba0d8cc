import { alg, Graph } from '@dagrejs/graphlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRings } from '#compute/lineage/rings.ts';

const NODES = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
const links = fc.uniqueArray(fc.tuple(fc.constantFrom(...NODES), fc.constantFrom(...NODES)), {
  maxLength: 14,
  selector: ([from, to]) => from + to,
});

const nextOf = (edges: readonly (readonly [string, string])[]) => (node: string) =>
  edges.filter(([from]) => from === node).map(([, to]) => to);

describe('findRings', () => {
  test('agrees with a graph library on whether there is a ring, and on which reels lie on one', () => {
    fc.assert(
      fc.property(links, (edges) => {
        const graph = new Graph();
        for (const node of NODES) graph.setNode(node);
        for (const [from, to] of edges) graph.setEdge(from, to);
        const rings = findRings(NODES, nextOf(edges));
        expect(rings.length === 0).toBe(alg.isAcyclic(graph));
        expect(new Set(rings.flat())).toEqual(new Set(alg.findCycles(graph).flat()));
      }),
      { numRuns: 2000 },
    );
  });

  test('names each ring whole: every reel is copied to the next, and the last to the first', () => {
    fc.assert(
      fc.property(links, (edges) => {
        const next = nextOf(edges);
        for (const ring of findRings(NODES, next)) {
          for (const [at, node] of ring.entries()) expect(next(node)).toContain(ring[(at + 1) % ring.length]);
          expect(new Set(ring).size).toBe(ring.length);
          expect(ring[0]).toBe([...ring].sort()[0]);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('a ring of 20,000 reels is found whole', () => {
    const ids = Array.from({ length: 20_000 }, (_, at) => String(at).padStart(5, '0'));
    const [ring] = findRings(ids, (id) => [String((Number(id) + 1) % ids.length).padStart(5, '0')]);
    expect(ring).toHaveLength(20_000);
  });
});
