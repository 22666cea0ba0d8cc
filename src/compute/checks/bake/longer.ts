import { CAUTIONS } from '#model/cautions.ts';
import type { Severity } from '#model/diagnostic.ts';
import { crossCheck } from '../check.ts';

const HOUR_S = 3600;
/** The longest published for quarter inch: IASA-TC 04 section 5.4.3, 8 to 12 h. */
const LONGEST_QUARTER_H = 12;
/** The longest of any practice listed: 36 h, published for wide tape, common practice (no source) at quarter inch. */
const LONGEST_H = 36;

/** Longer than the practices for its width: a warning past the longest of all at quarter inch; else a note. */
export const longer = crossCheck({
  code: 'bake/longer',
  title: 'A bake longer than most practices',
  severity: 'note',
  scope: 'reel',
  reads: ['bakes', 'bakeWidth'],
  judge: ({ bakes, bakeWidth }) =>
    bakes.flatMap(({ durationS }) => {
      if (durationS === undefined) return [];
      const hours = durationS.value / HOUR_S;
      const past =
        hours > LONGEST_H
          ? LONGEST_H
          : hours > LONGEST_QUARTER_H && bakeWidth !== 'wider'
            ? LONGEST_QUARTER_H
            : undefined;
      if (past === undefined) return [];
      const severity: Severity = past === LONGEST_H && bakeWidth === 'quarter inch' ? 'warning' : 'note';
      return [
        {
          place: durationS.place,
          severity,
          message:
            past === LONGEST_H
              ? 'The bake is longer than every practice listed.'
              : 'The bake is longer than the published practices for quarter inch, and inside common practice.',
          found: durationS.written,
          expected:
            '6 to 8 h (a maker’s advice in UNESCO RAMP study r9704e) or 8 to 12 h (IASA-TC 04, as quoted) at quarter inch; up to 36 h for wide tape (the same study), and at quarter inch as common practice, no source',
          action: `Check the figure: the hours may include cooling. If it is right, the practices differ and this may be perfectly right; days have been reported for 2 in. ${CAUTIONS.heat}`,
        },
      ];
    }),
});
