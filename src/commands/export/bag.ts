import { mkdir, realpath, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import type { Day } from '#model/dates.ts';
import { valueOf } from '#model/fact.ts';
import { copyTree, sealBag } from '#publish/export/bag.ts';
import { makeFolder } from '#publish/export/folder.ts';
import { readMeFirst } from '#publish/export/read-me-first.ts';
import { buildSite } from '../build-site.ts';
import { type Io, UsageError } from '../io.ts';

export interface BagOptions {
  readonly catalogue: Catalogue;
  readonly collection: string;
  readonly cache: string;
  readonly today: Day;
  readonly out: string;
  /** A bag is the whole collection: with a share it is refused. */
  readonly share: string | undefined;
}

/** The whole collection as a bag: entries, originals, the built site, and a page for whoever finds it. */
export async function exportBag(
  { catalogue, collection, cache, today, out, share }: BagOptions,
  io: Io,
): Promise<readonly string[]> {
  if (share !== undefined)
    throw new UsageError(
      'A bag holds the whole collection, with its addresses and originals, so it isn’t made for a share. Seal a dossier for that: npm run seal.',
    );
  const title = valueOf(catalogue.entries.collection.title) ?? 'Studio tapes';
  await makeFolder(
    out,
    async (into) => {
      const data = join(into, 'data');
      await mkdir(data);
      await copyTree(collection, join(data, 'collection'));
      // The site is made as a link to a folder; the bag has the files themselves.
      const workroom = join(into, '.site');
      await mkdir(workroom);
      await buildSite({ collection, today, cache, out: join(workroom, 'site'), base: '/' }, io);
      await copyTree(await realpath(join(workroom, 'site')), join(data, 'site'));
      await rm(workroom, { recursive: true });
      await writeFile(join(data, 'READ-ME-FIRST.txt'), readMeFirst(title, today, catalogue.reels.length));
      await sealBag(into, {
        title,
        date: today,
        about: `A catalogue of ${catalogue.reels.length} reels of studio tape. Begin with data/READ-ME-FIRST.txt.`,
      });
    },
    (sentence) => io.err(`${sentence}\n`),
  );
  return [
    'the program itself: the entries and the site don’t need it',
    'hidden files, and links that lead out of the collection',
    'anything that isn’t in the collection’s folder, such as the recordings of a transfer',
    'secrecy: it holds addresses, prices and originals. Keep it where you keep your papers',
  ];
}
