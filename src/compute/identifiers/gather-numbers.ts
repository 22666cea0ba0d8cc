import type { Edition } from '#model/edition.ts';
import type { Entries } from '#model/entries.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import { NUMBER_ROLES, type NumberRole } from '#model/number-seen.ts';
import type { Numbered, NumberOf, Whereabouts } from '#model/numbered.ts';
import type { Cut, Reading, Reel } from '#model/reel.ts';
import { SURENESSES } from '#model/words.ts';
import { inOrder } from './number-order.ts';
import { parseNumber } from './parse-number.ts';
import { plainForm } from './plain.ts';
import { readingAllows } from './reading-allows.ts';

/** Every number of a collection with what it is of: of reels and what is read on them, of editions, their sides and
 *  their run-outs, of cuts, and of the lines of copy logs. In order of letters, then figures, spelling aside. */
export function gatherNumbers(entries: Pick<Entries, 'reels' | 'editions'>): readonly NumberOf[] {
  const held = new Map(entries.reels.map((reel) => [reel.id, reel.status.value]));
  return inOrder([
    ...entries.reels.flatMap((reel) => [...ofReel(reel), ...ofCuts(reel, entries.editions), ...ofLog(reel, held)]),
    ...entries.editions.flatMap(ofEdition),
  ]);
}

function ofReel(reel: Reel): readonly NumberOf[] {
  const thing: Numbered = { of: 'reel', id: reel.id, title: reel.title.value, state: reel.status.value };
  return NUMBER_ROLES.flatMap((as) => {
    const readings = itemsOf(reel.readings).filter(({ of }) => isOf(of.value, as));
    const stated = itemsOf(reel.numbers[as]);
    const numbers = stated.map(({ written }) => {
      const own = readings.filter((reading) => readingAllows(reading.written.value, written));
      return { thing, as, number: written, ...evidence(reel, own) };
    });
    const others = readings.filter(({ written }) => addsToFind(written.value, stated));
    return [...numbers, ...others.map((one) => ({ thing, as, number: one.written.value, ...evidence(reel, [one]) }))];
  });
}

/** A reading is found by itself where it may say more than the entry does: it has doubts, or it says something else. */
const addsToFind = (reading: string, stated: readonly Known<string>[]) =>
  /[?{]/.test(reading) || !stated.some(({ written }) => readingAllows(reading, written));

/** `numbers.matrix`, or one of several as `numbers.matrix[1]`. */
const isOf = (field: string, as: NumberRole) => field === `numbers.${as}` || field.startsWith(`numbers.${as}[`);

/** The photographs a number was read on, and the surest of its readings. */
function evidence(reel: Reel, readings: readonly Reading[]): { readonly from: string; readonly sure: string } {
  const photos = itemsOf(reel.photos);
  const shown = readings.flatMap(({ photo }) => {
    const file = photos.find((each) => each.file.value === photo?.value);
    return file?.shows === undefined ? [] : [file.shows.value];
  });
  const sure = SURENESSES.find((word) => readings.some((reading) => reading.sure?.value === word));
  return { from: [...new Set(shown)].join(', '), sure: sure ?? '' };
}

const IN_RUN_OUT = { from: 'run-out', sure: '' };

/** A cut's number is its matrix number with the cut's own figure after it, as it would be etched. */
function ofCuts(reel: Reel, editions: readonly Edition[]): readonly NumberOf[] {
  return itemsOf(reel.cuts).flatMap((cut) => {
    const written = cut.number?.written;
    if (written === undefined) return [];
    const title = `${reel.title.value}: cut ${written}`;
    const thing: Numbered = { of: 'cut', id: reel.id, title, state: 'known' };
    const numbers = matricesOf(cut, reel, editions).map((matrix) => cutNumber(matrix, written));
    return [...new Set(numbers)].map((number) => ({ thing, as: 'cut' as const, number, from: '', sure: '' }));
  });
}

function matricesOf(cut: Cut, reel: Reel, editions: readonly Edition[]): readonly string[] {
  if (cut.matrix !== undefined) return [cut.matrix.written];
  const own = itemsOf(reel.numbers.matrix).map(({ written }) => written);
  if (own.length > 0) return own;
  const side = cut.side?.value ?? itemsOf(reel.sides)[0]?.value;
  const mine = editions.filter(({ id }) => itemsOf(reel.editions).some(({ value }) => value === id));
  const sides = mine.flatMap((edition) => itemsOf(edition.sides)).filter((each) => each.side.value === side);
  return sides.flatMap(({ matrix }) => valueOf(matrix) ?? []);
}

/** A cut written with its whole number stays as it is. */
function cutNumber(matrix: string, cut: string): string {
  return plainForm(cut).startsWith(plainForm(parseNumber(matrix).stem ?? matrix)) ? cut : `${matrix}-${cut}`;
}

function ofLog(reel: Reel, held: ReadonlyMap<string, Whereabouts>): readonly NumberOf[] {
  return itemsOf(reel.copyLog).flatMap((line) => {
    if (line.number === undefined) return [];
    const copy = line.reel === undefined ? undefined : held.get(line.reel.value);
    const words = ['Copy log of ', reel.title.value, ...after(line.on)].join('');
    const thing: Numbered = { of: 'log line', id: reel.id, title: words, state: copy ?? 'known' };
    return [{ thing, as: 'copy log' as const, number: line.number.written, from: 'copy log', sure: '' }];
  });
}

const after = (fact: Known<unknown> | undefined) => (fact === undefined ? [] : [`, ${fact.written}`]);

function ofEdition(edition: Edition): readonly NumberOf[] {
  const thing: Numbered = { of: 'edition', id: edition.id, title: edition.title.value, state: 'known' };
  const onSide = (side: string | undefined) =>
    side === undefined ? thing : { ...thing, title: `${edition.title.value}, side ${side}` };
  const stated = { from: '', sure: '' };
  return [
    ...itemsOf(edition.catalogue).map(({ written }) => ({
      thing,
      as: 'catalogue' as const,
      number: written,
      ...stated,
    })),
    ...itemsOf(edition.sides).flatMap(({ side, matrix }) =>
      matrix?.is !== 'known'
        ? []
        : [{ thing: onSide(side.value), as: 'matrix' as const, number: matrix.written, ...stated }],
    ),
    ...itemsOf(edition.runOuts).map(({ side, written }) => ({
      thing: onSide(side?.value),
      as: 'run-out' as const,
      number: written.written,
      ...IN_RUN_OUT,
    })),
  ];
}
