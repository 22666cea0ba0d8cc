import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { OwnShare } from '#model/dossier.ts';
import { withoutTurns } from '#model/turned-text.ts';
import { DOSSIER_BASE, dossierPage } from './dossier-page.ts';
import { closerLook } from './images.ts';
import { buildPages } from './integration.ts';
import { publishPhotographs } from './photographs.ts';
import { wantedPhotographs } from './site.ts';
import { inWorkroom } from './workroom.ts';

export interface DossierOptions {
  /** Where the photographs lie; absolute. */
  readonly collection: string;
  readonly cache: string;
}

/** The page inside a sealed dossier, made in a folder of its own that is gone afterwards. The pages are handed the
 * reduced catalogue and nothing of the whole one. */
export async function makeDossierPage(
  { dossier, originals }: Pick<OwnShare, 'dossier' | 'originals'>,
  { collection, cache }: DossierOptions,
) {
  return await inWorkroom(async (folder) => {
    const fileOf = (path: string) => join(collection, originals.get(path) ?? path);
    const wanted = wantedPhotographs(dossier.reduced, collection).map((one) => ({ ...one, file: fileOf(one.path) }));
    const { photographs } = await publishPhotographs(wanted, folder, { cache });
    await buildPages({ catalogue: dossier.reduced, photographs, base: DOSSIER_BASE, dossier }, folder, 'dossier');
    const closer = async (path: string) => closerLook(await readFile(fileOf(path)));
    const { page, styleHash } = await dossierPage(dossier, folder, photographs, closer);
    return { page: withoutTurns(page), styleHash };
  });
}
