import type { CalendarEvent } from '#model/calendar-event.ts';
import type { Catalogue } from '#model/catalogue.ts';
import { CAUTIONS } from '#model/cautions.ts';
import { type Day, day } from '#model/dates.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { bakeWindow } from '../condition/bake-window.ts';

/** How long after a look a reel is looked at again. Common practice, no source. */
const LOOK_AGAIN_YEARS = 1;

/** What falls due from today on: playback windows after bakes, by each practice; reels to be looked at again; shares and
 * loans that end. In order of time, then by uid. */
export function fallsDue({ entries, today }: Pick<Catalogue, 'entries' | 'today'>): readonly CalendarEvent[] {
  const reels = entries.reels.filter((reel) => reel.status.value === 'held');
  const events = [
    ...reels.flatMap((reel) => windows(reel, today)),
    ...lookAgain(reels, today),
    ...entries.shares.flatMap((share) =>
      ends(`share-${share.id}`, `Share ends: ${share.title.value}`, valueOf(share.until)?.latest, today),
    ),
    ...entries.reels.flatMap((reel) =>
      reel.status.value === 'lent'
        ? ends(`lent-${reel.id}`, `Due back: ${reel.title.value}`, reel.lent?.until?.value.latest, today)
        : [],
    ),
  ];
  return events.sort((a, b) => compare(a.from, b.from) || compare(a.uid, b.uid));
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** Two practices are two events: nobody is to read one as the other. */
function windows(reel: Reel, today: Day): readonly CalendarEvent[] {
  return itemsOf(reel.handling).flatMap(({ what, ended }) => {
    if (what.value !== 'bake' || ended === undefined) return [];
    return bakeWindow(ended.value, ended.value)
      .filter((window) => window.closesLatest.slice(0, 10) >= today)
      .map((window) => ({
        uid: `bake-${reel.id}-${ended.value}-${window.practice}`,
        summary: `Playback window, ${window.practice === 'published' ? 'a published practice' : 'common practice'}: ${reel.title.value}`,
        description: `${window.says}; said to close between ${window.closesEarliest.replace('T', ' ')} and ${window.closesLatest.replace('T', ' ')}. Source: ${window.source}. ${CAUTIONS.playing}`,
        from: ended.value,
        until: window.closesLatest,
      }));
  });
}

/** One event a day on which reels fall due, so that a calendar isn't full of them; all that are overdue stand today. */
function lookAgain(reels: readonly Reel[], today: Day): readonly CalendarEvent[] {
  const due = reels.flatMap((reel) => {
    const looked = itemsOf(reel.condition)
      .flatMap((inspection) => inspection.on?.value.latest ?? [])
      .sort()
      .at(-1);
    return looked === undefined ? [] : [{ title: reel.title.value, on: yearsLater(looked) }];
  });
  const byDay = Map.groupBy(due, ({ on }) => (on < today ? today : on));
  return [...byDay].map(([on, reelsThen]) => ({
    uid: on === today ? 'look-now' : `look-${on}`,
    summary: `Look again at ${reelsThen.length === 1 ? (reelsThen[0]?.title ?? '') : `${reelsThen.length} reels`}`,
    description: `${reelsThen.map(({ title }) => title).join('; ')}. Look and smell, without winding or playing. A year after the last look: common practice, no source.`,
    from: on,
  }));
}

/** 29 February falls on 1 March. */
function yearsLater(from: Day): Day {
  const [year, month, date] = from.split('-').map(Number);
  return day(new Date(Date.UTC((year ?? 0) + LOOK_AGAIN_YEARS, (month ?? 1) - 1, date)).toISOString().slice(0, 10));
}

function ends(uid: string, summary: string, on: Day | null | undefined, today: Day): readonly CalendarEvent[] {
  return on == null || on < today ? [] : [{ uid, summary, description: '', from: on }];
}
