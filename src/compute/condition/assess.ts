import type { ClimateSummary } from '#model/climate.ts';
import type { Entries } from '#model/entries.ts';
import { valueOf } from '#model/fact.ts';
import type { Finding } from '#model/finding.ts';
import type { Reel } from '#model/reel.ts';
import { keeping } from '../kept.ts';
import { gatherFacts } from './gather-facts.ts';
import { CONDITION_RULES } from './rules/index.ts';

/** What each condition rule finds of each reel, by reel id; every rule answers for every reel, with `not-recorded`
 * where its facts are missing.
 * @param climate  what the logs of each place come to, by places/ id. */
export function assessCondition(
  entries: Entries,
  climate: ReadonlyMap<string, ClimateSummary>,
): ReadonlyMap<string, readonly Finding[]> {
  const stocks = new Map(entries.stocks.map((stock) => [stock.id, stock]));
  return new Map(
    entries.reels.map((reel) => {
      const place = valueOf(reel.placeKept)?.at?.value;
      const stock = stocks.get(valueOf(reel.stock) ?? '');
      const air = place === undefined ? undefined : climate.get(place);
      const findings = kept(reel, [stock, air], () => {
        const facts = gatherFacts(reel, stock, air);
        return CONDITION_RULES.map((rule) => rule.assess(facts));
      });
      return [reel.id, findings];
    }),
  );
}

const kept = keeping<Reel, readonly Finding[]>();
