import { MEDIUM_TERM, OUTER_BOUNDS } from '../../climate/storage-bounds.ts';
import { conditionRule } from '../rule.ts';

const days = (hours: number) => `${Math.round(hours / 24)} ${Math.round(hours / 24) === 1 ? 'day' : 'days'}`;

/** The air that the reel lies in, against two sources' bounds, each named. */
export const storage = conditionRule({
  id: 'storage',
  title: 'The air where it is kept',
  reads: ['roomAir'],
  shownBy: [],
  threshold: {
    value: 24,
    unit: 'hours outside in any 365 days',
    source: 'the project’s own tolerance for an open window',
  },
  sources: [
    `${OUTER_BOUNDS.source}: 8 to 35 °C, 25 to 60 %`,
    `${MEDIUM_TERM.source}: medium term, up to 23 °C (± 2), 20 to 50 % (± 10)`,
    'sources differ between 20 and 25 %, and on the lowest temperature, 8 or 11 °C',
  ],
  cautions: ['cold', 'lifting'],
  action:
    'Move it somewhere cooler, drier or steadier; an inner wall and a low shelf away from pipes are the cheapest change.',
  judge: ({ roomAir }, tolerated) => {
    const seen = `${days(roomAir.coveredHours)} logged, ${roomAir.lowC.toFixed(0)} to ${roomAir.highC.toFixed(0)} °C and ${roomAir.lowPercent.toFixed(0)} to ${roomAir.highPercent.toFixed(0)} %`;
    if (roomAir.outsideOuterHours > tolerated) {
      return {
        outcome: 'at-risk',
        because: `Past the outer bounds for ${days(roomAir.outsideOuterHours)} of a year (${seen}).`,
      };
    }
    if (roomAir.outsideMediumHours > tolerated) {
      return {
        outcome: 'at-risk',
        because: `Inside the outer bounds, and past the medium-term ones for ${days(roomAir.outsideMediumHours)} of a year (${seen}); the standard allows 2 °C and 10 % of variation beside them.`,
      };
    }
    if (roomAir.disputedHours > tolerated) {
      return {
        outcome: 'at-risk',
        because: `Between 20 and 25 % for ${days(roomAir.disputedHours)} of a year: inside one source’s bounds and outside the other’s (${seen}).`,
      };
    }
    return { outcome: 'clear', because: `Inside both sources’ bounds (${seen}).` };
  },
});
