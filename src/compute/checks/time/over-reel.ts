import { inches } from '#model/units.ts';
import { ASSUMED_DIAMETER_MM } from '../../figure/assumed-error.ts';
import { metresInWords, speedInWords } from '../../figure/in-words.ts';
import { packAgainstSpeeds } from '../../tape/pack-decides.ts';
import { lengthPlayed } from '../../tape/playing-time.ts';
import { crossCheck } from '../check.ts';

/** More tape than the reel can hold when it is full to the edge of its flange. */
const tooLong = crossCheck({
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

/** Makers' reels of one size differ by some millimetres. Common practice, no source. */
const REEL_SLACK = 1.02;

/** A wound pack that is wider than the reel it is said to be on. */
const tooWide = crossCheck({
  code: 'time/over-reel',
  title: 'The pack is wider than its reel',
  severity: 'warning',
  scope: 'reel',
  reads: ['reelSize', 'outsideDiameter', 'isOnReel'],
  judge: ({ reelSize, outsideDiameter, isOnReel }) => {
    const { value, plusMinus = ASSUMED_DIAMETER_MM } = outsideDiameter.value;
    const roomMm = reelSize.value.value * REEL_SLACK + (reelSize.value.plusMinus ?? 0);
    if (!isOnReel || value - plusMinus <= roomMm) return [];
    const larger = REEL_SIZES.find(({ mm }) => mm >= value - plusMinus);
    const fits = larger === undefined ? 'a larger reel' : `a reel of ${larger.called} or more`;
    return [
      {
        place: outsideDiameter.place,
        message: 'The wound pack is wider than the reel that it is on.',
        found: `outside-diameter: ${outsideDiameter.written}, on a reel of ${reelSize.written}`,
        expected: `at most ${millimetresInWords(reelSize.value.value)}, or ${fits}`,
        action: `Measure both again: the wound tape is measured across the tape, the reel across its flange. If the tape is a pancake, write \`wound-on: bare hub\` and take the reel size out.`,
        related: [{ message: `reel-size: ${reelSize.written}`, place: reelSize.place }],
      },
    ];
  },
});

const millimetresInWords = (mm: number) => `${Math.round(mm)} mm`;

/** The sizes that reels are made in, smallest first; from memory. */
const REEL_SIZES = ['3', '5', '7', '10.5', '12.5', '14'].map((count) => ({
  mm: inches(Number(count)),
  called: `${count} in`,
}));

export const overReel = [tooLong, tooWide] as const;
