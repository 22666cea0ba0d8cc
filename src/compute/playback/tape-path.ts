import { itemsOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { PlayingReason, Verdict } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { asInches } from '#model/units.ts';
import type { TrackFormat } from '#model/words.ts';
import { directionDecides, headFit } from './head-fit.ts';
import { machineUnknown, reason, tapeUnknown } from './reason.ts';

/** Nominal quarter inch is 6.25 to 6.35 mm, and early tape up to 6.5 mm: one width. The next is twice that.
 * Source: a restoration engineer’s page on quarter-inch formats. */
const SAME_WIDTH_MM = 0.3;

/** Width and tracks: what passes the guides, and what the head reads of it. */
export const tapePathReasons = (reel: Reel, machine: Machine): readonly PlayingReason[] => [
  width(reel, machine),
  tracks(reel, machine),
  ...direction(reel),
];

function width(reel: Reel, machine: Machine): PlayingReason {
  const own = itemsOf(machine.widths);
  const has = own.map((one) => one.written);
  const tape = reel.format.width;
  if (tape?.is !== 'known') return tapeUnknown('width', has, 'Measure across the leader.');
  if (own.length === 0) return machineUnknown('width', tape.written, 'Write its width, such as 1/4 in.');
  const fits = own.some((one) => Math.abs(one.value.value - tape.value.value) <= SAME_WIDTH_MM);
  const says = fits
    ? 'The tape runs in its guides.'
    : `Its guides and heads are for ${has.join(' and ')} tape; this is ${Number(asInches(tape.value.value).toFixed(3))} in wide.`;
  return reason('width', fits ? 'plays' : 'cannot', tape.written, has, says);
}

const BEST_FIRST: readonly Verdict[] = ['plays', 'plays with care', 'not recorded', 'cannot'];

/** The best of the heads that are fitted. */
function tracks(reel: Reel, machine: Machine): PlayingReason {
  const heads = itemsOf(machine.tracks);
  const has = heads.map((head) => head.written);
  const format = reel.format.tracks;
  if (format?.is !== 'known')
    return tapeUnknown('tracks', has, 'Read it from the legend, or ask for it to be seen with a viewer.');
  if (heads.length === 0) return machineUnknown('tracks', format.written, 'Write which heads are fitted.');
  const recorded = format.value;
  const running = reel.format.direction?.is === 'known' ? reel.format.direction.value : undefined;
  const fits = heads.map((head) => tracksOn(recorded, running, head.value));
  const best = fits.toSorted((a, b) => BEST_FIRST.indexOf(a.verdict) - BEST_FIRST.indexOf(b.verdict))[0];
  if (best === undefined) throw new Error('fault: heads were counted and then gone');
  return reason('tracks', best.verdict, format.written, has, best.says);
}

function tracksOn(
  recorded: TrackFormat,
  running: 'one' | 'both' | undefined,
  head: TrackFormat,
): { verdict: Verdict; says: string } {
  const fit = headFit(recorded, running, head);
  if (fit !== undefined) return { verdict: fit.verdict, says: `${fit.says} (${fit.source})` };
  const says = directionDecides(recorded, head)
    ? 'Whether the tape was recorded in one direction or both isn’t recorded, and decides. Look for a second side on the legend.'
    : 'One of the two is “other”: compare the track drawings of both before anything is threaded.';
  return { verdict: 'not recorded', says };
}

/** A tape with both directions is turned over; that takes no more of the machine. */
function direction(reel: Reel): readonly PlayingReason[] {
  const running = reel.format.direction;
  if (running?.is !== 'known' || running.value !== 'both') return [];
  const says = 'Recorded in both directions: play one, let the tape run off, turn it over for the other.';
  return [reason('direction', 'plays', running.written, [], says)];
}
