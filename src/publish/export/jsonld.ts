import type { Catalogue } from '#model/catalogue.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Reel } from '#model/reel.ts';
import type { Exported } from './export-file.ts';
import { isoDuration } from './iso-duration.ts';

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
        editions,
        names,
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

/** ISO 8601 alone, which is what the word takes. */
const isoDate = (written: string | undefined) =>
  written !== undefined && /^\d{4}(?:-\d{2}){0,2}$/u.test(written) ? { dateCreated: written } : {};

function reelNode(
  reel: Reel,
  parents: readonly string[],
  editions: ReadonlySet<string>,
  names: ReadonlyMap<string, string>,
) {
  const recorded = valueOf(reel.recorded);
  const numbers = (['catalogue', 'matrix', 'job', 'other'] as const).flatMap((use) =>
    itemsOf(reel.numbers[use]).map(({ written }) => ({
      '@type': 'PropertyValue',
      propertyID: `${use} number`,
      value: written,
    })),
  );
  const durationS = valueOf(reel.durationS);
  const contents = itemsOf(reel.contents);
  const on = recorded?.on?.written;
  return {
    '@id': `#reel-${reel.id}`,
    '@type': 'CreativeWork',
    name: reel.title.value,
    material: 'magnetic tape on a reel',
    ...one('additionalType', valueOf(reel.kind)),
    ...many('identifier', [{ '@type': 'PropertyValue', propertyID: 'entry', value: reel.id }, ...numbers]),
    ...isoDate(on),
    ...(on !== undefined && !('dateCreated' in isoDate(on)) ? { temporal: on } : {}),
    ...one('contributor', recorded?.by === undefined ? undefined : personNode(recorded.by.value, names)),
    ...one('locationCreated', recorded?.at === undefined ? undefined : { '@type': 'Place', name: recorded.at.value }),
    ...one('timeRequired', durationS === undefined ? undefined : isoDuration(durationS)),
    ...many(
      'isBasedOn',
      parents.map((id) => ({ '@id': `#reel-${id}` })),
    ),
    ...many(
      'about',
      itemsOf(reel.editions).flatMap(({ value }) => (editions.has(value) ? [{ '@id': `#edition-${value}` }] : [])),
    ),
    ...many(
      'hasPart',
      contents.map(({ title, durationS: length }, at) => ({
        '@type': 'MusicRecording',
        name: title.value,
        position: at + 1,
        ...one('duration', length === undefined ? undefined : isoDuration(length.value)),
      })),
    ),
    ...one('usageInfo', valueOf(reel.rights)),
  };
}

function editionNode(edition: Edition) {
  const [catalogue] = itemsOf(edition.catalogue);
  const artist = valueOf(edition.artist);
  const label = valueOf(edition.label);
  return {
    '@id': `#edition-${edition.id}`,
    '@type': 'MusicRelease',
    name: edition.title.value,
    ...one('catalogNumber', catalogue?.written),
    ...one('creditedTo', artist === undefined ? undefined : { '@type': 'MusicGroup', name: artist }),
    ...one('recordLabel', label === undefined ? undefined : { '@type': 'Organization', name: label }),
    ...(edition.issued?.is === 'known' && /^\d{4}(?:-\d{2}){0,2}$/u.test(edition.issued.written)
      ? { datePublished: edition.issued.written }
      : {}),
  };
}

function personNode(ref: PersonRef, names: ReadonlyMap<string, string>) {
  if (ref.is === 'owner') return { '@type': 'Person', name: 'the owner' };
  return { '@type': 'Person', name: ref.is === 'entry' ? (names.get(ref.id) ?? ref.id) : ref.text };
}

const one = <V>(key: string, value: V | undefined) => (value === undefined ? {} : { [key]: value });
const many = <V>(key: string, values: readonly V[]) => (values.length === 0 ? {} : { [key]: values });
