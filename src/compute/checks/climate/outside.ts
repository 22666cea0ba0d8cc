import { CAUTIONS } from '#model/cautions.ts';
import type { ClimateSummary } from '#model/climate.ts';
import { MEDIUM_TERM, OUTER_BOUNDS } from '../../climate/storage-bounds.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** An open window for a day is no climate. The project's own tolerance. */
const TOLERATED_HOURS = 24;

type Told = Pick<Doubt, 'severity' | 'message' | 'expected'>;

/** A place's air outside the published bounds, for longer than a day in any 365: a warning past the outer bounds of
 * every source, a note where sources differ or past the medium-term ones. */
export const outside = crossCheck({
  code: 'climate/outside',
  title: 'The air of a place is outside the published bounds',
  severity: 'note',
  scope: 'place',
  reads: ['place', 'climate'],
  judge: ({ place, climate }) => {
    const told = worst(climate);
    if (told === undefined) return [];
    return [
      {
        place: place.keys.get('climate') ?? place.place,
        found: `${climate.lowC.toFixed(1)} to ${climate.highC.toFixed(1)} °C, ${climate.lowPercent.toFixed(0)} to ${climate.highPercent.toFixed(0)} %, ${days(climate.coveredHours)} logged`,
        action: `Look at the drawing of the log for the months in which it happens, and move what lies there to an inner wall or a drier room before they come round again. Check the logger first, if it stood in the sun or by a pipe. ${CAUTIONS.cold}`,
        ...told,
      },
    ];
  },
});

function worst({ outsideOuter, disputed, outsideMedium }: ClimateSummary): Told | undefined {
  if (outsideOuter.hoursInWorstYear > TOLERATED_HOURS) {
    return {
      severity: 'warning',
      message: `The air was past the outer bounds for ${days(outsideOuter.hoursInWorstYear)} in the worst 365 days.`,
      expected: `8 to 35 °C, 25 to 60 % (${OUTER_BOUNDS.source}); 20 to 25 % is inside ${MEDIUM_TERM.source}`,
    };
  }
  if (outsideMedium.hoursInWorstYear > TOLERATED_HOURS) {
    return {
      severity: 'note',
      message: `The air was past the medium-term bounds for ${days(outsideMedium.hoursInWorstYear)} in the worst 365 days, and inside the outer ones.`,
      expected: `up to 23 °C (± 2), 20 to 50 % (± 10) (${MEDIUM_TERM.source}); 8 to 35 °C, 25 to 60 % in ${OUTER_BOUNDS.source}`,
    };
  }
  if (disputed.hoursInWorstYear > TOLERATED_HOURS) {
    return {
      severity: 'note',
      message: `The air was at 20 to 25 % for ${days(disputed.hoursInWorstYear)} in the worst 365 days, where sources differ.`,
      expected: `25 % or more (${OUTER_BOUNDS.source}); 20 % or more (${MEDIUM_TERM.source})`,
    };
  }
  return undefined;
}

/** `30 hours`, `35 days`. */
const days = (hours: number): string => (hours < 72 ? `${Math.round(hours)} hours` : `${Math.round(hours / 24)} days`);
