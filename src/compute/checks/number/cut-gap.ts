import { listInWords } from '../../figure/in-words.ts';
import { plainForm } from '../../identifiers/plain.ts';
import { orderOf } from '../../identifiers/sides.ts';
import { cutSeries, type NumberedCut } from '../../record-side/cut-series.ts';
import { crossCheck, type Doubt } from '../check.ts';
import type { CutOnCopy } from '../cuts-seen.ts';

/** Past this many, the number is hardly a count of cuts. */
const MOST_MISSING = 12;

/** A later cut is known and an earlier one isn't: it was rejected, or cut from another tape, or nobody wrote it down. */
const ofReel = crossCheck({
  code: 'number/cut-gap',
  title: 'A cut before a known one isn’t known',
  severity: 'note',
  scope: 'reel',
  reads: ['cuts', 'cutsOnCopies'],
  judge: ({ cuts, cutsOnCopies }) => {
    const all = cutSeries(cuts);
    return all.flatMap((series): readonly Doubt[] => {
      const last = series.at(-1);
      if (last === undefined) return [];
      // A reissue may count on from the first edition's cuts, or start again at 1.
      const counts = new Set(
        all
          .flat()
          .filter((cut) => isOfSameSide(cut, last))
          .map((cut) => cut.count),
      );
      for (const seen of cutsOnCopies) if (mayBeOf(seen, last)) counts.add(seen.count);
      const missing = Array.from({ length: Math.min(last.count - 1, 999) }, (_, index) => index + 1).filter(
        (count) => !counts.has(count),
      );
      if (missing.length === 0 || missing.length > MOST_MISSING) return [];
      const words = listInWords(missing.map(String));
      const following = series.find((cut) => cut.count > (missing[0] ?? 0)) ?? last;
      return [
        {
          place: following.number.place,
          message: `Cut ${last.number.written} is known, and ${cutWord(missing.length)} ${words} ${missing.length === 1 ? 'isn’t' : 'aren’t'}.`,
          found: `${cutWord(series.length)} ${listInWords(series.map((cut) => cut.number.written))}`,
          expected: `${cutWord(missing.length)} ${words} as well`,
          action:
            'Look for it on the box and in run-outs. A cut that was rejected, or made from another tape, leaves such a gap, so this may be right as it stands.',
        },
      ];
    });
  },
});

/** A cut on a copy settles a gap of the side it is on, or of a reel whose cuts name no side. */
const mayBeOf = (seen: CutOnCopy, { cut }: NumberedCut): boolean =>
  (seen.side === undefined || cut.side === undefined || sameSide(seen.side, cut.side.value)) &&
  (cut.edition === undefined || cut.edition.value === seen.edition);

const sameSide = (one: string, other: string) =>
  (orderOf(one) ?? plainForm(one)) === (orderOf(other) ?? plainForm(other));

/** Copies of an edition bear a later cut, and an earlier one is known neither from a copy nor from a reel's box. Only
 * between cuts that are known: which cut a single copy bears says nothing of the others. */
const ofEdition = crossCheck({
  code: 'number/cut-gap',
  title: 'A cut between those on the copies seen isn’t known',
  severity: 'note',
  scope: 'edition',
  reads: ['edition', 'cutsSeen', 'cutsOfReels'],
  judge: ({ edition, cutsSeen, cutsOfReels }): readonly Doubt[] =>
    [...Map.groupBy(cutsSeen, ({ side }) => (side === undefined ? '' : (orderOf(side) ?? plainForm(side))))].flatMap(
      ([, seen]): readonly Doubt[] => {
        const onReels = cutsOfReels.filter(
          ({ side }) => side === undefined || seen.every((one) => one.side === undefined || sameSide(one.side, side)),
        );
        const counts = new Set([...seen, ...onReels].map(({ count }) => count));
        const [from, to] = [Math.min(...counts), Math.max(...counts)];
        const missing = Array.from({ length: Math.min(to - from, 999) }, (_, index) => from + index).filter(
          (count) => !counts.has(count),
        );
        const following = seen.toSorted((a, b) => a.count - b.count).find(({ count }) => count > (missing[0] ?? to));
        // A gap before a reel's own cut is told on that reel.
        if (onReels.some(({ count }) => count > (missing[0] ?? to))) return [];
        if (missing.length === 0 || missing.length > MOST_MISSING || following === undefined) return [];
        const words = listInWords(missing.map(String));
        const known = [...counts].sort((a, b) => a - b).map(String);
        return [
          {
            place: following.place,
            message: `Copies of ${edition.title.written} bear cut ${following.count}, and ${cutWord(missing.length)} ${words} ${missing.length === 1 ? 'isn’t' : 'aren’t'} known.`,
            found: `${following.written}; known are ${cutWord(known.length)} ${listInWords(known)}`,
            expected: `${cutWord(missing.length)} ${words} as well`,
            action:
              'Look at the run-outs of other copies and on the boxes. A cut that was rejected, or made from another tape, leaves such a gap, so this may be right as it stands.',
          },
        ];
      },
    ),
});

export const cutGap = [ofReel, ofEdition] as const;

const isOfSameSide = ({ cut: one }: NumberedCut, { cut: other }: NumberedCut): boolean =>
  plainForm(one.side?.value ?? '') === plainForm(other.side?.value ?? '') &&
  plainForm(one.matrix?.value ?? '') === plainForm(other.matrix?.value ?? '');

const cutWord = (count: number) => (count === 1 ? 'cut' : 'cuts');
