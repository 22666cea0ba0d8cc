import { metresInWords, speedInWords } from '../../figure/in-words.ts';
import { packAgainstSpeeds } from '../../tape/pack-decides.ts';
import { lengthPlayed } from '../../tape/playing-time.ts';
import { crossCheck } from '../check.ts';

/** More tape than the reel can hold when it is full to the edge of its flange. */
export const overReel = crossCheck({
  code: 'time/over-reel',
  title: 'The stated length doesn’t fit the reel',
  severity: 'warning',
  scope: 'reel',
  reads: ['duration', 'speed', 'leastRun', 'reelHolds'],
  judge: ({ duration, speed, leastRun, reelHolds }) => {
    const neededMm = lengthPlayed(leastRun.valueS, speed.value);
    const { atMostMm, size, thicknessUm, thicknessKnown } = reelHolds;
    if (neededMm - leastRun.errorS * speed.value <= atMostMm) return [];
    const band = { lowMm: atMostMm, valueMm: atMostMm, highMm: atMostMm };
    const slower = packAgainstSpeeds(band, leastRun).find((row) => row.answer !== 'too-short');
    const speedAdvice =
      slower === undefined
        ? ''
        : ` At ${speedInWords(slower.speed.speedMmPerS)} it needs ${metresInWords(slower.neededMm)} and fits.`;
    const tape = thicknessKnown ? `tape of ${thicknessUm} µm` : `the thinnest tape made (${thicknessUm} µm)`;
    return [
      {
        place: size.place,
        message: 'The stated length at the stated speed is more tape than the reel can hold.',
        found: `reel-size: ${size.written}, for ${duration.written} at ${speed.written}: ${metresInWords(neededMm)}`,
        expected: `a reel for ${metresInWords(neededMm)}; this one holds ${metresInWords(atMostMm)} of ${tape} at most`,
        action: `Look at the box for speed and length.${speedAdvice} A side may also have been split over two reels: then record the length of this one.`,
        related: [
          { message: `length: ${duration.written}`, place: duration.place },
          { message: `speed: ${speed.written}`, place: speed.place },
        ],
      },
    ];
  },
});
