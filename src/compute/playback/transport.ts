import { itemsOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { machineUnknown, reason, tapeUnknown } from './reason.ts';

export function speedReason(reel: Reel, machine: Machine): PlayingReason {
  const speeds = itemsOf(machine.speeds);
  const has = speeds.map((one) => one.written);
  const speed = reel.format.speed;
  if (speed?.is !== 'known')
    return tapeUnknown('speed', has, 'Read it from the label; the wound pack and the stated length can tell.');
  if (speeds.length === 0) return machineUnknown('speed', speed.written, 'Write its speeds.');
  const fits = speeds.some((one) => sameSpeed(one.value, speed.value));
  return reason(
    'speed',
    fits ? 'plays' : 'cannot',
    speed.written,
    has,
    fits ? 'It runs at the tape’s speed.' : 'It doesn’t run at the tape’s speed.',
  );
}

/** A tape's noise reduction decides how it sounds, and never whether it turns: a missing decoder is care, no refusal. */
export function noiseReason(reel: Reel, machine: Machine): PlayingReason {
  const fitted = machine.noiseReduction;
  const has = itemsOf(fitted).map((one) => one.written);
  const tape = reel.format.noiseReduction;
  if (tape === undefined)
    return tapeUnknown(
      'noise reduction',
      has,
      'It decides how the tape sounds, not whether it plays: capture it undecoded with its tones, keep that, and decode it once it is known. Look at the legend and under the hub; write none where none was used.',
    );
  if (tape.is === 'none') return reason('noise reduction', 'plays', 'none', has, 'None was used, so none is needed.');
  if (fitted === undefined)
    return machineUnknown('noise reduction', tape.written, 'Write the systems it can decode, or none.');
  if (itemsOf(fitted).some((one) => fold(one.value) === fold(tape.value))) {
    return reason(
      'noise reduction',
      'plays',
      tape.written,
      has,
      'It decodes this system. Set the level by the tape’s own tones.',
    );
  }
  const says =
    'It can’t decode this system. Capture it undecoded with the tape’s tones, keep that on record, and have it decoded later.';
  return reason('noise reduction', 'plays with care', tape.written, has, says);
}

const fold = (name: string) =>
  name
    .toLowerCase()
    .replaceAll(/[\s-]+/g, ' ')
    .trim();

const MAINS = 'Anything inside the case is for someone qualified: there is mains in it.';

export function stateReason(machine: Machine): PlayingReason {
  const state = machine.state;
  if (state?.is !== 'known') return machineUnknown('state', 'working', 'Write whether it works.');
  const has = [state.written];
  switch (state.value) {
    case 'working':
      return reason('state', 'plays', 'working', has, 'It works.');
    case 'needs work':
      return reason(
        'state',
        'cannot',
        'working',
        has,
        `It needs work first, and can’t be counted on until then. ${MAINS}`,
      );
    case 'not tried':
      return reason(
        'state',
        'not recorded',
        'working',
        has,
        `Nobody has tried it. Try it with a tape that doesn’t matter. ${MAINS}`,
      );
  }
}
