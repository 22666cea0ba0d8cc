import { alg, Graph } from '@dagrejs/graphlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { traceLineage } from '#compute/lineage/graph.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import type { Kind } from '#model/words.ts';
import { date, edition, entriesOf, known, none, reel } from '../../given/entries.ts';

const from = (...parents: string[]) => ({ copiedFrom: known(parents.map((parent) => known(parent))) });
const kind = (word: Kind) => ({ kind: known(word) });
const place = { file: 'given.md', line: 1, column: 1, field: '' };
const trace = (...reels: Reel[]) => traceLineage(entriesOf({ reels }));
const generation = (id: string, ...reels: Reel[]) => trace(...reels).byReel.get(id)?.generation;

describe('generation', () => {
  test('an original master mixed from session tapes is 1, and a copy of a copy of it is 3', () => {
    const reels = [
      reel('session', kind('session tape')),
      reel('master', { ...kind('original master'), ...from('session') }),
      reel('copy', { ...kind('copy master'), ...from('master') }),
      reel('second', { ...kind('copy master'), ...from('copy') }),
    ];
    expect(generation('master', ...reels)).toMatchObject({ shortest: 1, longest: 1, unknownLinks: 0 });
    expect(generation('second', ...reels)).toMatchObject({ shortest: 3, longest: 3, unknownLinks: 0 });
  });

  test('a production master assembled from originals is 1 or 2, and its copy 2 or 3', () => {
    const reels = [
      reel('one', kind('original master')),
      reel('two', kind('original master')),
      reel('assembled', { ...kind('production master'), ...from('one', 'two') }),
      reel('copy', { ...kind('copy master'), ...from('assembled') }),
    ];
    expect(generation('assembled', ...reels)).toMatchObject({ shortest: 1, longest: 2 });
    expect(generation('copy', ...reels)).toMatchObject({ shortest: 2, longest: 3 });
  });

  test('a compilation counts over its shortest and its longest way', () => {
    const reels = [
      reel('a-master', kind('original master')),
      reel('b-master', kind('original master')),
      reel('c-copy', { ...kind('copy master'), ...from('b-master') }),
      reel('compiled', { ...kind('cutting master'), ...from('a-master', 'c-copy') }),
    ];
    expect(generation('compiled', ...reels)).toMatchObject({ shortest: 2, longest: 3, unknownLinks: 0 });
  });

  test('a parent nobody knows is an unknown link, counted once over two paths', () => {
    const reels = [
      reel('top'),
      reel('left', from('top')),
      reel('right', from('top')),
      reel('bottom', from('left', 'right')),
    ];
    expect(generation('bottom', ...reels)).toMatchObject({ shortest: null, longest: null, unknownLinks: 1 });
  });

  test('copied-from none is a first tape, whatever it is called', () => {
    expect(generation('a', reel('a', { copiedFrom: none }))).toMatchObject({
      shortest: 1,
      longest: 1,
      unknownLinks: 0,
    });
  });

  test('a ring counts nothing and is named whole', () => {
    const lineage = trace(reel('a', from('c')), reel('b', from('a')), reel('c', from('b')), reel('d', from('c')));
    expect(lineage.cycles).toEqual([['a', 'b', 'c']]);
    expect(lineage.byReel.get('d')?.generation).toMatchObject({ shortest: null, longest: null });
  });

  test('a chain of 5,000 copies is counted to its end', () => {
    const id = (at: number) => `r${String(at).padStart(5, '0')}`;
    const reels = Array.from({ length: 5000 }, (_, at) =>
      at === 0 ? reel(id(0), { copiedFrom: none }) : reel(id(at), from(id(at - 1))),
    );
    expect(generation(id(4999), ...reels)).toMatchObject({ shortest: 5000, longest: 5000 });
  });

  test('agrees with a graph library over random lineages: shortest path, ancestors, longest path by its own order', () => {
    const arrows = fc.uniqueArray(
      fc.tuple(fc.nat(9), fc.nat(9)).filter(([a, b]) => a < b),
      {
        selector: ([a, b]) => a * 10 + b,
        maxLength: 20,
      },
    );
    fc.assert(
      fc.property(arrows, (edges) => {
        const parents = (at: number) => edges.filter(([, to]) => to === at).map(([one]) => `r${one}`);
        const reels = Array.from({ length: 10 }, (_, at) => {
          const own = parents(at);
          return reel(`r${at}`, own.length === 0 ? { copiedFrom: none } : from(...own));
        });
        const lineage = trace(...reels);
        const graph = new Graph();
        graph.setNode('start');
        for (const one of reels) graph.setNode(one.id);
        for (const [a, b] of edges) graph.setEdge(`r${a}`, `r${b}`);
        for (let at = 0; at < 10; at++) if (parents(at).length === 0) graph.setEdge('start', `r${at}`);
        const distance = alg.dijkstra(graph, 'start');
        const longest = new Map<string, number>([['start', 0]]);
        for (const node of alg.topsort(graph)) {
          const before = (graph.predecessors(node) ?? []).map((one) => longest.get(one) ?? 0);
          if (node !== 'start') longest.set(node, Math.max(...before) + 1);
        }
        for (const { id } of reels) {
          const traced = lineage.byReel.get(id);
          expect(traced?.generation).toMatchObject({ shortest: distance[id]?.distance, longest: longest.get(id) });
          const above = reels
            .map((one) => one.id)
            .filter((one) => one !== id && alg.dijkstra(graph, one)[id]?.distance !== Number.POSITIVE_INFINITY);
          expect([...(traced?.ancestors ?? [])].sort()).toEqual(above.sort());
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('edges', () => {
  const line = (facts: Partial<LogLine>): LogLine => ({ place, ...facts });

  test('a log line that names its reel is logged, and stated where the copy says so too', () => {
    const copyLog = known([line({ reel: known('copy') }), line({ reel: known('other') })]);
    const edges = trace(reel('copy', from('master')), reel('master', { copyLog }), reel('other')).edges;
    expect(edges.map(({ from: a, to, how }) => [a, to, how])).toEqual([
      ['reel:master', 'reel:copy', 'stated'],
      ['reel:master', 'reel:other', 'logged'],
    ]);
    expect(edges[0]?.because).toHaveLength(2);
  });

  test('a run-out with a cut number joins the record to the lacquer, and the reel no longer leads there by itself', () => {
    const editions = [
      edition('lp', {
        runOuts: known([{ place, side: known('A'), written: known('QVX 101-2'), cut: known('2') }]),
      }),
      edition('reissue', { reissueOf: known([known('lp')]) }),
    ];
    const reels = [
      reel('side-1', {
        sides: known([known('1')]),
        editions: known([known('lp')]),
        cuts: known([
          { place, number: known('1') },
          { place, number: known('2') },
        ]),
      }),
    ];
    const lineage = traceLineage(entriesOf({ reels, editions }));
    expect(lineage.edges.map(({ from: a, to }) => `${a} > ${to}`)).toEqual([
      'cut:side-1#2 > edition:lp',
      'edition:lp > edition:reissue',
      'reel:side-1 > cut:side-1#1',
      'reel:side-1 > cut:side-1#2',
    ]);
    expect(lineage.byEdition.find((one) => one.edition === 'reissue')?.reels).toEqual(['side-1']);
  });

  test('an edition’s lineage holds its masters and their spare copies, and not the copies that went to another edition', () => {
    const editions = [edition('here'), edition('there')];
    const reels = [
      reel('here-cutting', { ...from('master'), editions: known([known('here')]) }),
      reel('master', kind('original master')),
      reel('spare', { ...from('master'), ...kind('safety copy') }),
      reel('there-cutting', { ...from('master'), editions: known([known('there')]) }),
    ];
    const lineage = traceLineage(entriesOf({ reels, editions }));
    expect(lineage.byEdition[0]?.reels).toEqual(['here-cutting', 'master', 'spare']);
  });
});

describe('proposals', () => {
  const client = (text: string) => known({ is: 'text', text } as const, text);
  const logged = (on: string, name: string): LogLine => ({
    place,
    on: known(date(on), on),
    for: client(name),
    kind: known('copy master'),
  });
  const copy = (id: string, on: string | undefined, name: string) =>
    reel(id, {
      ...kind('copy master'),
      client: client(name),
      ...(on !== undefined && { recorded: known({ on: known(date(on), on) }) }),
    });

  test('a line fits the reel of that day and client, with its reasons, as a proposal and no more', () => {
    const lineage = trace(
      reel('master', { copyLog: known([logged('1978-02-09', 'Ostrel Overseas')]) }),
      copy('one', '1978-02-09', 'Ostrel Overseas'),
      copy('two', '1978-02-09', 'Kestova Records'),
    );
    expect(lineage.proposals).toMatchObject([{ parent: 'master', line: 0, reel: 'one' }]);
    expect(lineage.proposals[0]?.reasons).toEqual([
      'the same day, 1978-02-09',
      'made for the same client, Ostrel Overseas',
      'the same kind, copy master',
    ]);
    expect(lineage.edges).toMatchObject([{ how: 'proposed' }]);
    expect(lineage.byReel.get('one')?.parents).toEqual([]);
  });

  test('a client’s id, name and own initials are one client', () => {
    const reels = [
      reel('master', {
        copyLog: known([{ place, on: known(date('1978-02-09')), for: known({ is: 'initials', text: 'O.O.' }) }]),
      }),
      copy('one', '1978-02-09', 'ostrel overseas'),
    ];
    const people = [
      {
        ...edition('ostrel'),
        folder: 'people' as const,
        title: known('Ostrel Overseas'),
        initials: known([known('O.O.')]),
      },
    ];
    expect(traceLineage(entriesOf({ reels, people })).proposals).toMatchObject([{ reel: 'one' }]);
  });

  test('a copy that is linked already keeps the line that is its own', () => {
    const lineage = trace(
      { ...copy('linked', '1978-02-09', 'Ostrel Overseas'), ...from('master') },
      reel('master', { copyLog: known([logged('1978-02-09', 'Ostrel Overseas')]) }),
      copy('other', undefined, 'Ostrel Overseas'),
    );
    expect(lineage.proposals).toEqual([]);
  });

  test('neither side 2 for side 1, nor a reel of another day, nor a first tape is proposed', () => {
    const sides = (side: string) => ({ sides: known([known(side)]) });
    const lineage = trace(
      reel('master', { ...sides('1'), copyLog: known([logged('1978-02-09', 'Ostrel Overseas')]) }),
      { ...copy('first', '1978-02-09', 'Ostrel Overseas'), copiedFrom: none },
      { ...copy('second', '1978-02-09', 'Ostrel Overseas'), ...sides('B') },
      { ...copy('third', '1978-02-10', 'Ostrel Overseas'), ...sides('1') },
    );
    expect(lineage.proposals).toEqual([]);
  });

  test('never uses a line or a reel twice', () => {
    const days = ['1978-02-09', '1978-02-10', '1978-02-11'];
    const some = fc.array(fc.tuple(fc.constantFrom(...days), fc.constantFrom('Ostrel', 'Kestova Works')), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(some, some, (log, copies) => {
        const { proposals } = trace(
          reel('master', { copyLog: known(log.map(([on, name]) => logged(on, name))) }),
          ...copies.map(([on, name], at) => copy(`r${at}`, on, name)),
        );
        expect(new Set(proposals.map((one) => one.reel)).size).toBe(proposals.length);
        expect(new Set(proposals.map((one) => one.line)).size).toBe(proposals.length);
      }),
    );
  });

  test('two reels that fit one line as well as each other are told apart by nobody: the other is named against', () => {
    const { proposals } = trace(
      copy('a', '1978-02-09', 'Ostrel Overseas'),
      copy('b', '1978-02-09', 'Ostrel Overseas'),
      reel('master', { copyLog: known([logged('1978-02-09', 'Ostrel Overseas')]) }),
    );
    expect(proposals).toMatchObject([{ reel: 'a', against: ['b fits this line as well'] }]);
  });

  test('a day on which everything was run off for everyone is no clue: ten thousand of each are done with at once', () => {
    const many = Array.from({ length: 10_000 }, (_, at) => copy(`r${at}`, '1978-02-09', 'Ostrel Overseas'));
    const log = Array.from({ length: 10_000 }, () => logged('1978-02-09', 'Ostrel Overseas'));
    const started = performance.now();
    expect(trace(reel('master', { copyLog: known(log) }), ...many).proposals).toEqual([]);
    // Each against each would be a hundred million comparisons; this takes about a second on a busy machine.
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});
