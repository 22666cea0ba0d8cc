import { describe, expect, test } from 'vitest';
import { makeNumberIndex } from '#compute/identifiers/number-index.ts';
import { countList, searchList } from '#compute/identifiers/number-list.ts';
import { openNumberIndex } from '#compute/identifiers/open-index.ts';
import type { NumberOf } from '#model/numbered.ts';

const reel = (id: string, state: 'held' | 'missing' | 'lent', number: string): NumberOf => ({
  thing: { of: 'reel', id, title: id, state },
  as: 'matrix',
  number,
  from: '',
  sure: '',
});
const index = openNumberIndex(
  makeNumberIndex([
    reel('gale-1', 'held', 'HLX 2207-A'),
    reel('gale-2', 'missing', 'HLX 2207-B'),
    reel('marram', 'held', 'MRM 3114'),
    reel('away', 'lent', '20713'),
    { ...reel('record', 'held', 'VDT 208'), thing: { of: 'edition', id: 'record', title: 'record', state: 'known' } },
    reel('worn', 'held', 'WQX 44?1'),
  ]),
);
const row = (line: string) => searchList(index, line)[0];

describe('a line of a pasted list', () => {
  test.each([
    ['HLX-2207/A (no box)', 'held', false, 'gale-1'],
    ['two boxes, hlx2207b, dusty', 'known', false, 'gale-2'],
    ['MRM 3114 copy tape side 1', 'held', false, 'marram'],
    ['20713', 'held', false, 'away'],
    ['VDT 208 LP, vg', 'known', false, 'record'],
    ['3114 copy tape side 1', 'held', true, 'marram'],
    ['HLX 22O7-A lacquer', 'held', true, 'gale-1'],
    ['RM 3114?', 'held', true, 'marram'],
    ['* HLX 2207 A rare £45.00', 'held', false, 'gale-1'],
    ['WQX 4471', 'held', true, 'worn'],
  ])('%s: %s (perhaps: %s)', (line, state, doubtful, id) => {
    expect(row(line)).toMatchObject({ state, doubtful });
    expect(row(line)?.hits[0]?.id).toBe(id);
  });

  test('a number nobody has is new, with the nearest beside it', () => {
    expect(row('MRM3115 master')).toMatchObject({ number: 'MRM3115', state: 'new', hits: [] });
    expect(row('MRM3115 master')?.near[0]?.number).toBe('MRM 3114');
  });

  test.each(['7 in. reel, unlabelled', '15 ips 10.5in 1977', 'a box of tails', '£450', '30 in/s'])(
    '%s has no number in it',
    (line) => expect(row(line)).toMatchObject({ number: null, state: 'new', hits: [], near: [] }),
  );

  test('a part of a run of figures is no match: 311 isn’t 3114', () => {
    expect(row('311 copy')).toMatchObject({ state: 'new', hits: [] });
  });
});

describe('a whole list', () => {
  test('keeps the numbers of its lines over blank ones and any line ends', () => {
    const rows = searchList(index, '20713\r\n\r\nHLX 2207-B\nbox of tails\r');
    expect(rows.map(({ line, state }) => [line, state])).toEqual([
      [1, 'held'],
      [3, 'known'],
      [4, 'new'],
    ]);
    expect(countList(rows)).toEqual({ held: 1, known: 1, doubtful: 0, new: 0, 'no number': 1 });
  });
  test('of nothing is nothing', () => expect(searchList(index, ' \n\n')).toEqual([]));
});
