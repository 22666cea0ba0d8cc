import { hertz } from '#model/units.ts';
import { replayDifference } from '../../equalisation/replay-difference.ts';
import { constantsInWords } from '../../equalisation/time-constants.ts';
import { decibelsInWords, listInWords, speedInWords } from '../../figure/in-words.ts';
import { positionsAt } from '../../playback/curve-fit.ts';
import { crossCheck } from '../check.ts';

/** Bass, presence, treble and the top: where a wrong curve is heard. */
const HEARD_AT_HZ = [63, 4000, 10_000, 16_000].map(hertz);

/** Every machine that could play the tape has another curve at its speed. */
export const replayMismatch = crossCheck({
  code: 'equalisation/replay-mismatch',
  title: 'No machine that plays it has its curve',
  severity: 'note',
  scope: 'reel',
  reads: ['speed', 'equalisation', 'curve', 'playersByCurve'],
  judge: ({ speed, equalisation, curve, playersByCurve }) => {
    if (curve.is !== 'resolved' || playersByCurve.some(({ reason }) => reason.verdict !== 'plays with care')) return [];
    const recorded = { ...curve.curve, speedMmPerS: speed.value };
    const positions = playersByCurve.flatMap(({ entry }) =>
      positionsAt(entry, speed.value).flatMap(({ written, constants }) =>
        constants === undefined ? [] : [{ entry, written, replayed: { ...constants, speedMmPerS: speed.value } }],
      ),
    );
    const answers = positions.map(({ entry, written, replayed }) => {
      const differences = HEARD_AT_HZ.map((frequencyHz) => replayDifference(recorded, replayed, frequencyHz));
      const heard = differences.map(
        (dB, index) => `${decibelsInWords(dB)} at ${frequencyInWords(HEARD_AT_HZ[index] ?? 0)}`,
      );
      return { entry, written, worst: Math.max(...differences.map(Math.abs)), heard: listInWords(heard) };
    });
    const nearest = answers.toSorted((a, b) => a.worst - b.worst)[0];
    if (nearest === undefined) return [];
    return [
      {
        place: equalisation.place,
        message: `${playersByCurve.length === 1 ? 'The only machine that plays it has' : 'The machines that play it all have'} another curve at ${speedInWords(speed.value)}.`,
        found: `${equalisation.written} (${constantsInWords(curve.curve)}), played on ${nearest.written}: ${nearest.heard}, against 1 kHz`,
        expected: `a position of ${constantsInWords(curve.curve)} at ${speedInWords(speed.value)}`,
        action: `Play it on ${nearest.entry.title.written} all the same, write ${nearest.written} into the settings, and put the difference right in the digital file.`,
        related: playersByCurve.map(({ entry }) => ({
          message: `${entry.title.written}: ${listInWords(positionsAt(entry, speed.value).map((one) => one.written))}`,
          place: entry.keys.get('equalisations') ?? entry.place,
        })),
      },
    ];
  },
});

const frequencyInWords = (hz: number) => (hz < 1000 ? `${hz} Hz` : `${hz / 1000} kHz`);
