import { itemsOf, valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import { asMetres, type Millimetres } from '#model/units.ts';
import { clock } from '../figure/in-words.ts';
import { playingTime } from '../tape/playing-time.ts';
import { reelCapacity } from '../tape/reel-capacity.ts';
import { machineUnknown, reason, tapeUnknown } from './reason.ts';

/** A reel's nominal size and a measured pack differ by less than this from what a table takes. */
const SLACK_MM = 1;

const PANCAKE =
  'A pancake needs a plate and an adaptor under it, and can’t go on a reel table alone. Carry it flat, plate and all, hub supported, never by the edge. (common practice, no source)';

/** What carries the tape, and whether it is small enough. */
export const carriageReasons = (reel: Reel, machine: Machine, stock: Stock | undefined): readonly PlayingReason[] => [
  carrier(reel, machine),
  size(reel, machine, stock),
];

function carrier(reel: Reel, machine: Machine): PlayingReason {
  const takes = itemsOf(machine.takes);
  const has = takes.map((one) => one.written);
  const woundOn = reel.pack.woundOn;
  if (woundOn?.is !== 'known') return tapeUnknown('carrier', has, 'Write whether it is on a reel or a bare hub.');
  if (takes.length === 0) return machineUnknown('carrier', woundOn.written, 'Write what it takes: reel, bare hub.');
  const fits = takes.some((one) => one.value === woundOn.value);
  if (woundOn.value === 'bare hub') {
    const says = fits
      ? `Takes a pancake. ${PANCAKE}`
      : `Takes no pancake. ${PANCAKE} Have it wound on to a reel by someone who does this weekly, if it may be wound at all.`;
    return reason('carrier', fits ? 'plays' : 'cannot', woundOn.written, has, says);
  }
  return reason(
    'carrier',
    fits ? 'plays' : 'cannot',
    woundOn.written,
    has,
    fits ? 'Takes a reel.' : 'Takes bare hubs only.',
  );
}

function size(reel: Reel, machine: Machine, stock: Stock | undefined): PlayingReason {
  const largest = machine.largestReel;
  const has = largest?.is === 'known' ? [largest.written] : [];
  const { reelSize, outsideDiameter, woundOn } = reel.pack;
  const across = woundOn?.is === 'known' && woundOn.value === 'bare hub' ? outsideDiameter : reelSize;
  if (across?.is !== 'known')
    return tapeUnknown('size', has, 'Measure across the flange, or across the pack where it has none.');
  if (largest?.is !== 'known') return machineUnknown('size', across.written, 'Write the largest reel that it takes.');
  if (across.value.value <= largest.value.value + SLACK_MM) {
    return reason('size', 'plays', across.written, has, 'The turntables are large enough.');
  }
  return reason(
    'size',
    'cannot',
    across.written,
    has,
    `Too large for it. ${whatFits(reel, largest.value.value, stock)}`,
  );
}

const DONT_CUT =
  'Don’t cut the tape to make it fit: a cut can’t be undone, and costs programme or a splice that may fail. Look for a machine that takes it whole, and ask someone who does this weekly.';

/** How much of the tape the largest reel would hold, with the caution that must stand beside it. */
function whatFits(reel: Reel, largestMm: Millimetres, stock: Stock | undefined): string {
  const thickness = valueOf(stock?.thickness);
  if (thickness === undefined)
    return `How much its largest reel holds isn’t known without the tape’s total thickness. ${DONT_CUT}`;
  const { surelyMm, atMostMm } = reelCapacity(largestMm, thickness.value, thickness.plusMinus ?? 1);
  const speed = valueOf(reel.format.speed);
  const metres = `${asMetres(surelyMm).toFixed(0)} m surely and ${asMetres(atMostMm).toFixed(0)} m at the most`;
  const time =
    speed === undefined
      ? ''
      : `, ${clock(playingTime(surelyMm, speed))} to ${clock(playingTime(atMostMm, speed))} at the tape’s speed`;
  return `Its largest reel holds ${metres}${time}. ${DONT_CUT}`;
}
