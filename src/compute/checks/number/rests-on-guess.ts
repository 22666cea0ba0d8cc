import type { Reel } from '#model/reel.ts';
import { crossCheck, type Doubt } from '../check.ts';
import { readingsByFact } from '../read-facts.ts';

/** A fact that others are worked out from or compared with, read by nobody with more than a guess. */
export const restsOnGuess = crossCheck({
  code: 'number/rests-on-guess',
  title: 'A fact that others depend on rests on a guess',
  severity: 'note',
  scope: 'reel',
  reads: ['reel', 'readings', 'isCompared'],
  judge: ({ reel, readings, isCompared }) =>
    [...readingsByFact(readings)].flatMap(([key, ofKey]): readonly Doubt[] => {
      const depends = whatDepends(reel, key.replace(/\[\d+\]$/, ''), isCompared);
      const [first] = ofKey;
      if (depends === undefined || first?.sure === undefined) return [];
      if (ofKey.some((reading) => reading.sure?.value !== 'guess')) return [];
      return [
        {
          place: first.sure.place,
          message: `What the entry gives as ${key} rests on a guess, and ${depends} depends on it.`,
          found: `${first.written.written}, sure: ${first.sure.written}`,
          expected: 'a reading that is likely or certain',
          action:
            'Take another photograph, under raking light or of another side of the box, and read it again. Until then the figures that rest on it are no better.',
        },
      ];
    }),
});

/** What is worked out from a fact or compared with it, in words; undefined when nothing is. */
function whatDepends(reel: Reel, key: string, isCompared: boolean): string | undefined {
  const { format, pack } = reel;
  switch (key) {
    case 'numbers.matrix':
    case 'side':
      return isCompared ? 'the pairing of its sides' : undefined;
    case 'numbers.catalogue':
      return isCompared ? 'the edition that it is taken for' : undefined;
    case 'format.speed':
      return reel.durationS === undefined && format.equalisation === undefined ? undefined : 'how it is played';
    case 'format.equalisation':
    case 'format.tracks':
      return 'how it is played';
    case 'length':
      return format.speed === undefined && reel.contents === undefined ? undefined : 'the length of the tape';
    case 'stock':
      return 'what is known of its base and binder';
    case 'pack.outside-diameter':
    case 'pack.hub-diameter':
      return pack.outsideDiameter === undefined || pack.hubDiameter === undefined
        ? undefined
        : 'the length of the tape';
    case 'recorded.on':
      return reel.copiedFrom === undefined && reel.editions === undefined && reel.cuts === undefined
        ? undefined
        : 'the order of its lineage';
    case 'copied-from':
      return 'its generation';
    default:
      return undefined;
  }
}
