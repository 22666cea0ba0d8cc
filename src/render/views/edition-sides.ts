import type { ReelSheet } from '#model/catalogue.ts';
import type { Edition, EditionSide } from '#model/edition.ts';
import { itemsOf } from '#model/fact.ts';
import type { Edge, Lineage } from '#model/lineage.ts';
import type { Lookup } from './lookup.ts';
import { lineageOf } from './named-by.ts';

/** A side of an edition with the reels that it came from, and how that is known. */
export interface SourcedSide {
  readonly side: EditionSide;
  readonly sources: readonly { readonly sheet: ReelSheet; readonly edge: Edge; readonly cut: string | undefined }[];
}

/** The reels whose cuts, or which themselves, lead to an edition, put with the side that they bear. */
export function sourcedSides(edition: Edition, lineage: Lineage, lookup: Lookup): readonly SourcedSide[] {
  const into = lineageOf(lineage).edgesInto(`edition:${edition.id}`);
  const sources = into.flatMap((edge) => {
    const [reel = '', cut] = edge.from.replace(/^[a-z]+:/, '').split('#');
    const sheet = lookup.reel(reel);
    return sheet === undefined ? [] : [{ sheet, edge, cut }];
  });
  return itemsOf(edition.sides).map((side) => ({
    side,
    sources: sources.filter(({ sheet }) => bears(sheet, side.side.value) || side.reel?.value === sheet.reel.id),
  }));
}

const LETTERS = ['1', '2', '3', '4'];

/** A to D go with 1 to 4. */
function bears({ reel }: ReelSheet, side: string): boolean {
  return itemsOf(reel.sides).some((own) => order(own.value) === order(side));
}

function order(side: string): string {
  const letter = 'ABCD'.indexOf(side.toUpperCase());
  return letter < 0 ? side : (LETTERS[letter] ?? side);
}
