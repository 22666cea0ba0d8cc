import { itemsOf } from '#model/fact.ts';
import { between, crossCheck } from '../check.ts';

/** A reel that is its own ancestor. */
export const cycle = crossCheck({
  code: 'lineage/cycle',
  title: 'A reel that is copied from itself',
  severity: 'error',
  scope: 'collection',
  reads: ['lineage', 'reelsById'],
  judge: ({ lineage, reelsById }) =>
    lineage.cycles.map((ring) => {
      const names = [...ring, ring[0] ?? ''].join(' → ');
      const views = ring.flatMap((id, at) => {
        const reel = reelsById.get(id);
        if (reel === undefined) return [];
        const parent = ring.at(at - 1) ?? id;
        const stated = itemsOf(reel.copiedFrom).find((one) => one.value === parent);
        const view = {
          place: stated?.place ?? reel.place,
          found: names,
          expected: 'one of these reels copied from none of the others',
        };
        return [{ ...view, message: `${reel.title.written}: copied from ${parent}` }];
      });
      return {
        ...between(...views),
        message:
          ring.length === 1
            ? 'This reel is copied from itself.'
            : `These ${ring.length} reels are copied from each other in a ring.`,
        action:
          'Compare the dates on the boxes: the earliest of them was copied from none of the others. Take away its copied-from, or the log line that names it.',
      };
    }),
});
