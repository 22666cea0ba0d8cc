import type { Equalisation, TimeConstants } from '#model/equalisation.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { hertz, type MillimetresPerSecond } from '#model/units.ts';
import { curveOf, yearsOf } from '../equalisation/curve-of.ts';
import { worstDifference } from '../equalisation/replay-difference.ts';
import { constantsInWords, sameConstants } from '../equalisation/time-constants.ts';
import { speedInWords } from '../figure/in-words.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { machineUnknown, reason, tapeUnknown } from './reason.ts';

/** A replay position that a machine has at one speed; the constants are missing where its name could mean two. */
export interface MachinePosition {
  readonly speed: Known<MillimetresPerSecond>;
  readonly written: string;
  readonly constants: TimeConstants | undefined;
}

export function positionsAt(machine: Machine, speedMmPerS: MillimetresPerSecond): readonly MachinePosition[] {
  return itemsOf(machine.equalisations).flatMap(({ speed, curve }) => {
    if (speed === undefined || curve === undefined || !sameSpeed(speed.value, speedMmPerS)) return [];
    return [{ speed, written: curve.written, constants: constantsOf(curve.value, speedMmPerS) }];
  });
}

function constantsOf(equalisation: Equalisation, speedMmPerS: MillimetresPerSecond): TimeConstants | undefined {
  const answer = curveOf(equalisation, speedMmPerS, undefined);
  return answer.is === 'resolved' ? answer.curve : undefined;
}

/** The time constants that the tape was recorded for, as far as its name, speed and year say; or why not. */
export function tapeCurve(reel: Reel): TimeConstants | { readonly why: string } {
  const { equalisation, speed } = reel.format;
  if (equalisation?.is !== 'known') return { why: 'Read it from the legend; don’t guess it from the speed.' };
  if (speed?.is !== 'known') return { why: 'A curve’s name means nothing without the speed: record that first.' };
  const answer = curveOf(equalisation.value, speed.value, yearsOf(valueOf(reel.recorded)?.on?.value));
  switch (answer.is) {
    case 'resolved':
      return answer.curve;
    case 'ambiguous':
      return {
        why: `${equalisation.written} at ${speed.written} can be ${answer.meanings.map(constantsInWords).join(' or ')}: record the year, or the time constants.`,
      };
    case 'not-at-speed':
      return { why: `No standard defines ${equalisation.written} at ${speed.written}. Look at the legend again.` };
  }
}

const AUDIBLE_FROM_HZ = hertz(40);
const AUDIBLE_TO_HZ = hertz(20_000);

/** Whether the machine has the tape's curve at the tape's own speed. Another curve still plays, and is off by a known
 * amount that can be put right in the digital file. */
export function curveReason(reel: Reel, machine: Machine): PlayingReason {
  const { equalisation, speed } = reel.format;
  const positions = speed?.is === 'known' ? positionsAt(machine, speed.value) : [];
  const has = positions.map((position) => position.written);
  const curve = tapeCurve(reel);
  if (equalisation?.is !== 'known' || speed?.is !== 'known' || 'why' in curve) {
    const record = 'why' in curve ? curve.why : '';
    const unknown = tapeUnknown('equalisation', has, record);
    return equalisation?.is === 'known' ? { ...unknown, needs: equalisation.written, says: record } : unknown;
  }
  const needs = `${equalisation.written}, ${constantsInWords(curve)}`;
  const speeds = itemsOf(machine.speeds);
  if (speeds.length > 0 && !speeds.some((one) => sameSpeed(one.value, speed.value))) {
    return reason(
      'equalisation',
      'cannot',
      needs,
      has,
      'The machine doesn’t run at the tape’s speed, so it has no curve for it.',
    );
  }
  if (positions.length === 0) {
    return machineUnknown('equalisation', needs, `Write which curve it has at ${speedInWords(speed.value)}.`);
  }
  const same = positions.find((one) => one.constants !== undefined && sameConstants(one.constants, curve));
  if (same !== undefined)
    return reason('equalisation', 'plays', needs, has, `Its ${same.written} position is the tape’s curve.`);
  const [near] = differing(curve, positions, speed.value);
  if (near === undefined || positions.some((one) => one.constants === undefined)) {
    const says = 'What its position means can’t be told from the name alone: write the time constants, such as inf/35.';
    return reason('equalisation', 'not recorded', needs, has, says);
  }
  const says = `Played on ${near.written} it is off by up to ${Math.abs(near.worstDb).toFixed(1)} dB between 40 Hz and 20 kHz; keep the setting on record and put it right in the digital file.`;
  return reason('equalisation', 'plays with care', needs, has, says);
}

/** The positions with their largest difference from the tape's curve, the nearest first. */
function differing(
  curve: TimeConstants,
  positions: readonly MachinePosition[],
  speedMmPerS: MillimetresPerSecond,
): readonly { readonly written: string; readonly worstDb: number }[] {
  return positions
    .flatMap(({ written, constants }) =>
      constants === undefined
        ? []
        : [
            {
              written,
              worstDb: worstDifference(
                { ...curve, speedMmPerS },
                { ...constants, speedMmPerS },
                AUDIBLE_FROM_HZ,
                AUDIBLE_TO_HZ,
              ),
            },
          ],
    )
    .sort((a, b) => Math.abs(a.worstDb) - Math.abs(b.worstDb));
}
