import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import type { Edge, Lineage, NodeId, Proposal } from '#model/lineage.ts';
import { madeOnce } from '../made-once.ts';
import { rolesOf } from './people.ts';

/** What names a thing, so that a page asks and doesn't look through every entry. Each list in the catalogue's order. */
export interface NamedBy {
  /** Reels that name an edition. */
  readonly reelsOfEdition: (id: string) => readonly ReelSheet[];
  /** Reels in which a person has a part. */
  readonly reelsOfPerson: (id: string) => readonly ReelSheet[];
  /** The editions that reissue an edition. */
  readonly reissuesOf: (id: string) => readonly Edition[];
}

/** Made once a catalogue. */
export const namedBy = madeOnce('named', ({ reels, entries }: Catalogue): NamedBy => {
  return {
    reelsOfEdition: grouped(reels, ({ reel }) => itemsOf(reel.editions).map((id) => id.value)),
    reelsOfPerson: grouped(reels, ({ reel }) =>
      rolesOf(reel).flatMap(({ person }) => (person.is === 'entry' ? person.id : [])),
    ),
    reissuesOf: grouped(entries.editions, (edition) => itemsOf(edition.reissueOf).map((id) => id.value)),
  };
});

export interface LineageOf {
  readonly edgesInto: (node: NodeId) => readonly Edge[];
  /** Proposals in which a reel is the copy or the copied. */
  readonly proposalsFor: (reel: string) => readonly Proposal[];
}

/** Links and proposals by what they are about; made once a lineage. */
export const lineageOf = madeOnce('links and proposals', (lineage: Lineage): LineageOf => {
  return {
    edgesInto: grouped(lineage.edges, (edge) => [edge.to]),
    proposalsFor: grouped(lineage.proposals, (one) => [one.reel, one.parent]),
  };
});

function grouped<T>(all: readonly T[], namesOf: (one: T) => readonly string[]): (name: string) => readonly T[] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    for (const name of new Set(namesOf(one))) {
      const group = groups.get(name);
      if (group === undefined) groups.set(name, [one]);
      else group.push(one);
    }
  }
  return (name) => groups.get(name) ?? [];
}
