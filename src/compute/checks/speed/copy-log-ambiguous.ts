import type { Known } from '#model/fact.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { speedInWords } from '../../figure/in-words.ts';
import { packAgainstSpeeds } from '../../tape/pack-decides.ts';
import { leastRun, type MeasuredPack, mayRunBothWays } from '../../tape/pack-of-reel.ts';
import { sameSpeed } from '../../tape/speeds.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** A log line with another speed than the master's: the copy's tape speed, or both machines run faster or slower than
 * real time. Settled, and silent, where the copy's own entry says that it has the master's speed. */
export const copyLogAmbiguous = crossCheck({
  code: 'speed/copy-log-ambiguous',
  title: 'A copy log’s speed can mean two things',
  severity: 'note',
  scope: 'reel',
  reads: ['speed', 'logLines'],
  judge: ({ speed, logLines }) =>
    logLines.flatMap(({ line, copy, pack }): readonly Doubt[] => {
      if (line.speed === undefined || sameSpeed(line.speed.value, speed.value)) return [];
      if (copy?.format.speed?.is === 'known' && sameSpeed(copy.format.speed.value, speed.value)) return [];
      const packSays = copy === undefined ? undefined : whatPackSays(copy, pack, line.speed.value, speed.value);
      return [doubtAbout(line, line.speed, speed, packSays)];
    }),
});

function doubtAbout(
  line: LogLine,
  logged: Known<MillimetresPerSecond>,
  master: Known<MillimetresPerSecond>,
  packSays: string | undefined,
): Doubt {
  const isFaster = logged.value > master.value;
  const times = timesInWords(logged.value / master.value);
  const [inLog, onMaster] = [speedInWords(logged.value), speedInWords(master.value)];
  const better = isFaster
    ? `A ${inLog} copy is a better tape, and takes a machine that runs so; one run fast is an ordinary ${onMaster} tape, with less at the top.`
    : `A copy below the master’s speed was usually made for another use; one run slow is no worse.`;
  return {
    place: logged.place,
    message: `The log gives ${inLog} for a copy of a ${onMaster} master, which can mean two things.`,
    found: `${logged.written} in the log, ${master.written} on the master`,
    expected: `either a copy recorded at ${inLog}, in real time, or a copy at ${onMaster}, run at ${times} real time`,
    action: `${packSays ?? `Measure the copy’s wound pack: recorded at ${inLog} it holds ${times} the tape.`} ${better}`,
    related: [
      { message: `the master’s speed: ${master.written}`, place: master.place },
      ...(line.number === undefined
        ? []
        : [{ message: `the log’s number: ${line.number.written}`, place: line.number.place }]),
    ],
  };
}

/** `twice`, `half of`, `4 times`, before a noun. */
function timesInWords(ratio: number): string {
  if (Math.abs(ratio - 2) < 0.01) return 'twice';
  if (Math.abs(ratio - 0.5) < 0.01) return 'half of';
  return `${Number(ratio.toPrecision(3))} times`;
}

/** What the copy's measured pack says of the two readings; undefined when it isn't measured. */
function whatPackSays(
  copy: Reel,
  pack: MeasuredPack | undefined,
  logged: MillimetresPerSecond,
  master: MillimetresPerSecond,
): string | undefined {
  if (pack === undefined || copy.durationS?.is !== 'known' || mayRunBothWays(copy)) return undefined;
  const rows = packAgainstSpeeds(pack.band, leastRun(copy, copy.durationS));
  const answerAt = (speed: MillimetresPerSecond) => rows.find((row) => sameSpeed(row.speed.speedMmPerS, speed))?.answer;
  const title = `The pack of ${copy.title.written}`;
  const [inLog, onMaster] = [answerAt(logged), answerAt(master)];
  if (inLog === 'too-short')
    return `${title} is too short for ${speedInWords(logged)}: it was recorded at ${speedInWords(master)}.`;
  if (inLog === 'agrees') return `${title} agrees with ${speedInWords(logged)} as its own speed.`;
  if (onMaster === 'agrees')
    return `${title} agrees with ${speedInWords(master)}, so that it was run at another speed than real time.`;
  return `${title} doesn’t decide it: it fits either, with tape to spare.`;
}
