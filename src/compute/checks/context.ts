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
import { keeping, keepingLists } from '../kept.ts';
import { Notes } from './notes.ts';
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

/** Lists that name the same entries are the same object from one context to the next, so that what goes by them can tell. */
const sameReels = keepingLists<Reel>();
const sameSet = keepingLists<Reel>();
const sameOfEdition = keepingLists<Reel>();
const sameEditions = keepingLists<Edition>();
const sameMachines = keepingLists<Machine>();
const sameStocks = keepingLists<Stock>();
const samePlaces = keepingLists<StoragePlace>();
const samePeople = keepingLists<Person>();
const sameProposals = keepingLists<Proposal>();
const keptReissues = keeping<Edition, readonly string[]>();
const keptInitials = keeping<readonly Person[], ReadonlyMap<string, readonly Person[]>>();

/** @param notes  told of all that is read of the context. */
export function checkContext(
  given: Entries,
  lineage: Lineage,
  today: Day,
  assessed: Assessed,
  notes = new Notes(),
): CheckContext {
  const reels = sameReels(given.reels);
  const editions = sameEditions(given.editions);
  const machines = sameMachines(given.machines);
  const stocks = sameStocks(given.stocks);
  const places = samePlaces(given.places);
  const people = samePeople(given.people);
  const entries = notes.value({ ...given, reels, editions, machines, stocks, places, people });
  const whole = notes.value(lineage);
  const editionsById = byId(editions);
  const initials = keptInitials(people, [], () => peopleByInitials(people));
  const map = <V>(one: ReadonlyMap<string, V> | undefined, list: unknown = lineage) =>
    notes.map(one ?? new Map(), list);
  return {
    get entries() {
      return entries();
    },
    lineage: notedLineage(map(lineage.byReel), whole),
    today,
    assessed: { findings: map(assessed.findings), playing: map(assessed.playing), climate: map(assessed.climate) },
    reels: map(byId(reels), reels),
    editions: map(editionsById, editions),
    machines: map(byId(machines), machines),
    stocks: map(byId(stocks), stocks),
    places: map(byId(places), places),
    people: map(byId(people), people),
    sets: map(grouped(reels, (reel) => (reel.set?.is === 'known' ? [reel.set.value] : []), sameSet)),
    reelsOfEdition: map(
      grouped(reels, (reel) => itemsOf(reel.editions).map((edition) => edition.value), sameOfEdition),
    ),
    reissues: map(reissuesOf(editions, editionsById)),
    proposals: map(
      new Map([...Map.groupBy(lineage.proposals, (one) => one.parent)].map(([id, own]) => [id, sameProposals(own)])),
    ),
    peopleByInitials: map(initials, initials),
    editionLineages: map(new Map(lineage.byEdition.map((one) => [one.edition, one]))),
  };
}

/** A reel's own place in the lineage is noted by itself; whoever asks for the rest goes by all of it. */
const notedLineage = (byReel: Lineage['byReel'], whole: () => Lineage): Lineage => ({
  byReel,
  get edges() {
    return whole().edges;
  },
  get byEdition() {
    return whole().byEdition;
  },
  get proposals() {
    return whole().proposals;
  },
  get cycles() {
    return whole().cycles;
  },
});

function reissuesOf(
  editions: readonly Edition[],
  byId: ReadonlyMap<string, Edition>,
): ReadonlyMap<string, readonly string[]> {
  const reissues = new Map<string, string[]>();
  for (const edition of editions) {
    for (const earlier of itemsOf(edition.reissueOf)) {
      const later = reissues.get(earlier.value);
      if (later === undefined) reissues.set(earlier.value, [edition.id]);
      else later.push(edition.id);
    }
  }
  return new Map(
    [...reissues].map(([id, later]) => {
      const earlier = byId.get(id);
      return [id, earlier === undefined ? later : keptReissues(earlier, later, () => later)];
    }),
  );
}

const byId = <T extends { readonly id: string }>(entries: readonly T[]): ReadonlyMap<string, T> =>
  new Map(entries.map((entry) => [entry.id, entry]));

function grouped(
  reels: readonly Reel[],
  namesOf: (reel: Reel) => readonly string[],
  same: (group: readonly Reel[]) => readonly Reel[],
): ReadonlyMap<string, readonly Reel[]> {
  const groups = new Map<string, Reel[]>();
  for (const reel of reels) {
    for (const name of new Set(namesOf(reel))) {
      const group = groups.get(name);
      if (group === undefined) groups.set(name, [reel]);
      else group.push(reel);
    }
  }
  return new Map([...groups].map(([name, group]) => [name, same(group)]));
}
