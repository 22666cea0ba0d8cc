import type { Day } from '#model/dates.ts';
import { itemsOf } from '#model/fact.ts';
import type { EarlierBake } from '#model/plan.ts';
import type { Handling, Reel } from '#model/reel.ts';

const MONTH_MS = 31 * 24 * 3_600_000;

/** Every bake that was done, in the order of the entry; a planned one isn't counted. */
export function earlierBakes(reel: Reel): readonly EarlierBake[] {
  const done = itemsOf(reel.handling).filter((handling) => handling.planned?.value !== true);
  const transfers = done.filter((handling) => handling.what.value === 'transfer');
  return done
    .filter((handling) => handling.what.value === 'bake')
    .map((bake) => ({
      on: bake.on?.written ?? 'a day not recorded',
      how: [bake.temperatureC?.written ?? 'heat not recorded', bake.durationS?.written ?? 'time not recorded'].join(
        ', ',
      ),
      ended: bake.ended?.value,
      transferredOn: transferAfter(bake, transfers)?.on?.written,
    }));
}

function transferAfter(bake: Handling, transfers: readonly Handling[]): Handling | undefined {
  const ended = bake.ended === undefined ? bake.on?.value.latest : (bake.ended.value.slice(0, 10) as Day);
  if (ended == null) return undefined;
  return transfers.find(({ on }) => {
    const day = on?.value.earliest;
    return day != null && ended <= day && Date.parse(day) - Date.parse(ended) <= MONTH_MS;
  });
}
