import { listInWords } from '../../figure/in-words.ts';
import { plainForm } from '../../identifiers/plain.ts';
import { cutSeries, type NumberedCut } from '../../record-side/cut-series.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** Past this many, the number is hardly a count of cuts. */
const MOST_MISSING = 12;

/** A later cut is known and an earlier one isn't: it was rejected, or cut from another tape, or nobody wrote it down. */
export const cutGap = crossCheck({
  code: 'number/cut-gap',
  title: 'A cut before a known one isn’t known',
  severity: 'note',
  scope: 'reel',
  reads: ['cuts'],
  judge: ({ cuts }) => {
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

const isOfSameSide = ({ cut: one }: NumberedCut, { cut: other }: NumberedCut): boolean =>
  plainForm(one.side?.value ?? '') === plainForm(other.side?.value ?? '') &&
  plainForm(one.matrix?.value ?? '') === plainForm(other.matrix?.value ?? '');

const cutWord = (count: number) => (count === 1 ? 'cut' : 'cuts');
