import type { Day, LocalTime } from '#model/dates.ts';
import { itemsOf } from '#model/fact.ts';
import type { Finding } from '#model/finding.ts';
import type { EarlierBake, MayBePlayed } from '#model/plan.ts';
import type { Reel } from '#model/reel.ts';
import { bakeWindow } from '../condition/bake-window.ts';

export interface Decision {
  readonly may: MayBePlayed;
  readonly because: readonly string[];
  readonly takes: readonly string[];
  readonly cautions: readonly string[];
}

/** Rules that keep a tape in its box until they are clear; of the others at risk each asks for care. */
const STOPS = ['sticky-shed', 'mould', 'acetate-decay', 'splices'];
/** Of these, what follows from the stock alone, and nobody saw, asks for care: acetate can be played, gently. */
const CARE_UNLESS_SEEN = ['acetate-decay', 'splices'];

/** Whether a reel may go on a machine. Condition comes before curiosity: nobody looked, or its stock isn't known, is a no.
 * A sticky tape that was baked may be played while every practice holds its window open.
 * @param today  the evening of it counts, when no hour is known. */
export function mayBePlayed(
  reel: Reel,
  findings: readonly Finding[],
  bakes: readonly EarlierBake[],
  today: Day,
): Decision {
  if (reel.status.value !== 'held') {
    return no(`It isn’t here: ${reel.status.value}.`, 'Have it brought back, and look at it first.');
  }
  if (reel.condition === undefined) {
    return no(
      'Nobody has recorded its condition.',
      'Look, smell, and photograph the end of the tape, without winding or playing it; write what was found, or none.',
    );
  }
  const open = findings.filter((finding) => finding.outcome !== 'clear');
  const stops = open.filter((finding) => STOPS.includes(finding.rule) && !isCare(finding));
  const care = open.filter((finding) => !stops.includes(finding) && finding.outcome === 'at-risk');
  const sheds = stops.find((finding) => finding.rule === 'sticky-shed');
  const window = sheds === undefined || stops.length > 1 ? undefined : windowAfter(bakes, today);
  if (stops.length === 0 || window?.open === true) {
    const told = [...(window === undefined ? [] : [window.says, ...copied(bakes)]), ...care.map(inShort)];
    return {
      may: told.length === 0 ? 'yes' : 'with care',
      because: told,
      takes: [],
      cautions: [...care, ...(window === undefined ? [] : stops)].flatMap((finding) => finding.cautions),
    };
  }
  return {
    may: 'no',
    because: [...stops.map(inShort), ...(window === undefined ? [] : [window.says])],
    takes: [...copies(reel), ...stops.map((finding) => finding.action)],
    cautions: stops.flatMap((finding) => finding.cautions),
  };
}

const isCare = (finding: Finding) =>
  CARE_UNLESS_SEEN.includes(finding.rule) &&
  !finding.observed &&
  (finding.rule === 'splices' || finding.outcome === 'at-risk');

/** A window that is open is no reason to play a tape again of which there is a copy. */
function copied(bakes: readonly EarlierBake[]): readonly string[] {
  const on = bakes.at(-1)?.transferredOn;
  return on === undefined ? [] : [`Transferred on ${on}: the files are the copy.`];
}

/** What was transferred needs no other play. */
function copies(reel: Reel): readonly string[] {
  const last = itemsOf(reel.handling)
    .filter(({ what, planned }) => what.value === 'transfer' && planned?.value !== true)
    .at(-1);
  if (last === undefined) return [];
  return [`Use the files of its transfer${last.on === undefined ? '' : ` of ${last.on.written}`}: they are the copy.`];
}

/** `Decaying acetate base: vinegar smell on …`: a heading stands before it, so that it need not say what follows. */
const inShort = ({ title, because }: Finding) => `${title}: ${because.replace(/^Found: /, '')}`;

const no = (because: string, takes: string): Decision => ({
  may: 'no',
  because: [because],
  takes: [takes],
  cautions: [],
});

/** What the practices say of the last bake on that day; nothing when none was written with its end, or all are over. */
function windowAfter(bakes: readonly EarlierBake[], today: Day): { open: boolean; says: string } | undefined {
  const ended = bakes
    .flatMap((bake) => bake.ended ?? [])
    .sort()
    .at(-1);
  if (ended === undefined) return undefined;
  if (today < ended.slice(0, 10)) return undefined;
  // By the day alone nobody can tell the hour: on the day of the bake's end it is open, and the closing hour is printed.
  const now = today === ended.slice(0, 10) ? ended : (`${today}T00:00` as LocalTime);
  const windows = bakeWindow(ended, now);
  const told = windows
    .map(({ practice, closesEarliest, closesLatest, state }) => {
      const name = practice === 'published' ? 'a published practice' : 'common practice';
      return `by ${name} it ${state === 'closed' ? 'closed' : 'closes'} ${between(closesEarliest, closesLatest)}`;
    })
    .join('; ');
  return {
    open: windows.every(({ state }) => state === 'open'),
    says: `Baked until ${inWords(ended)}. Its window: ${told}. Two practices, never averaged.`,
  };
}

const inWords = (time: LocalTime) => time.replace('T', ' ');

/** The day once, where both are on it. */
const between = (from: LocalTime, until: LocalTime) =>
  `${inWords(from)} to ${from.slice(0, 10) === until.slice(0, 10) ? until.slice(11) : inWords(until)}`;
