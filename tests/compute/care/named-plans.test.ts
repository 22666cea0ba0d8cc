import { describe, expect, test } from 'vitest';
import { careOf } from '#compute/care/care.ts';
import { catalogueOf, type Given } from '../../given/small-collection.ts';
import { LOOKED, reel } from '../plan/a-day.ts';

const care = async (given: Given) => careOf(await catalogueOf({ 'stocks/sound': 'base: polyester', ...given }));
const share = (audience: string, reels: string) =>
  `to: Edda Ashgrove\nfor: ${audience}\nreels: [${reels}]\nuntil: "2027-01-01"\nopened-by: passphrase`;
const ofSet = (set: string) => `${reel('sound', LOOKED)}\nset: ${set}`;

describe('the plans that stand ready', () => {
  test('are one for each engineer’s share, then one for each set of two and more', async () => {
    const { plans } = await care({
      'reels/a': ofSet('feira'),
      'reels/b': ofSet('feira'),
      'reels/c': ofSet('ilha'),
      'shares/day': share('engineer', 'a, c'),
      'shares/other': share('valuer', 'a'),
    });
    expect(plans.map(({ id, reels }) => [id, reels])).toEqual([
      ['share-day', ['a', 'c']],
      ['set-feira', ['a', 'b']],
    ]);
    expect(plans[0]?.sub).toContain('For Edda Ashgrove.');
  });

  test('hold a reel that isn’t here in none of them', async () => {
    const { plans, reels } = await care({
      'reels/a': ofSet('feira'),
      'reels/b': ofSet('feira').replace('length:', 'status: missing\nlength:'),
      'shares/day': share('engineer', 'a, b'),
    });
    expect(reels.map(({ id }) => id)).toEqual(['a']);
    expect(plans.map(({ id, reels: ids }) => [id, ids])).toEqual([['share-day', ['a']]]);
  });

  test('have addresses of letters and figures, whatever a set is called, and no address twice', async () => {
    const { plans } = await care({
      'reels/a': ofSet('"Ação / nº 1"'),
      'reels/b': ofSet('"Ação / nº 1"'),
      'reels/c': ofSet('"acao no 1"'),
      'reels/d': ofSet('"acao no 1"'),
    });
    const ids = plans.map(({ id }) => id);
    for (const id of ids) expect(id).toMatch(/^set-[a-z0-9-]+$/);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('are too many beyond sixty sets: each is then planned from its ids', async () => {
    const given = Object.fromEntries(
      Array.from({ length: 122 }, (_, at) => [`reels/r${at}`, ofSet(`s${Math.floor(at / 2)}`)]),
    );
    const { plans, reels } = await care(given);
    expect(reels).toHaveLength(122);
    expect(plans).toEqual([]);
  });
});
