import type { ClimateSummary } from '#model/climate.ts';
import type { Day } from '#model/dates.ts';
import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Finding } from '#model/finding.ts';
import type { EditionLineage, Lineage, Proposal } from '#model/lineage.ts';
import type { Machine } from '#model/machine.ts';
import type { Person } from '#model/person-entry.ts';
import type { Playing } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { StoragePlace } from '#model/storage-place.ts';
import { peopleByInitials } from './people-facts.ts';

/** What was worked out before the checks run; a part that is missing keeps the checks that read it silent. */
export interface Assessed {
  /** By reel id. */
  readonly findings?: ReadonlyMap<string, readonly Finding[]>;
  /** By reel id. */
  readonly playing?: ReadonlyMap<string, Playing>;
  /** By places/ id. */
  readonly climate?: ReadonlyMap<string, ClimateSummary>;
}

/** Everything that facts are gathered from, indexed once. */
export interface CheckContext {
  readonly entries: Entries;
  readonly lineage: Lineage;
  readonly today: Day;
  readonly assessed: Assessed;
  readonly reels: ReadonlyMap<string, Reel>;
  readonly editions: ReadonlyMap<string, Edition>;
  readonly machines: ReadonlyMap<string, Machine>;
  readonly stocks: ReadonlyMap<string, Stock>;
  readonly places: ReadonlyMap<string, StoragePlace>;
  readonly people: ReadonlyMap<string, Person>;
  /** Reels by the name of their set, in order of id. */
  readonly sets: ReadonlyMap<string, readonly Reel[]>;
  /** Reels by the edition they name, in order of id. */
  readonly reelsOfEdition: ReadonlyMap<string, readonly Reel[]>;
  /** Ids of the editions that reissue one, by its id. */
  readonly reissues: ReadonlyMap<string, readonly string[]>;
  /** Log lines matched to unlinked reels, by the id of the log's own reel. */
  readonly proposals: ReadonlyMap<string, readonly Proposal[]>;
  /** Initials, without points, to the people whose they may be. */
  readonly peopleByInitials: ReadonlyMap<string, readonly Person[]>;
  /** By edition id. */
  readonly editionLineages: ReadonlyMap<string, EditionLineage>;
}

export function checkContext(entries: Entries, lineage: Lineage, today: Day, assessed: Assessed): CheckContext {
  return {
    entries,
    lineage,
    today,
    assessed,
    reels: byId(entries.reels),
    editions: byId(entries.editions),
    machines: byId(entries.machines),
    stocks: byId(entries.stocks),
    places: byId(entries.places),
    people: byId(entries.people),
    sets: grouped(entries.reels, (reel) => (reel.set?.is === 'known' ? [reel.set.value] : [])),
    reelsOfEdition: grouped(entries.reels, (reel) =>
      reel.editions?.is === 'known' ? reel.editions.value.map((edition) => edition.value) : [],
    ),
    reissues: reissuesOf(entries.editions),
    proposals: Map.groupBy(lineage.proposals, (proposal) => proposal.parent),
    peopleByInitials: peopleByInitials(entries.people),
    editionLineages: new Map(lineage.byEdition.map((one) => [one.edition, one])),
  };
}

function reissuesOf(editions: readonly Edition[]): ReadonlyMap<string, string[]> {
  const reissues = new Map<string, string[]>();
  for (const edition of editions) {
    for (const earlier of itemsOf(edition.reissueOf)) {
      const later = reissues.get(earlier.value);
      if (later === undefined) reissues.set(earlier.value, [edition.id]);
      else later.push(edition.id);
    }
  }
  return reissues;
}

const byId = <T extends { readonly id: string }>(entries: readonly T[]): ReadonlyMap<string, T> =>
  new Map(entries.map((entry) => [entry.id, entry]));

function grouped(reels: readonly Reel[], namesOf: (reel: Reel) => readonly string[]): ReadonlyMap<string, Reel[]> {
  const groups = new Map<string, Reel[]>();
  for (const reel of reels) {
    for (const name of new Set(namesOf(reel))) {
      const group = groups.get(name);
      if (group === undefined) groups.set(name, [reel]);
      else group.push(reel);
    }
  }
  return groups;
}
