import { SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { keyNamed } from './column-names.ts';

/** The kind of entry that a row of a sheet is, and how that shows. */
export interface KindShown {
  readonly kind: SheetKind;
  readonly by: 'its name' | 'its headings' | 'nothing';
}

const NAMES: readonly (readonly [kind: SheetKind, name: RegExp])[] = [
  ['reels', /\b(?:reels?|tapes?|masters?)\b/iu],
  ['editions', /\b(?:editions?|records?|releases?|discography)\b/iu],
  ['machines', /\b(?:machines?|recorders?|decks?)\b/iu],
  ['stocks', /\b(?:stocks?)\b/iu],
  ['places', /\b(?:places?|rooms?)\b/iu],
  ['people', /\b(?:people|persons?|engineers?)\b/iu],
];

const FEWEST = 2;

/** What the sheet's own name says, if it names one kind only; else the kind that its headings name better than they name a
 * reel's facts, if they name nothing that only a reel has. Reels otherwise: most sheets are of tapes.
 *
 * @param name  The file's, without its ending. */
export function kindShown(headers: readonly string[], name: string): KindShown {
  const plainName = name.replaceAll(/[_\d-]+/gu, ' ');
  const named = NAMES.filter(([, pattern]) => pattern.test(plainName));
  const [only] = named;
  if (only !== undefined && named.length === 1) return { kind: only[0], by: 'its name' };
  const found = (kind: SheetKind) =>
    headers.filter((header) => keyNamed(header, kind)?.startsWith('edition.') === false);
  const reels = found('reels');
  const others = SHEET_KINDS.filter((kind) => kind !== 'reels')
    .map((kind) => ({ kind, headers: found(kind) }))
    .filter(
      (other) =>
        other.headers.length >= FEWEST &&
        other.headers.length > reels.length &&
        reels.every((header) => other.headers.includes(header)),
    )
    .sort((a, b) => b.headers.length - a.headers.length);
  const [best, next] = others;
  if (best === undefined || best.headers.length === next?.headers.length) return { kind: 'reels', by: 'nothing' };
  return { kind: best.kind, by: 'its headings' };
}
