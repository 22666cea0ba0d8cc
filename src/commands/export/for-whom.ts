import { join } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import { UsageError } from '../io.ts';
import { shareDossier, whyUncertain } from '../share-dossier.ts';

/** What an export is made from: the owner's catalogue, or what a share allows of it. */
export interface ForWhom {
  readonly catalogue: Catalogue;
  /** Where a photograph lies, by the path that the catalogue has for it; absolute. */
  readonly photograph: (path: string) => string;
}

/** The owner's catalogue, or with a share's id the part of it that the share shows: reels that are only mentioned in a
 * lineage are no reels of the export. A share past its time, or one of which it isn't certain what it
 * shows, gives a sentence instead.
 * Throws UsageError when there is no such share. */
export function forWhom(
  whole: Catalogue,
  id: string | undefined,
  collection: string,
): ForWhom | { readonly ended: string } {
  if (id === undefined) return { catalogue: whole, photograph: (path) => join(collection, path) };
  const share = whole.entries.shares.find((one) => one.id === id);
  if (share === undefined) {
    const ids = whole.entries.shares.map((one) => one.id);
    throw new UsageError(
      `There is no share "${id}". There ${ids.length === 1 ? 'is' : 'are'}: ${ids.join(', ') || 'none'}.`,
    );
  }
  const uncertain = whyUncertain(whole, share);
  if (uncertain !== undefined) return { ended: uncertain };
  const { dossier, plan, originals } = shareDossier(whole, share, '');
  if (plan.ended)
    return { ended: `The share ${id} ended: ${plan.until}. Give it a later until:, or make another share.` };
  if (dossier.reels.length === 0) throw new UsageError(`The share ${id} shows no reel, so there is nothing to export.`);
  const shown = new Set(dossier.reels);
  const { reduced } = dossier;
  return {
    catalogue: {
      ...reduced,
      reels: reduced.reels.filter(({ reel }) => shown.has(reel.id)),
      entries: { ...reduced.entries, reels: reduced.entries.reels.filter((reel) => shown.has(reel.id)) },
    },
    photograph: (path) => join(collection, originals.get(path) ?? path),
  };
}
