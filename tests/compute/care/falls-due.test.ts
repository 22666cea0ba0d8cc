import { describe, expect, test } from 'vitest';
import { fallsDue } from '#compute/care/falls-due.ts';
import { catalogueOf, type Given } from '../../given/small-collection.ts';

const due = async (given: Given, today: string) => fallsDue(await catalogueOf(given, today));
const told = async (given: Given, today: string) =>
  (await due(given, today)).map(({ uid, from, until }) => [uid, from, until ?? 'all day']);

const BAKED = 'handling: [{ what: bake, on: "2026-03-31", ended: "2026-04-01T06:00" }]';

describe('what falls due', () => {
  test('is each window after a bake, by each practice, until its latest end', async () => {
    // By hand: 06:00 and 10 h; 06:00 and 14 days.
    const windows = [
      ['bake-a-2026-04-01T06:00-common-practice', '2026-04-01T06:00', '2026-04-01T16:00'],
      ['bake-a-2026-04-01T06:00-published', '2026-04-01T06:00', '2026-04-15T06:00'],
    ];
    expect(await told({ 'reels/a': BAKED }, '2026-04-01')).toEqual(windows);
    expect(await told({ 'reels/a': BAKED }, '2026-04-02')).toEqual(windows.slice(1));
    expect(await told({ 'reels/a': BAKED }, '2026-04-16')).toEqual([]);
  });

  test('has no window where nobody wrote down when the bake ended', async () => {
    expect(await told({ 'reels/a': 'handling: [{ what: bake, on: "2026-03-31" }]' }, '2026-04-01')).toEqual([]);
  });

  test('names both practices in words, each with its source and the caution', async () => {
    const [common, published] = await due({ 'reels/a': BAKED }, '2026-04-01');
    expect(common?.summary).toContain('common practice');
    expect(common?.description).toContain('Source: common practice, no source');
    expect(published?.summary).toContain('a published practice');
    expect(published?.description).toContain('UNESCO RAMP study r9704e');
    for (const event of [common, published]) expect(event?.description).toContain('Playing: don’t fast-wind');
  });

  test('is a look again a year after the last one, reels of one day together, overdue ones today', async () => {
    const looked = (on: string) => `condition: [{ on: "2019-06-11", found: none }, { on: "${on}", found: none }]`;
    const given = {
      'reels/a': looked('2026-03-02'),
      'reels/b': looked('2026-03-02'),
      'reels/c': looked('2024-02-29'),
      'reels/d': 'stock: none',
    };
    expect(await told(given, '2026-04-01')).toEqual([
      ['look-now', '2026-04-01', 'all day'],
      ['look-2027-03-02', '2027-03-02', 'all day'],
    ]);
    const [, later] = await due(given, '2026-04-01');
    expect(later?.summary).toBe('Look again at 2 reels');
    expect(later?.description).toContain('common practice, no source');
  });

  test('after 29 February falls on 1 March', async () => {
    const given = { 'reels/a': 'condition: [{ on: "2024-02-29", found: none }]' };
    expect(await told(given, '2024-04-01')).toEqual([['look-2025-03-01', '2025-03-01', 'all day']]);
  });

  test('is the end of a share and of a loan, until its day is over', async () => {
    const given = {
      'reels/a': 'status: lent\nlent: { to: pers, until: "2026-05-01" }',
      'people/pers': 'name: Edda Ashgrove',
      'shares/s': 'to: Edda Ashgrove\nfor: friend\nreels: [a]\nuntil: "2026-06-30"\nopened-by: passphrase',
    };
    expect(await told(given, '2026-04-01')).toEqual([
      ['lent-a', '2026-05-01', 'all day'],
      ['share-s', '2026-06-30', 'all day'],
    ]);
    expect((await told(given, '2026-06-30')).map(([uid]) => uid)).toEqual(['share-s']);
    expect(await told(given, '2026-07-01')).toEqual([]);
  });
});
