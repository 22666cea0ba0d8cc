import type { ClimateSummary } from '#model/climate.ts';
import type { Entries } from '#model/entries.ts';
import { valueOf } from '#model/fact.ts';
import type { Finding } from '#model/finding.ts';
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
      const facts = gatherFacts(
        reel,
        stocks.get(valueOf(reel.stock) ?? ''),
        place === undefined ? undefined : climate.get(place),
      );
      return [reel.id, CONDITION_RULES.map((rule) => rule.assess(facts))];
    }),
  );
}
