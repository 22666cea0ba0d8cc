import type { Catalogue } from '#model/catalogue.ts';
import type { Entries } from '#model/entries.ts';
import type { Lineage } from '#model/lineage.ts';
import type { KnownLinks } from '#render/known-links.ts';
import { giving } from '#render/made-once.ts';
import type { Site } from '#render/site.ts';
import type { Families } from '#render/views/family.ts';
import type { LabelPages } from '#render/views/labels.ts';
import type { Lookup } from '#render/views/lookup.ts';
import type { LineageOf, NamedBy } from '#render/views/named-by.ts';
import type { Ask } from './page-questions.ts';

/** Every key, so that none which is added to a type is forgotten here: a page would then read it unseen. */
type Whole<T> = { readonly [K in keyof Required<T>]: T[K] };

/** A site as one page sees it: whatever the page reads is asked for, and there is no other way to the data. It has the
 * look-ups with it that the pages would otherwise make of the whole, each answering one question at a time.
 *
 * Made anew for each page, since what a page makes of the catalogue by itself is kept by the catalogue's identity: what
 * another page had made would otherwise be read without being asked for. */
export function seenSite(base: string, ask: Ask): Site {
  const seen: Whole<Site> = {
    base,
    catalogue: seenCatalogue(ask),
    photographs: seenMap(
      (path) => ask('publishedPhotograph', path),
      () => ask('publishedPhotographs'),
    ),
    entryLines: seenMap(
      (file) => ask('linesOf', file),
      () => ask('entryLines') ?? new Map(),
    ),
    get care() {
      return ask('care');
    },
    get calculations() {
      return ask('calculations');
    },
    get shares() {
      return ask('shares');
    },
    get dossier() {
      return ask('dossier');
    },
  };
  return seen as Site;
}

function seenCatalogue(ask: Ask): Catalogue {
  const catalogue: Whole<Catalogue> = {
    entries: seenEntries(ask),
    lineage: seenLineage(ask),
    photographs: seenMap(
      (path) => ask('photograph', path),
      () => ask('photographs'),
    ),
    climate: seenMap(
      (id) => ask('climateOf', id),
      () => ask('climate'),
    ),
    numbers: () => ask('numbers'),
    get today() {
      return ask('today');
    },
    get reels() {
      return ask('reels');
    },
    get problems() {
      return ask('allProblems');
    },
    get accepted() {
      return ask('accepted');
    },
    get attention() {
      return ask('attention');
    },
  };
  const lookup: Lookup = {
    reel: (id) => ask('reel', id),
    edition: (id) => ask('edition', id),
    machine: (id) => ask('machine', id),
    stock: (id) => ask('stock', id),
    place: (id) => ask('place', id),
    person: (id) => ask('person', id),
    problems: (file) => ask('problems', file),
    trouble: (file) => ask('trouble', file),
  };
  const links: KnownLinks = { split: (text) => ask('split', text), pageOf: (file) => ask('pageOf', file) };
  const named: NamedBy = {
    reelsOfEdition: (id) => ask('reelsOfEdition', id),
    reelsOfPerson: (id) => ask('reelsOfPerson', id),
    reissuesOf: (id) => ask('reissuesOf', id),
  };
  const labels: LabelPages = {
    get count() {
      return ask('labelPageCount');
    },
    page: (number) => ask('labelPage', String(number)),
  };
  const families: Families = {
    get all() {
      return ask('families');
    },
    byNode: seenMap(
      (node) => ask('familyOfNode', node),
      () => ask('familiesByNode'),
    ),
    byId: seenMap(
      (id) => ask('familyById', id),
      () => ask('familiesById'),
    ),
  };
  return giving(catalogue, { lookup, links, named, families, 'label pages': labels });
}

function seenEntries(ask: Ask): Entries {
  const entries: Whole<Entries> = {
    get collection() {
      return ask('collection');
    },
    get reels() {
      return ask('reelEntries');
    },
    get editions() {
      return ask('editions');
    },
    get machines() {
      return ask('machines');
    },
    get stocks() {
      return ask('stocks');
    },
    get places() {
      return ask('places');
    },
    get people() {
      return ask('people');
    },
    get shares() {
      return ask('sharesEntries');
    },
    get notes() {
      return ask('notes');
    },
    get unusable() {
      return ask('unusable');
    },
  };
  return entries;
}

function seenLineage(ask: Ask): Lineage {
  const lineage: Whole<Lineage> = {
    byReel: seenMap(
      (id) => ask('lineageOfReel', id),
      () => ask('lineages'),
    ),
    get edges() {
      return ask('edges');
    },
    get byEdition() {
      return ask('editionLineages');
    },
    get proposals() {
      return ask('proposals');
    },
    get cycles() {
      return ask('cycles');
    },
  };
  const own: LineageOf = {
    edgesInto: (node) => ask('edgesInto', node),
    proposalsFor: (reel) => ask('proposalsFor', reel),
  };
  return giving(lineage, { 'links and proposals': own });
}

/** A map whose values are asked for one by one; whoever wants more than one value asks for all. */
function seenMap<V>(one: (key: string) => V | undefined, whole: () => ReadonlyMap<string, V>): ReadonlyMap<string, V> {
  return {
    get: one,
    has: (key) => one(key) !== undefined,
    get size() {
      return whole().size;
    },
    keys: () => whole().keys(),
    values: () => whole().values(),
    entries: () => whole().entries(),
    [Symbol.iterator]: () => whole()[Symbol.iterator](),
    forEach: (each) => whole().forEach(each),
  };
}
