import type { Reel } from '#model/reel.ts';
import { sumOfContents } from './tape/contents-sum.ts';

/** What an entry may say of a tape that others depend on, in the order in which it is told when missing. `none` is an
 * answer, and so is a list that is known to be empty. */
const LOOKED_AT: readonly (readonly [key: string, isRecorded: (reel: Reel) => boolean])[] = [
  ['format.speed', ({ format }) => format.speed !== undefined],
  ['format.equalisation', ({ format }) => format.equalisation !== undefined],
  ['format.tracks', ({ format }) => format.tracks !== undefined],
  ['format.level', ({ format }) => format.level !== undefined],
  ['format.tones', ({ format }) => format.tones !== undefined],
  ['format.noise-reduction', ({ format }) => format.noiseReduction !== undefined],
  ['length', (reel) => reel.durationS !== undefined],
  ['stock', (reel) => reel.stock !== undefined],
  ['pack.wound-on', ({ pack }) => pack.woundOn !== undefined],
  ['pack.wind', ({ pack }) => pack.wind !== undefined],
  ['pack.outside-diameter', ({ pack }) => pack.outsideDiameter !== undefined],
  [
    'recorded.on',
    ({ recorded }) => recorded?.is === 'none' || (recorded?.is === 'known' && recorded.value.on !== undefined),
  ],
  ['copied-from', (reel) => reel.copiedFrom !== undefined],
  ['photos', (reel) => reel.photos !== undefined],
  ['condition', (reel) => reel.condition !== undefined],
];

/** Dotted keys that nobody recorded, in the order of the list above; last the one that kept the contents from being
 * added up, if any. */
export function missingFacts(reel: Reel): readonly string[] {
  const missing = LOOKED_AT.filter(([, isRecorded]) => !isRecorded(reel)).map(([key]) => key);
  const contents = sumOfContents(reel);
  return contents?.is === 'untested' ? [...missing, contents.lacks] : missing;
}
