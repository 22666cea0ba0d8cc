import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { listInWords } from '../../figure/in-words.ts';
import { orderOf } from '../../identifiers/sides.ts';
import { between, crossCheck } from '../check.ts';

/** A side 1 copied from a side 2. A compilation takes its titles from any side, and another edition may order them
 * anew, so only a copy with one parent and of the same edition is held against it. */
export const sideDiffers = crossCheck({
  code: 'lineage/side-differs',
  title: 'A side copied from another side',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'sides', 'knownParents'],
  judge: ({ reel, sides, knownParents }) => {
    const [only, ...others] = knownParents;
    if (only === undefined || others.length > 0 || isOfAnother(reel, only.parent)) return [];
    const parentSides = itemsOf(only.parent.sides);
    const orders = parentSides.map((side) => orderOf(side.value) ?? side.value);
    const shared = sides.some((side) => orders.includes(orderOf(side.value) ?? side.value));
    const [side] = sides;
    const [parentSide] = parentSides;
    if (shared || side === undefined || parentSide === undefined) return [];
    const own = listInWords(sides.map((one) => one.written));
    const theirs = listInWords(parentSides.map((one) => one.written));
    return [
      {
        ...between(
          { place: side.place, message: `${reel.title.written}: side ${own}`, found: own, expected: theirs },
          {
            place: parentSide.place,
            message: `${only.parent.title.written}: side ${theirs}`,
            found: theirs,
            expected: own,
          },
        ),
        message: `Side ${own} is copied from side ${theirs}.`,
        action:
          'Look at both labels again: the other reel of the set is likely to be its parent. Where a plant numbers the sides its own way, write that in the body and accept this.',
      },
    ];
  },
});

/** Both name editions, and none of them is the same. */
function isOfAnother(reel: Reel, parent: Reel): boolean {
  const own = itemsOf(reel.editions).map((edition) => edition.value);
  const theirs = itemsOf(parent.editions).map((edition) => edition.value);
  return own.length > 0 && theirs.length > 0 && !own.some((edition) => theirs.includes(edition));
}
