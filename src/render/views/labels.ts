import type { Catalogue } from '#model/catalogue.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import { madeOnce } from '../made-once.ts';

/** What stands on a reel's label. Nothing on it says where the reel is kept, whose it is, or what it is worth. */
export interface ReelLabelText {
  readonly id: string;
  readonly title: string;
  readonly side: string;
  readonly kind: string;
  readonly numbers: readonly string[];
}

/** Labels for the reels that are held or lent, in order of id. */
export function labelsOf(catalogue: Catalogue): readonly ReelLabelText[] {
  return catalogue.reels
    .filter(({ reel }) => reel.status.value === 'held' || reel.status.value === 'lent')
    .map(({ reel }) => ({
      id: reel.id,
      title: reel.title.value,
      side: itemsOf(reel.sides)
        .map((side) => side.value)
        .join(' and '),
      kind: valueOf(reel.kind) ?? '',
      numbers: [reel.numbers.catalogue, reel.numbers.matrix, reel.numbers.job, reel.numbers.other].flatMap((list) =>
        itemsOf(list).map((number) => number.written),
      ),
    }));
}

/** A page of more labels than this is slow to lay out and nobody's sheet of paper. */
const LABELS_A_PAGE = 180;

interface LabelPage {
  readonly labels: readonly ReelLabelText[];
  /** How many pages there are, one at least, and how many labels on all of them. */
  readonly pages: number;
  readonly all: number;
}

export interface LabelPages {
  readonly count: number;
  /** @param number  from 1. */
  readonly page: (number: number) => LabelPage;
}

/** The labels, a page at a time. */
export const labelPages = madeOnce('label pages', (catalogue: Catalogue): LabelPages => {
  const all = labelsOf(catalogue);
  const count = Math.max(1, Math.ceil(all.length / LABELS_A_PAGE));
  return {
    count,
    page: (number) => ({
      labels: all.slice((number - 1) * LABELS_A_PAGE, number * LABELS_A_PAGE),
      pages: count,
      all: all.length,
    }),
  };
});
