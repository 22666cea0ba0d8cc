import type { NamedPlan } from '#model/care.ts';
import type { Catalogue } from '#model/catalogue.ts';
import type { LocalTime } from '#model/dates.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { PlanReel } from '#model/plan.ts';
import { planBake } from '../plan/bake.ts';
import { planPlaying } from '../plan/playing.ts';

/** With more sets than this each is planned in the browser, from its ids, instead of having pages of its own. */
const MOST_SETS = 60;

/** The plans that stand ready: one for each share made for an engineer, then one for each set of two reels and more.
 * @param reels  those that are here. */
export function namedPlans(
  { entries, today }: Pick<Catalogue, 'entries' | 'today'>,
  reels: readonly PlanReel[],
): readonly NamedPlan[] {
  const byId = new Map(reels.map((reel) => [reel.id, reel]));
  const shares = entries.shares
    .filter((share) => share.audience.value === 'engineer')
    .map((share) => ({
      id: `share-${share.id}`,
      title: share.title.value,
      to: valueOf(share.to),
      members: itemsOf(share.reels).flatMap((id) => byId.get(id.value) ?? []),
    }));
  const sets = [
    ...Map.groupBy(
      reels.filter((reel) => reel.set !== undefined),
      (reel) => reel.set ?? '',
    ),
  ]
    .filter(([, members]) => members.length > 1)
    .map(([set, members]) => ({ id: `set-${slug(set)}`, title: set, to: undefined, members }))
    .sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const start = `${today}T08:00` as LocalTime;
  const ids = new Set<string>();
  return [...shares, ...(sets.length > MOST_SETS ? [] : sets)].flatMap(({ id, title, to, members }) => {
    if (members.length === 0 || ids.has(id)) return [];
    ids.add(id);
    const playing = planPlaying(members);
    return [
      {
        id,
        title,
        sub: subtitle(playing.play.length, playing.leave.length, to),
        reels: members.map((reel) => reel.id),
        playing,
        bake: planBake(members, start),
      },
    ];
  });
}

function subtitle(play: number, leave: number, to: string | undefined): string {
  const stays = leave === 0 ? '' : `; ${leave} ${leave === 1 ? 'stays in its box' : 'stay in their boxes'}`;
  const count = `${play === 0 ? 'None' : play} to be played${stays}.`;
  return to === undefined ? count : `For ${to}. ${count}`;
}

/** A set's name may be anything: letters and figures stay. */
const slug = (text: string) =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'unnamed';
