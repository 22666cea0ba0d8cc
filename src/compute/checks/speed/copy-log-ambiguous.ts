import type { Known } from '#model/fact.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { speedInWords } from '../../figure/in-words.ts';
import { packAgainstSpeeds } from '../../tape/pack-decides.ts';
import { leastRun, type MeasuredPack, mayRunBothWays } from '../../tape/pack-of-reel.ts';
import { sameSpeed } from '../../tape/speeds.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** A log line with a higher speed than the master's: the copy's tape speed, or both machines run faster than real time.
 * Settled, and silent, where the copy's own entry has one of the two speeds and its pack doesn't speak against it. */
export const copyLogAmbiguous = crossCheck({
  code: 'speed/copy-log-ambiguous',
  title: 'A copy log’s speed can mean two things',
  severity: 'note',
  scope: 'reel',
  reads: ['speed', 'logLines'],
  judge: ({ speed, logLines }) =>
    logLines.flatMap(({ line, copy, pack }): readonly Doubt[] => {
      if (line.speed === undefined || line.speed.value <= speed.value * 1.5) return [];
      const decided = copy === undefined ? undefined : whatPackSays(copy, pack, line.speed.value, speed.value);
      if (copy !== undefined && isSettled(copy, line.speed.value, speed.value) && decided?.against !== true) return [];
      return [doubtAbout(line, line.speed, speed, decided?.says)];
    }),
});

function doubtAbout(
  line: LogLine,
  logged: Known<MillimetresPerSecond>,
  master: Known<MillimetresPerSecond>,
  packSays: string | undefined,
): Doubt {
  const times = Number((logged.value / master.value).toFixed(2));
  const [fast, slow] = [speedInWords(logged.value), speedInWords(master.value)];
  return {
    place: logged.place,
    message: `The log gives ${fast} for a copy of a ${slow} master, which can mean two things.`,
    found: `${logged.written} in the log, ${master.written} on the master`,
    expected: `either a copy recorded at ${fast}, in real time, or a copy at ${slow} run at ${times} times real time`,
    action: `${packSays ?? `Measure the copy’s wound pack: at ${fast} it holds ${times} times the tape.`} A ${fast} copy is a better one and takes a machine that runs so; one run fast is an ordinary ${slow} tape, with less at the top.`,
    related: [
      { message: `the master’s speed: ${master.written}`, place: master.place },
      ...(line.number === undefined
        ? []
        : [{ message: `the log’s number: ${line.number.written}`, place: line.number.place }]),
    ],
  };
}

const isSettled = ({ format }: Reel, logged: MillimetresPerSecond, master: MillimetresPerSecond) =>
  format.speed?.is === 'known' && (sameSpeed(format.speed.value, logged) || sameSpeed(format.speed.value, master));

/** What the copy's measured pack says of the two readings; undefined when it isn't measured. */
function whatPackSays(
  copy: Reel,
  pack: MeasuredPack | undefined,
  logged: MillimetresPerSecond,
  master: MillimetresPerSecond,
): { says: string; against: boolean } | undefined {
  if (pack === undefined || copy.durationS?.is !== 'known' || mayRunBothWays(copy)) return undefined;
  const rows = packAgainstSpeeds(pack.band, leastRun(copy, copy.durationS));
  const answerAt = (speed: MillimetresPerSecond) => rows.find((row) => sameSpeed(row.speed.speedMmPerS, speed));
  const [fast, slow] = [answerAt(logged), answerAt(master)];
  const own = copy.format.speed?.is === 'known' ? answerAt(copy.format.speed.value) : undefined;
  const against = own?.answer === 'too-short';
  if (fast?.answer === 'too-short') {
    return {
      says: `The pack of ${copy.title.written} is too short for ${speedInWords(logged)}: it was run fast.`,
      against,
    };
  }
  if (fast?.answer === 'agrees' && slow?.answer !== 'agrees') {
    return { says: `The pack of ${copy.title.written} agrees with ${speedInWords(logged)}.`, against };
  }
  return { says: `The pack of ${copy.title.written} fits either.`, against };
}
