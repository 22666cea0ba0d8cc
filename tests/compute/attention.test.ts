import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../given/small-collection.ts';

describe('what needs attention first', () => {
  test('a missing side is told with the side that is here, though the problem stands in the lost one’s entry', async () => {
    const { problems, attention } = await catalogueOf({
      'reels/one': 'set: pair\nside: "1"',
      'reels/two': 'set: pair\nside: "2"\nstatus: missing',
    });
    expect(problems).toMatchObject([{ code: 'set/side-missing', place: { file: 'reels/two.md', field: 'status' } }]);
    expect(attention).toMatchObject([{ code: 'set/side-missing', reel: 'one', risk: false }]);
  });

  test('what endangers a tape comes before what only disagrees, and a warned risk is told once', async () => {
    const { attention } = await catalogueOf({
      'reels/a': 'set: pair\nside: "1"',
      'reels/b': 'condition: [{ on: "2026", found: [mould] }]',
    });
    expect(attention.map(({ code, risk }) => [code, risk])).toEqual([
      ['condition/mould', true],
      ['set/side-missing', false],
    ]);
  });

  test('a reel that somebody else has asks for nothing', async () => {
    const { attention } = await catalogueOf({
      'reels/a': 'status: elsewhere\ncondition: [{ on: "2026", found: [mould] }]',
    });
    expect(attention).toEqual([]);
  });

  test('a tape that lies head out, ready to play, is no first care; an echo that was heard is', async () => {
    const { attention } = await catalogueOf({
      'reels/a': 'pack: { wind: head out }',
      'reels/b': 'pack: { wind: head out }\ncondition: [{ on: "2026", found: [print-through heard] }]',
    });
    expect(attention.map(({ code, reel }) => [code, reel])).toEqual([['condition/print-through', 'b']]);
  });
});
