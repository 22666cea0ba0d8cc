import type { PartialDate } from '#model/dates.ts';
import { daysBetween, isDoubtful, isWhollyBefore } from '../../lineage/intervals.ts';
import { crossCheck, type Doubt, type KnownFacts } from '../check.ts';

/** Tape lies on shelves for years after it was made: common practice, no source. */
const SHELF_YEARS = 10;

type Given = KnownFacts<'reel', 'reel' | 'stock' | 'recordedOn' | 'stockMade'>;

/** A tape recorded before its stock was made, or long after the last of it. */
export const notMadeThen = crossCheck({
  code: 'stock/not-made-then',
  title: 'A stock that was not made then',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'stock', 'recordedOn', 'stockMade'],
  judge: (given) => {
    const { recordedOn, stockMade } = given;
    if (isWhollyBefore(recordedOn.value, stockMade.value)) {
      return [doubt(given, 'The tape was recorded before its stock was made.', `${stockMade.written} or later`)];
    }
    if (isLongAfter(stockMade.value, recordedOn.value)) {
      return [
        doubt(
          given,
          `The tape was recorded more than ${SHELF_YEARS} years after the last of its stock was made.`,
          `${stockMade.written}, or some years after`,
        ),
      ];
    }
    return [];
  },
});

function doubt({ reel, stock, recordedOn, stockMade }: Given, message: string, expected: string): Doubt {
  const milder = isDoubtful(recordedOn.value) || isDoubtful(stockMade.value);
  return {
    place: recordedOn.place,
    message,
    found: recordedOn.written,
    expected,
    action: `Look at the tape’s back and the box again: the box may have come from another tape, or ${stock.title.written} be another stock. If ${reel.title.written} was dubbed on to old tape later, write that as a reading and accept this.`,
    related:
      stock.file <= reel.file
        ? [{ message: `${stock.title.written}: made ${stockMade.written}`, place: stockMade.place }]
        : [],
    ...(milder && { severity: 'note' as const }),
  };
}

function isLongAfter(made: PartialDate, recorded: PartialDate): boolean {
  if (made.latest === null || recorded.earliest === null) return false;
  return daysBetween(made.latest, recorded.earliest) > SHELF_YEARS * 365.25;
}
