import type { Edition } from '#model/edition.ts';
import { itemsOf, type Known } from '#model/fact.ts';
import { plainForm } from '../identifiers/plain.ts';
import { keeping } from '../kept.ts';
import type { CheckContext } from './context.ts';
import { linkedEditions } from './linked-editions.ts';

/** A matrix number on a side of an edition. */
export interface MatrixUse {
  readonly edition: Edition;
  readonly side: string;
  readonly matrix: Known<string>;
}

/** One matrix number on editions that aren't linked as reissues, in order of edition. */
export function sharedMatrices(context: CheckContext): readonly (readonly MatrixUse[])[] {
  const { editions } = context.entries;
  return kept(editions, [], () => sharedBy(editions, context));
}

/** Reissue links are the editions' own, so that all of it goes by them. */
const kept = keeping<readonly Edition[], readonly (readonly MatrixUse[])[]>();

function sharedBy(editions: readonly Edition[], context: CheckContext): readonly (readonly MatrixUse[])[] {
  const uses = new Map<string, MatrixUse[]>();
  for (const edition of editions) {
    for (const { side, matrix } of itemsOf(edition.sides)) {
      if (matrix?.is !== 'known') continue;
      const plain = plainForm(matrix.written);
      const use = { edition, side: side.written, matrix };
      const others = uses.get(plain);
      if (others === undefined) uses.set(plain, [use]);
      else others.push(use);
    }
  }
  return [...uses.values()].filter((group) => areUnlinked(group, context));
}

function areUnlinked(group: readonly MatrixUse[], context: CheckContext): boolean {
  const [first, ...more] = group;
  if (first === undefined || more.every(({ edition }) => edition === first.edition)) return false;
  const linked = new Set(linkedEditions(first.edition.id, context).map((edition) => edition.id));
  return more.some(({ edition }) => !linked.has(edition.id));
}
