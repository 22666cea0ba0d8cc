import { itemsOf } from '#model/fact.ts';
import { nearestOf } from '#model/nearest.ts';
import { NAMEABLE } from '../../sharing/table.ts';
import { crossCheck } from '../check.ts';

/** A share that names what no entry has, or what no share shows. */
export const unknownFact = crossCheck({
  code: 'share/unknown-fact',
  title: 'A share that names what is no fact',
  severity: 'error',
  scope: 'share',
  reads: ['share'],
  judge: ({ share }) =>
    [...itemsOf(share.shows), ...itemsOf(share.showsPrivate)]
      .filter((key) => !NAMEABLE.has(key.value))
      .map((key) => {
        const near = nearestKey(key.value);
        return {
          place: key.place,
          message: `This share names ${key.written}, which is no fact that a share can show.`,
          found: key.written,
          expected: near ?? 'a key of a reel’s entry, such as cuts or recorded.on',
          action:
            near === undefined
              ? 'Write a key as it stands in a reel’s entry, with a point before a part of it; or take it out.'
              : `Write ${near} if that was meant, else take it out. The share isn’t sealed while it stands here.`,
        };
      }),
});

/** The fact that was meant: a part named without what it is a part of, else the nearest spelling. */
function nearestKey(key: string): string | undefined {
  const keys = [...NAMEABLE].sort();
  return keys.find((one) => one.endsWith(`.${key}`)) ?? nearestOf(key, keys);
}
