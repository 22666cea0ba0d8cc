import type { ReelSheet } from '#model/catalogue.ts';
import type { Edition } from '#model/edition.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Reel } from '#model/reel.ts';
import { isoDuration } from '../words/iso-duration.ts';
import type { Lookup } from './lookup.ts';

/** ISO 8601 alone, which is what the word takes. */
const isoDate = (written: string | undefined) =>
  written !== undefined && /^\d{4}(?:-\d{2}){0,2}$/u.test(written) ? { dateCreated: written } : {};

/** A reel in the words of schema.org. What isn't recorded isn't there.
 *
 * @param parents   ids of the reels it was copied from, of those that are shown.
 * @param editions  whether an edition is shown, by its id.
 * @param nameOf    a person's name, by id; undefined for one without an entry. */
export function reelNode(
  reel: Reel,
  parents: readonly string[],
  editions: (id: string) => boolean,
  nameOf: (id: string) => string | undefined,
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
    ...one('contributor', recorded?.by === undefined ? undefined : personNode(recorded.by.value, nameOf)),
    ...one('locationCreated', recorded?.at === undefined ? undefined : { '@type': 'Place', name: recorded.at.value }),
    ...one('timeRequired', durationS === undefined ? undefined : isoDuration(durationS)),
    ...many(
      'isBasedOn',
      parents.map((id) => ({ '@id': `#reel-${id}` })),
    ),
    ...many(
      'about',
      itemsOf(reel.editions).flatMap(({ value }) => (editions(value) ? [{ '@id': `#edition-${value}` }] : [])),
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

/** An edition in the words of schema.org. */
export function editionNode(edition: Edition) {
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

function personNode(ref: PersonRef, nameOf: (id: string) => string | undefined) {
  if (ref.is === 'owner') return { '@type': 'Person', name: 'the owner' };
  return { '@type': 'Person', name: ref.is === 'entry' ? (nameOf(ref.id) ?? ref.id) : ref.text };
}

const one = <V>(key: string, value: V | undefined) => (value === undefined ? {} : { [key]: value });
const many = <V>(key: string, values: readonly V[]) => (values.length === 0 ? {} : { [key]: values });

/** A reel's node as a page carries it, for programs that read pages; nothing in it can end the element it stands in. */
export function reelScript({ reel, lineage }: ReelSheet, lookup: Lookup): string {
  const shown = (id: string) => lookup.edition(id) !== undefined;
  const nameOf = (id: string) => lookup.person(id)?.title.value;
  const node = { '@context': 'https://schema.org', ...reelNode(reel, lineage.parents, shown, nameOf) };
  return JSON.stringify(node).replaceAll('<', '\\u003c');
}
