import { knownLinks } from '#render/known-links.ts';
import type { Site } from '#render/site.ts';
import { families } from '#render/views/family.ts';
import { labelPages } from '#render/views/labels.ts';
import { lookupOf } from '#render/views/lookup.ts';
import { lineageOf, namedBy } from '#render/views/named-by.ts';

/** All that a page can ask of a site, each by a name and a text. Small ones first: a page that asks for one thing is
 * made again when that thing changes. The last ones give whole lists: whoever asks is made again whenever any changes. */
export function questionsOf(site: Site) {
  const { catalogue } = site;
  const { entries, lineage } = catalogue;
  const { reel, edition, machine, stock, place, person, problems, trouble } = lookupOf(catalogue);
  const { split, pageOf } = knownLinks(catalogue);
  const { reelsOfEdition, reelsOfPerson, reissuesOf } = namedBy(catalogue);
  const { edgesInto, proposalsFor } = lineageOf(lineage);
  const { all, byNode, byId } = families(catalogue);
  const labels = labelPages(catalogue);
  return {
    reel,
    edition,
    machine,
    stock,
    place,
    person,
    problems,
    trouble,
    split,
    pageOf,
    reelsOfEdition,
    reelsOfPerson,
    reissuesOf,
    edgesInto,
    proposalsFor,
    familyOfNode: (node: string) => byNode.get(node),
    familyById: (id: string) => byId.get(id),
    lineageOfReel: (id: string) => lineage.byReel.get(id),
    publishedPhotograph: (path: string) => site.photographs.get(path),
    photograph: (path: string) => catalogue.photographs.get(path),
    climateOf: (id: string) => catalogue.climate.get(id),
    linesOf: (file: string) => site.entryLines?.get(file),
    labelPageCount: () => labels.count,
    labelPage: (number: string) => labels.page(Number(number)),
    today: () => catalogue.today,
    collection: () => entries.collection,
    machines: () => entries.machines,
    cycles: () => lineage.cycles,
    stocks: () => entries.stocks,
    places: () => entries.places,
    people: () => entries.people,
    notes: () => entries.notes,
    sharesEntries: () => entries.shares,
    unusable: () => entries.unusable,
    reels: () => catalogue.reels,
    reelEntries: () => entries.reels,
    editions: () => entries.editions,
    edges: () => lineage.edges,
    lineages: () => lineage.byReel,
    editionLineages: () => lineage.byEdition,
    proposals: () => lineage.proposals,
    families: () => all,
    familiesByNode: () => byNode,
    familiesById: () => byId,
    numbers: () => catalogue.numbers(),
    allProblems: () => catalogue.problems,
    accepted: () => catalogue.accepted,
    attention: () => catalogue.attention,
    photographs: () => catalogue.photographs,
    publishedPhotographs: () => site.photographs,
    climate: () => catalogue.climate,
    entryLines: () => site.entryLines,
    care: () => site.care,
    calculations: () => site.calculations,
    shares: () => site.shares,
    dossier: () => site.dossier,
  } as const;
}

export type Questions = ReturnType<typeof questionsOf>;
export type Question = keyof Questions;
/** Puts a question, and may take a note of it. */
export type Ask = <Q extends Question>(question: Q, about?: string) => ReturnType<Questions[Q]>;
