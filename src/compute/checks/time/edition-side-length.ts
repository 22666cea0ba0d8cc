import type { EditionSide } from '#model/edition.ts';
import type { Reel } from '#model/reel.ts';
import { clock, spanInWords } from '../../figure/in-words.ts';
import { digitReadings } from '../../tape/digit-readings.ts';
import { between, crossCheck, type Doubt } from '../check.ts';

/** A lathe and a stopwatch differ by some 6 s in 20 min with nothing wrong (IEC 60098:2020 section 5.6), and a label
 * leaves run-in and run-out to taste: under this nothing is said. */
const SLACK_S = 15;

/** The length of an edition's side against the length of the reel for it. */
export const editionSideLength = crossCheck({
  code: 'time/edition-side-length',
  title: 'An edition’s side is longer or shorter than its reel',
  severity: 'note',
  scope: 'edition',
  reads: ['edition', 'sidesWithReels'],
  judge: ({ edition, sidesWithReels }) =>
    sidesWithReels.flatMap(({ side, reels }) => {
      if (side.durationS === undefined || isSplitOverReels(side.durationS.value, reels)) return [];
      return reels.flatMap((reel) => doubtAbout(edition.title.written, side, reel));
    }),
});

/** A side on two reels: their lengths together are the side's. */
function isSplitOverReels(sideS: number, reels: readonly Reel[]): boolean {
  const lengths = reels.flatMap((reel) => (reel.durationS?.is === 'known' ? [reel.durationS.value] : []));
  const wholeS = lengths.reduce((total, lengthS) => total + lengthS, 0);
  return lengths.length > 1 && Math.abs(wholeS - sideS) <= SLACK_S * lengths.length;
}

function doubtAbout(edition: string, side: EditionSide, reel: Reel): readonly Doubt[] {
  const [ofSide, ofReel] = [side.durationS, reel.durationS];
  if (ofSide === undefined || ofReel?.is !== 'known') return [];
  const differenceS = ofReel.value - ofSide.value;
  if (Math.abs(differenceS) <= SLACK_S) return [];
  const way = differenceS > 0 ? 'longer' : 'shorter';
  return [
    {
      message: `The reel is ${spanInWords(differenceS)} ${way} than side ${side.side.written} of ${edition}.`,
      action: `${readingSays(ofReel.written, ofSide.value) ?? 'Look at both lengths again.'} An edit, tones counted in, or another mix would explain it: then accept this and say which.`,
      ...between(
        {
          place: ofReel.place,
          message: `${reel.title.written}: ${ofReel.written}`,
          found: ofReel.written,
          expected: `${clock(ofSide.value)}, as on the edition, give or take ${SLACK_S} s`,
        },
        {
          place: ofSide.place,
          message: `${edition}, side ${side.side.written}: ${ofSide.written}`,
          found: ofSide.written,
          expected: `${clock(ofReel.value)}, as on the reel, give or take ${SLACK_S} s`,
        },
      ),
    },
  ];
}

function readingSays(written: string, sideS: number): string | undefined {
  const agreeing = digitReadings(written).filter((reading) => Math.abs(reading.durationS - sideS) <= 1);
  const [only, ...more] = agreeing;
  if (only === undefined || more.length > 0) return undefined;
  return `Look at the reel’s label again: ${only.gives}, ${only.because}, would agree.`;
}
