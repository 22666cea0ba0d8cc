import type { Known } from '#model/fact.ts';
import type { Cut } from '#model/reel.ts';
import { plainForm } from '../identifiers/plain.ts';

/** A cut whose number counts. */
export interface NumberedCut {
  readonly cut: Cut;
  readonly number: Known<string>;
  readonly count: number;
}

const COUNT = /^-?0*(\d{1,3})$/;

/** The cuts of a reel that count on from each other, each series by number: those of one side, for one matrix number
 * and one edition, since a house starts again at 1 for another. A number with letters in it belongs to no series. */
export function cutSeries(cuts: readonly Cut[]): readonly (readonly NumberedCut[])[] {
  const series = new Map<string, NumberedCut[]>();
  for (const cut of cuts) {
    const count = COUNT.exec(cut.number?.value.trim() ?? '')?.[1];
    if (cut.number === undefined || count === undefined) continue;
    const key = [cut.side, cut.matrix, cut.edition].map((part) => plainForm(part?.value ?? '')).join(' ');
    const numbered = { cut, number: cut.number, count: Number(count) };
    const others = series.get(key);
    if (others === undefined) series.set(key, [numbered]);
    else others.push(numbered);
  }
  return [...series.values()].map((group) =>
    group.sort((a, b) => a.count - b.count || a.cut.place.line - b.cut.place.line),
  );
}
