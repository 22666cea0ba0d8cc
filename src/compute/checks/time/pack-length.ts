import type { Known } from '#model/fact.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { ASSUMED_DIAMETER_MM } from '../../figure/assumed-error.ts';
import { listInWords, metresInWords, speedInWords } from '../../figure/in-words.ts';
import { isThinnerThanMade, nameOfThickness, packAgainstSpeeds, thicknessThatHolds } from '../../tape/pack-decides.ts';
import type { MeasuredPack } from '../../tape/pack-of-reel.ts';
import { lengthPlayed } from '../../tape/playing-time.ts';
import { crossCheck } from '../check.ts';

/** A pack that, at its longest by the error of its measures, is shorter than its stated length needs at its stated
 * speed. Only a pack that is too short contradicts; see time/pack-longer. */
const tooShort = crossCheck({
  code: 'time/pack-length',
  title: 'The pack is too short for the stated length and speed',
  severity: 'warning',
  scope: 'reel',
  reads: ['duration', 'speed', 'leastRun', 'pack'],
  judge: ({ duration, speed, leastRun, pack }) => {
    const neededMm = lengthPlayed(leastRun.valueS, speed.value);
    if (neededMm - leastRun.errorS * speed.value <= pack.band.highMm) return [];
    const fitting = packAgainstSpeeds(pack.band, leastRun).filter((row) => row.answer !== 'too-short');
    const agreeing = fitting.find((row) => row.answer === 'agrees') ?? fitting[0];
    const expected =
      agreeing === undefined
        ? `${metresInWords(neededMm)} of tape or more`
        : `${speedInWords(agreeing.speed.speedMmPerS)}, which needs ${metresInWords(agreeing.neededMm)}`;
    return [
      {
        place: speed.place,
        message: 'The wound pack is too short for the stated length at the stated speed.',
        found: `${speed.written} for ${duration.written}, which needs ${metresInWords(neededMm)}; the pack is ${metresInWords(pack.band.valueMm)}, at most ${metresInWords(pack.band.highMm)}`,
        expected,
        action: `${speedAdvice(agreeing?.speed.speedMmPerS, agreeing?.answer)} ${thicknessAdvice(pack, neededMm)} Measure the pack once more across the tape, not across the reel.`,
        related: [
          { message: `outside-diameter: ${pack.outside.written}`, place: pack.outside.place },
          { message: `hub-diameter: ${pack.hub.written}`, place: pack.hub.place },
          { message: `length: ${duration.written}`, place: duration.place },
        ],
      },
    ];
  },
});

function speedAdvice(speedMmPerS: MillimetresPerSecond | undefined, answer: string | undefined): string {
  if (speedMmPerS === undefined) return 'Look at the stated length again: no standard speed fits it into this pack.';
  const speed = speedInWords(speedMmPerS);
  return answer === 'agrees'
    ? `Look at the box for the speed: the pack agrees with ${speed}.`
    : `Look at the box for the speed: at ${speed} it would fit, with tape to spare.`;
}

function thicknessAdvice({ outside, hub, thickness }: MeasuredPack, neededMm: ReturnType<typeof lengthPlayed>): string {
  const wantedUm = thicknessThatHolds(outside.value.value, hub.value.value, neededMm);
  if (isThinnerThanMade(wantedUm)) return 'No tape is thin enough to make it fit otherwise.';
  const name = nameOfThickness(wantedUm);
  const called = name === undefined ? '' : `, as ${name} tape has`;
  return `A thickness of ${Math.round(wantedUm)} µm${called}, in place of ${writtenThickness(thickness)}, would make it fit too.`;
}

const writtenThickness = (thickness: Known<unknown>) => listInWords([thickness.written]);

/** A hub that leaves no room for tape: the two measures are likely to have changed places. */
const noTape = crossCheck({
  code: 'time/pack-length',
  title: 'The hub is as wide as the pack',
  severity: 'warning',
  scope: 'reel',
  reads: ['outsideDiameter', 'hubDiameter'],
  judge: ({ outsideDiameter: outside, hubDiameter: hub }) => {
    const slack = (outside.value.plusMinus ?? ASSUMED_DIAMETER_MM) + (hub.value.plusMinus ?? ASSUMED_DIAMETER_MM);
    if (hub.value.value - outside.value.value < -slack) return [];
    const swapped = hub.value.value > outside.value.value + slack;
    return [
      {
        place: hub.place,
        message: swapped ? 'The hub is wider than the tape wound on it.' : 'The hub leaves no room for tape.',
        found: `hub-diameter: ${hub.written}, outside-diameter: ${outside.written}`,
        expected: swapped
          ? `hub-diameter: ${outside.written}, outside-diameter: ${hub.written}, if the two changed places`
          : `a hub of less than ${outside.written}`,
        action:
          'Measure both again: the outside diameter across the wound tape, the hub where the first turn lies on it. An empty hub needs no diameters of a pack.',
        related: [{ message: `outside-diameter: ${outside.written}`, place: outside.place }],
      },
    ];
  },
});

export const packLength = [tooShort, noTape] as const;
