import type { TimeConstants } from '#model/equalisation.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { OtherSpeed } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { hertz, type MillimetresPerSecond, type Seconds, seconds } from '#model/units.ts';
import { worstDifference } from '../equalisation/replay-difference.ts';
import { constantsAtSpeed, constantsInWords, sameConstants } from '../equalisation/time-constants.ts';
import { clock, speedInWords } from '../figure/in-words.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { type MachinePosition, positionsAt, tapeCurve } from './curve-fit.ts';

/** As recorded. */
const LOWEST_HZ = 40;
const HIGHEST_HZ = 20_000;

/** Playing a tape at half or double its speed on a machine that hasn't its own, and putting it right in the digital
 * file: with which position, whether that is exact, and what it costs. The time constants that the tape then needs are
 * its own times recorded speed / replay speed. Nothing is offered while the tape's speed or curve isn't known. */
export function otherSpeeds(reel: Reel, machine: Machine): readonly OtherSpeed[] {
  const speed = valueOf(reel.format.speed);
  const curve = tapeCurve(reel);
  const own = itemsOf(machine.speeds);
  if (speed === undefined || 'why' in curve || own.some((one) => sameSpeed(one.value, speed))) return [];
  return own.flatMap((one) => {
    const ratio = [0.5, 2].find((times) => sameSpeed(one.value, (speed * times) as MillimetresPerSecond));
    if (ratio === undefined) return [];
    const positions = positionsAt(machine, one.value);
    const tried = positions.length === 0 ? [undefined] : positions;
    return tried.map((position) => atSpeed(reel, { speed, curve, at: one.value, ratio }, position));
  });
}

interface Change {
  readonly speed: MillimetresPerSecond;
  readonly curve: TimeConstants;
  readonly at: MillimetresPerSecond;
  readonly ratio: number;
}

function atSpeed(reel: Reel, change: Change, position: MachinePosition | undefined): OtherSpeed {
  const { speed, curve, at, ratio } = change;
  const wanted = constantsAtSpeed(curve, speed, at);
  const constants = position?.constants;
  const exact = constants !== undefined && sameConstants(constants, wanted);
  const worstDb =
    constants === undefined
      ? undefined
      : exact
        ? 0
        : Math.abs(
            worstDifference(
              { ...curve, speedMmPerS: speed },
              { ...constants, speedMmPerS: at },
              hertz(LOWEST_HZ * ratio),
              hertz(HIGHEST_HZ * ratio),
            ),
          );
  const duration = valueOf(reel.durationS);
  const takesS = duration === undefined ? undefined : seconds(duration / ratio);
  const fit = inWords(wanted, position, exact, worstDb);
  return {
    speed: at,
    ratio,
    curve: position?.written ?? 'not recorded',
    exact,
    worstDb,
    takesS,
    says: `At ${speedInWords(at)} the tape needs ${constantsInWords(wanted)}. ${fit} ${cost(ratio, takesS, reel)}`,
  };
}

function inWords(
  wanted: TimeConstants,
  position: MachinePosition | undefined,
  exact: boolean,
  worstDb: number | undefined,
): string {
  if (position === undefined) return 'Which curve the machine has there isn’t recorded.';
  if (exact) return `Its ${position.written} position is exactly that.`;
  if (worstDb === undefined) return `What its ${position.written} position means can’t be told from the name alone.`;
  return `Its ${position.written} position isn’t: the file has to be put right by up to ${worstDb.toFixed(1)} dB, towards ${constantsInWords(wanted)}.`;
}

const HALF =
  'Everything comes off an octave low: what was 40 Hz passes at 20 Hz, near or past the lowest that a machine and its amplifiers carry.';
const DOUBLE =
  'Everything comes off an octave up: what was 20 kHz passes at 40 kHz, past most heads and amplifiers, so the top is lost; capture at twice the sampling rate.';

function cost(ratio: number, takesS: Seconds | undefined, reel: Reel): string {
  const time =
    takesS === undefined ? `It takes ${ratio < 1 ? 'twice' : 'half'} the time.` : `It takes ${clock(takesS)}.`;
  const decoder =
    reel.format.noiseReduction?.is === 'none'
      ? ''
      : ' A noise-reduction decoder built for full speed is wrong here: decode after the file is back at its speed.';
  return `${ratio < 1 ? HALF : DOUBLE} ${time}${decoder}`;
}
