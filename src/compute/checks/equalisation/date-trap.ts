import type { CurveAnswer } from '../../equalisation/curve-of.ts';
import type { StandardCurve } from '../../equalisation/standards.ts';
import { constantsInWords } from '../../equalisation/time-constants.ts';
import { listInWords } from '../../figure/in-words.ts';
import { crossCheck, type Doubt } from '../check.ts';

/** A curve's name that meant something else in other years. Silent where the year makes it what the name means today. */
export const dateTrap = crossCheck({
  code: 'equalisation/date-trap',
  title: 'The curve’s name meant something else in other years',
  severity: 'note',
  scope: 'reel',
  reads: ['speed', 'equalisation', 'curve', 'recordedYears'],
  judge: ({ speed, equalisation, curve, recordedYears }): readonly Doubt[] => {
    const written = `${equalisation.written} at ${speed.written}`;
    const about = { place: equalisation.place, found: written };
    if (curve.is === 'ambiguous') {
      const when =
        recordedYears === 'unknown' ? 'and nobody recorded the year' : 'and the year recorded leaves it open';
      return [
        {
          ...about,
          message: `${written} had more than one meaning, ${when}.`,
          expected: listInWords(curve.meanings.map(inWords), 'or'),
          action:
            'Record when the tape was made, or write the time constants if the legend or a test tone tells. Sources differ on the year of the change, so ask whose standard it was as well.',
        },
      ];
    }
    if (curve.is !== 'resolved' || curve.otherwise.length === 0) return [];
    const meaning = `${constantsInWords(curve.curve)} (${curve.curve.called})`;
    const others = listInWords(curve.otherwise.map(inWords), 'or');
    if (recordedYears === 'unknown') {
      return [
        {
          ...about,
          message: `${written} means ${constantsInWords(curve.curve)} today, and meant something else before; the year isn’t recorded.`,
          expected: `${meaning}; in other years ${others}`,
          action: 'Record when the tape was made: the year decides.',
        },
      ];
    }
    if (!isNoLonger(curve)) return [];
    return [
      {
        ...about,
        message: `${written} meant another curve when this tape was made than it does today.`,
        expected: `${meaning}; today ${others}`,
        action: `Replay it with ${constantsInWords(curve.curve)}, not with what a machine calls ${equalisation.written} today. Leave the entry as it is.`,
      },
    ];
  },
});

const inWords = (row: StandardCurve) => `${constantsInWords(row)} (${row.called})`;

/** The meaning that the year picks has ended, and another one holds since. */
const isNoLonger = (answer: Extract<CurveAnswer, { is: 'resolved' }>) =>
  answer.otherwise.some((row) => row.until === undefined && row.from !== undefined);
