import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Edge, How } from '#model/lineage.ts';
import { drawLineage } from '#render/drawings/lineage.ts';
import { BOX, layOut, withoutRings } from '#render/drawings/lineage-layout.ts';
import { routeLinks } from '#render/drawings/lineage-routes.ts';
import { lineageTree } from '#render/drawings/lineage-tree.ts';
import { findFamilies, ownLine } from '#render/views/family.ts';

const edge = (from: string, to: string, how: How = 'stated'): Edge => ({ from, to, how, because: [] });
const describeAs = (id: string) => ({
  id,
  is: 'reel' as const,
  caption: 'copy master · held',
  title: id,
  name: id,
  line: '',
  status: 'held' as const,
  link: `/${id}/`,
  trouble: false,
});
const unknown = () => null;

describe('a lineage', () => {
  const edges = [
    edge('reel:m', 'reel:a'),
    edge('reel:m', 'reel:b', 'logged'),
    edge('reel:a', 'cut:a#1'),
    edge('cut:a#1', 'edition:e'),
  ];

  test('stands in columns: copies, cuts, editions', () => {
    const layout = layOut(edges, (id) => (id === 'm' ? 1 : null));
    expect(layout.columns).toEqual(['Original', '1st copy', 'Cuts', 'Editions']);
    expect(['reel:m', 'reel:b', 'cut:a#1', 'edition:e'].map((id) => layout.at.get(id)?.column)).toEqual([0, 1, 2, 3]);
  });

  test('isn’t said to begin with the original unless that is known', () =>
    expect(layOut(edges, unknown).columns.slice(0, 2)).toEqual(['Earliest known', 'Copied from it']));

  test('has a line a link, of the kind that says how it is known', () => {
    const svg = String(drawLineage({ edges, describe: describeAs, generation: unknown, title: 'x' }));
    expect(svg.match(/class="link stated"/g)).toHaveLength(3);
    expect(svg.match(/class="link logged"/g)).toHaveLength(1);
  });

  test.each([
    ['a', 'z'],
    ['z', 'a'],
  ])('a reissue %s of %s stands after it, with or without a reel, whatever the two are called', (reissue, first) => {
    const issues = edge(`edition:${first}`, `edition:${reissue}`);
    for (const all of [[issues], [issues, edge('reel:m', `edition:${first}`)]]) {
      const { at } = layOut(all, unknown);
      expect(at.get(`edition:${reissue}`)?.column).toBe((at.get(`edition:${first}`)?.column ?? 0) + 1);
    }
  });

  test('a ring is drawn without the link that closes it', () => {
    const ring = [edge('reel:a', 'reel:b'), edge('reel:b', 'reel:c'), edge('reel:c', 'reel:a')];
    expect(withoutRings(ring)).toHaveLength(2);
    expect(layOut(ring, unknown).at.size).toBe(3);
  });

  test('in the list a reel with two parents stands once in full and is named again', () => {
    const list = String(lineageTree([edge('reel:a', 'reel:c'), edge('reel:b', 'reel:c')], describeAs));
    expect(list.match(/<b>reel:c<\/b>/g)).toHaveLength(1);
    expect(list).toContain('also: <a href="/reel:c/">');
  });
});

/** Links from lower to higher numbers: no rings. */
const anyLineage = fc
  .array(fc.tuple(fc.nat(30), fc.nat(30), fc.constantFrom<How>('stated', 'logged', 'proposed')), {
    minLength: 1,
    maxLength: 40,
  })
  .map((links) => {
    const found = new Map<string, Edge>();
    for (const [a, b, how] of links) {
      if (a !== b)
        found.set(`${Math.min(a, b)} ${Math.max(a, b)}`, edge(`reel:${Math.min(a, b)}`, `reel:${Math.max(a, b)}`, how));
    }
    return [...found.values()];
  })
  .filter((edges) => edges.length > 0);

describe('any lineage', () => {
  test('has no two boxes over each other, and every link runs from left to right', () => {
    fc.assert(
      fc.property(anyLineage, (edges) => {
        const layout = layOut(edges, unknown);
        for (const one of edges)
          expect(layout.at.get(one.from)?.column).toBeLessThan(layout.at.get(one.to)?.column ?? 0);
        const columns = Map.groupBy(layout.at.values(), (at) => at.column);
        for (const boxes of columns.values()) {
          const heights = boxes.map((at) => at.y).sort((a, b) => a - b);
          for (const [index, y] of heights.slice(1).entries())
            expect(y - (heights[index] ?? 0)).toBeGreaterThanOrEqual(BOX.height);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('ends each link at its child’s box', () => {
    fc.assert(
      fc.property(anyLineage, (edges) => {
        const layout = layOut(edges, unknown);
        const { columnX, paths } = routeLinks(edges, layout);
        for (const [one, path] of paths) {
          const to = layout.at.get(one.to);
          expect(path.endsWith(`V${(to?.y ?? 0) + BOX.height / 2}H${columnX[to?.column ?? 0]}`)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('is the same drawing whatever order its links come in', () => {
    fc.assert(
      fc.property(anyLineage, (edges) => {
        expect(layOut([...edges].reverse(), unknown).at).toEqual(layOut(edges, unknown).at);
      }),
      { numRuns: 20 },
    );
  });
});

test('a lineage of 400 reels is laid out in seconds', () => {
  const edges = Array.from({ length: 399 }, (_, index) => edge(`reel:${Math.floor(index / 3)}`, `reel:${index + 1}`));
  const started = performance.now();
  expect(layOut(edges, unknown).at.size).toBe(400);
  expect(performance.now() - started).toBeLessThan(10_000);
});

describe('families', () => {
  const edges = [edge('reel:b', 'reel:a'), edge('reel:a', 'edition:z'), edge('reel:x', 'reel:y')];

  test('are what hangs together, named by their first edition or reel', () => {
    const { all, byNode } = findFamilies(edges);
    expect(all.map((family) => [family.id, family.nodes.length])).toEqual([
      ['x', 2],
      ['z', 3],
    ]);
    expect(byNode.get('reel:b')?.id).toBe('z');
  });

  test('a reel’s own line has what it comes from, what comes of it, and its parent’s other copies', () => {
    const family = findFamilies([
      edge('reel:m', 'reel:own'),
      edge('reel:m', 'reel:other'),
      edge('reel:other', 'cut:other#1'),
      edge('reel:own', 'cut:own#1'),
    ]).byNode.get('reel:own');
    const line = family && ownLine(family, 'reel:own', 10);
    expect(line?.edges.map((one) => one.to).sort()).toEqual(['cut:own#1', 'reel:other', 'reel:own']);
  });
});
