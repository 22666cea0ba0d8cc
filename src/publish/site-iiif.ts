import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import type { PublishedPhotograph } from '#model/published-photograph.ts';
import { iiifFiles } from './iiif.ts';

/** What viewers elsewhere need of a site whose address is known: a manifest beside each reel's page, and an `info.json`
 * beside each photograph's tiles. Every id in them is an address, so without one there are none.
 *
 * @param address  `https://…/`, of the site's first page. */
export async function writeManifests(
  { entries }: Pick<Catalogue, 'entries'>,
  photographs: ReadonlyMap<string, PublishedPhotograph>,
  into: string,
  address: string,
): Promise<void> {
  for (const [path, text] of iiifFiles(entries, photographs, address)) {
    await mkdir(dirname(join(into, path)), { recursive: true });
    await writeFile(join(into, path), text);
  }
}
