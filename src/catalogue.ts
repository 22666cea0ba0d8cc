import { partAccepted } from '#compute/accepted.ts';
import { gatherAttention } from '#compute/attention.ts';
import { runChecks } from '#compute/checks/run.ts';
import { assessCondition } from '#compute/condition/assess.ts';
import { wrongCurves } from '#compute/equalisation/wrong-curves.ts';
import { allNumbers } from '#compute/identifiers/all-numbers.ts';
import { numbersOf } from '#compute/identifiers/numbers-of.ts';
import { traceLineage } from '#compute/lineage/graph.ts';
import { missingFacts } from '#compute/missing.ts';
import { matchMachines } from '#compute/playback/machines.ts';
import { problemsByReel } from '#compute/problems-by-reel.ts';
import { reelSheet } from '#compute/reel-sheet.ts';
import { packVerdict } from '#compute/worked/pack-verdict.ts';
import { workOutReel } from '#compute/worked/reel.ts';
import type { Catalogue, PhotographFact } from '#model/catalogue.ts';
import type { ClimateSummary } from '#model/climate.ts';
import type { Day } from '#model/dates.ts';
import { byPlace, type Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';

/** What was read, validated and measured before anything is computed. */
export interface CatalogueInput {
  readonly entries: Entries;
  /** What reading and validating had to say. */
  readonly problems: readonly Diagnostic[];
  /** By path relative to the collection. */
  readonly photographs: ReadonlyMap<string, PhotographFact>;
  /** What the logs of each place come to, by places/ id. */
  readonly climate: ReadonlyMap<string, ClimateSummary>;
  readonly today: Day;
}

/** Everything that the pages, files and commands say of a collection, in the order in which it is worked out.
 * The same input gives the same catalogue, in any order of files. */
export function buildCatalogue({ entries, problems, photographs, climate, today }: CatalogueInput): Catalogue {
  const lineage = traceLineage(entries);
  const findings = assessCondition(entries, climate);
  const playing = matchMachines(entries);
  const between = runChecks(entries, lineage, today, { findings, playing, climate });
  const { open, accepted } = partAccepted([...problems, ...between].sort(byPlace), entries);
  const ofReel = problemsByReel(open, entries.reels);
  const reels = entries.reels.map((reel) =>
    reelSheet(
      {
        reel,
        findings: findings.get(reel.id) ?? [],
        playing: playing.get(reel.id) ?? { verdicts: [], needs: [] },
        lineage: lineage.byReel.get(reel.id) ?? UNLINKED,
        problems: ofReel.get(reel.id) ?? [],
      },
      {
        numbers: () => numbersOf(reel),
        worked: () => workOutReel(reel, entries),
        packVerdict: () => packVerdict(reel, entries),
        wrongCurves: () => wrongCurves(reel),
        missing: () => missingFacts(reel),
      },
    ),
  );
  return {
    today,
    entries,
    reels,
    lineage,
    numbers: allNumbers(entries),
    problems: open,
    accepted,
    attention: gatherAttention(reels),
    photographs,
    climate,
  };
}

const UNLINKED = {
  parents: [],
  children: [],
  ancestors: [],
  descendants: [],
  generation: { shortest: null, longest: null, unknownLinks: 0, stated: null },
} as const;
