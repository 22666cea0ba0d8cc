import type { Catalogue } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import { editionNode, reelNode } from '#render/views/schema-org.ts';
import type { Exported } from './export-file.ts';

/** All reels and editions in the words of schema.org, as JSON-LD 1.1. Nodes are named within the file, so that no
 * address of the owner's stands in it. */
export function jsonldExport(catalogue: Catalogue): Exported {
  const names = new Map(catalogue.entries.people.map((person) => [person.id, person.title.value]));
  const shown = new Set(catalogue.reels.map(({ reel }) => reel.id));
  const editions = new Set(catalogue.entries.editions.map(({ id }) => id));
  const graph = [
    {
      '@id': '#collection',
      '@type': 'Collection',
      name: valueOf(catalogue.entries.collection.title) ?? 'Studio tapes',
      dateModified: catalogue.today,
      collectionSize: catalogue.reels.length,
      hasPart: catalogue.reels.map(({ reel }) => ({ '@id': `#reel-${reel.id}` })),
    },
    ...catalogue.reels.map(({ reel, lineage }) =>
      reelNode(
        reel,
        lineage.parents.filter((id) => shown.has(id)),
        (id) => editions.has(id),
        (id) => names.get(id),
      ),
    ),
    ...catalogue.entries.editions.map(editionNode),
  ];
  return {
    files: new Map([['', `${JSON.stringify({ '@context': 'https://schema.org', '@graph': graph }, null, 1)}\n`]]),
    leavesOut: [
      'speed, equalisation, tracks, level, the pack and its wind: schema.org has no words for them',
      'readings and how sure they are; condition, handling, custody, valuations, places',
      'dates that schema.org can’t take, such as 197X or 1974~, stand as texts',
      'known to be none beside not recorded: both are left out',
    ],
  };
}
