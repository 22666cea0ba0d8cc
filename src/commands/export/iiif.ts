import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { makeFolder } from '#publish/export/folder.ts';
import { baseAddress, iiifFiles } from '#publish/iiif.ts';
import { publishPhotographs } from '#publish/photographs.ts';
import { wantedPhotographs } from '#publish/site.ts';
import { UsageError } from '../io.ts';
import type { ForWhom } from './for-whom.ts';

export interface IiifOptions {
  readonly out: string;
  readonly base: string | undefined;
  readonly cache: string;
  readonly waiting: (sentence: string) => void;
}

/** Manifests, annotations and pictures for a viewer elsewhere, in one folder that can be put at its address. */
export async function exportIiif(
  { catalogue, photograph }: ForWhom,
  { out, base, cache, waiting }: IiifOptions,
): Promise<readonly string[]> {
  const address = base === undefined ? undefined : baseAddress(base);
  if (address === undefined)
    throw new UsageError('Say where it will stand, as every id in it is an address: --base https://example.org/tapes/');
  const reelsOnly = {
    ...catalogue,
    entries: {
      ...catalogue.entries,
      editions: [],
      machines: [],
      stocks: [],
      places: [],
      people: [],
      notes: [],
      shares: [],
    },
  };
  await makeFolder(
    out,
    async (into) => {
      const wanted = wantedPhotographs(reelsOnly, '').map((one) => ({ ...one, file: photograph(one.path) }));
      const { photographs } = await publishPhotographs(wanted, into, { cache });
      for (const [path, text] of iiifFiles(catalogue.entries, photographs, address)) {
        await mkdir(dirname(join(into, path)), { recursive: true });
        await writeFile(join(into, path), text);
      }
    },
    waiting,
  );
  return [
    'reels without a photograph: a manifest must hold one',
    'all facts but title, kind, side, set, numbers, date and readings',
    'the originals: pictures are made anew, without what a camera wrote into them',
    `any other place than ${address}: ids are addresses, so move it only there`,
  ];
}
