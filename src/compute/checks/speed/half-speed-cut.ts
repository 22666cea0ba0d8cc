import type { RevolutionsPerMinute } from '#model/units.ts';
import type { PositionWanted } from '../../equalisation/other-speed.ts';
import { constantsInWords } from '../../equalisation/time-constants.ts';
import { listInWords, speedInWords } from '../../figure/in-words.ts';
import { crossCheck } from '../check.ts';

/** What a half-speed cut took, and takes again: nothing is wrong, but the tape's own label doesn't say it. */
export const halfSpeedCut = crossCheck({
  code: 'speed/half-speed-cut',
  title: 'What a half-speed cut takes',
  severity: 'note',
  scope: 'reel',
  reads: ['halfSpeed'],
  judge: ({ halfSpeed }) => {
    const { cuts, speed, tapeSpeedMmPerS, latheRpm, position } = halfSpeed;
    const [first, ...more] = cuts;
    if (first === undefined) return [];
    const numbers = cuts.flatMap((cut) => (cut.number === undefined ? [] : [cut.number.written]));
    const which = numbers.length === 0 ? 'a cut' : `cut ${listInWords(numbers)}`;
    return [
      {
        place: first.halfSpeed?.place ?? first.place,
        message: `A half-speed cut runs this ${speedInWords(speed.value)} tape at ${speedInWords(tapeSpeedMmPerS)}.`,
        found: `${which} at half speed, from a tape of ${speed.written}`,
        expected: `the tape at ${speedInWords(tapeSpeedMmPerS)}, ${latheInWords(latheRpm)}, ${positionInWords(position)}`,
        action: `${positionAdvice(position)} The cutter’s own time constants are doubled too, to 6360, 636 and 150 µs, and a noise-reduction decoder made for full speed is wrong at half. If the box doesn’t say half speed, look at it again.`,
        related: more.map((cut) => ({
          message: `cut ${cut.number?.written ?? ''}`.trim(),
          place: cut.halfSpeed?.place ?? cut.place,
        })),
      },
    ];
  },
});

function latheInWords(rpm: RevolutionsPerMinute | undefined): string {
  if (rpm === undefined) return 'the lathe at half the record’s speed';
  const thirds = Math.round(rpm * 3);
  return `the lathe at ${thirds % 3 === 2 ? `${Math.floor(rpm)}⅔` : Number(rpm.toFixed(2))} rpm`;
}

function positionInWords(position: PositionWanted | undefined): string {
  if (position === undefined) return 'replay time constants twice the tape’s own';
  const wanted = `${constantsInWords(position.wanted)} on replay`;
  if (position.exact.length === 0) return `${wanted}, which no standard defines at that speed`;
  return `${wanted}, which is ${listInWords([...new Set(position.exact.map((row) => row.name))], 'or')} there`;
}

function positionAdvice(position: PositionWanted | undefined): string {
  if (position === undefined)
    return 'Record the tape’s equalisation: then the replay position that this takes can be named.';
  if (position.exact.length > 0) return 'Set the replay machine to that position; the match is exact.';
  const near = position.sameTreble.map((row) => row.called);
  const nearly =
    near.length === 0 ? '' : ` Nearest: ${listInWords([...new Set(near)], 'or')}, which differs in the bass.`;
  return `Have a replay position made for it, or put the difference right before the cutter.${nearly}`;
}
