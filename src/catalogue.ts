import { partAccepted } from '#compute/accepted.ts';
import { gatherAttention } from '#compute/attention.ts';
import { runChecks } from '#compute/checks/run.ts';
import { assessCondition } from '#compute/condition/assess.ts';
import { numbersOf } from '#compute/identifiers/numbers-of.ts';
import { traceLineage } from '#compute/lineage/graph.ts';
import { missingFacts } from '#compute/missing.ts';
import { matchMachines } from '#compute/playback/machines.ts';
import { problemsByReel } from '#compute/problems-by-reel.ts';
import { workOutReels } from '#compute/worked/reels.ts';
import type { Catalogue, PhotographFact } from '#model/catalogue.ts';
import type { ClimateSummary } from '#model/climate.ts';
import type { Day } from '#model/dates.ts';
import { byPlace, type Diagnostic } from '#model/diagnostic.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';

/** What was read and measured before anything is computed. */
export interface CatalogueInput {
  readonly files: CollectionFiles;
  /** By path relative to the collection. */
  readonly photographs: ReadonlyMap<string, PhotographFact>;
  /** By places/ id, with the problems of the logs themselves. */
  readonly climate: ReadonlyMap<string, ClimateSummary>;
  readonly climateProblems: readonly Diagnostic[];
  readonly today: Day;
}

/** Everything that the pages, files and commands say of a collection, in the order in which it is worked out.
 * The same input gives the same catalogue, in any order of files. */
export function buildCatalogue({ files, photographs, climate, climateProblems, today }: CatalogueInput): Catalogue {
  const { entries, problems: inEntries } = validateAll(files, photographs);
  const lineage = traceLineage(entries);
  const findings = assessCondition(entries, climate, today);
  const playing = matchMachines(entries);
  const worked = workOutReels(entries);
  const between = runChecks(entries, lineage, today, { findings, playing, climate });
  const all = [...files.problems, ...inEntries, ...climateProblems, ...between].sort(byPlace);
  const { open, accepted } = partAccepted(all, entries);
  const problems = problemsByReel(open, entries.reels);
  const reels = entries.reels.map((reel) => ({
    reel,
    numbers: numbersOf(reel),
    worked: worked.get(reel.id) ?? [],
    findings: findings.get(reel.id) ?? [],
    playing: playing.get(reel.id) ?? { verdicts: [], needs: [] },
    lineage: lineage.byReel.get(reel.id) ?? NO_LINEAGE,
    missing: missingFacts(reel),
    problems: problems.get(reel.id) ?? [],
  }));
  return {
    today,
    entries,
    reels,
    lineage,
    problems: open,
    accepted,
    attention: gatherAttention(reels),
    photographs,
    climate,
  };
}

const NO_LINEAGE = {
  parents: [],
  children: [],
  ancestors: [],
  descendants: [],
  generation: { shortest: null, longest: null, unknownLinks: 0, stated: null },
} as const;
