import { isDoubtful, isWhollyBefore } from '../../lineage/intervals.ts';
import { cutSeries, type NumberedCut } from '../../record-side/cut-series.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** Cuts of one side count upwards with time: a later number with an earlier date, or one number twice. */
export const cutOrder = crossCheck({
  code: 'number/cut-order',
  title: 'Cut numbers and dates run against each other',
  severity: 'warning',
  scope: 'reel',
  reads: ['cuts'],
  judge: ({ cuts }) => cutSeries(cuts).flatMap((series) => [...twice(series), ...backwards(series)]),
});

function twice(series: readonly NumberedCut[]): readonly Doubt[] {
  return series.flatMap((later, index): readonly Doubt[] => {
    const earlier = series[index - 1];
    if (earlier === undefined || earlier.count !== later.count) return [];
    return [
      {
        place: later.number.place,
        message: `Cut ${later.number.written} is listed twice for one side.`,
        found: later.number.written,
        expected: `a number that no other cut of the side has, such as ${nextFree(series)}`,
        action:
          'Look at the box again: the same cut may be listed twice, or one of the two is another side’s or another edition’s. Then write its `side:` or `edition:`.',
        related: [{ message: `the other cut ${earlier.number.written}`, place: earlier.number.place }],
      },
    ];
  });
}

const nextFree = (series: readonly NumberedCut[]) => Math.max(...series.map((cut) => cut.count)) + 1;

function backwards(series: readonly NumberedCut[]): readonly Doubt[] {
  const dated = series.flatMap(({ cut, count, number }) =>
    cut.on === undefined ? [] : [{ on: cut.on, count, number }],
  );
  return dated.flatMap((later, index): readonly Doubt[] => {
    const earlier = dated[index - 1];
    if (earlier === undefined || earlier.count === later.count || !isWhollyBefore(later.on.value, earlier.on.value))
      return [];
    return [
      {
        place: later.on.place,
        severity: isDoubtful(later.on.value) || isDoubtful(earlier.on.value) ? 'note' : 'warning',
        message: `Cut ${later.number.written} is dated before cut ${earlier.number.written}.`,
        found: `${later.on.written} for cut ${later.number.written}`,
        expected: `${earlier.on.written} or later, or the two numbers the other way round`,
        action:
          'Look at the box again: day and month may be the other way round on one of them, or the numbers swapped.',
        related: [{ message: `cut ${earlier.number.written}: ${earlier.on.written}`, place: earlier.on.place }],
      },
    ];
  });
}
