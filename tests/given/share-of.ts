import type { Catalogue } from '#model/catalogue.ts';
import type { OwnShare } from '#model/dossier.ts';
import type { Share } from '#model/share.ts';
import { shareDossier } from '../../src/commands/share-dossier.ts';

/** The dossier of the share with an id. */
export function dossierOf(catalogue: Catalogue, id: string): OwnShare {
  return shareDossier(catalogue, shareNamed(catalogue, id), 'a fingerprint');
}

export function shareNamed(catalogue: Catalogue, id: string): Share {
  const share = catalogue.entries.shares.find((one) => one.id === id);
  if (share === undefined) throw new Error(`The test's collection has no share ${id}.`);
  return share;
}

/** Every text that an object holds, at any depth, keys of maps included, as one. */
export function textsIn(value: unknown): string {
  const found: string[] = [];
  const seen = new Set<object>();
  const go = (one: unknown): void => {
    if (typeof one === 'string') found.push(one);
    if (typeof one !== 'object' || one === null || seen.has(one)) return;
    seen.add(one);
    if (one instanceof Map) for (const [key, inner] of one) [key, inner].forEach(go);
    else if (one instanceof Set) for (const inner of one) go(inner);
    else for (const [key, inner] of Object.entries(one)) [key, inner].forEach(go);
  };
  go(value);
  return found.join('\n');
}
