import { listInWords, speedInWords } from '../../figure/in-words.ts';
import { crossCheck } from '../check.ts';

/** A curve's name at a speed for which no standard defines one. */
export const notAtSpeed = crossCheck({
  code: 'equalisation/not-at-speed',
  title: 'No standard has that curve at that speed',
  severity: 'warning',
  scope: 'reel',
  reads: ['speed', 'equalisation', 'curve'],
  judge: ({ speed, equalisation, curve }) => {
    if (curve.is !== 'not-at-speed') return [];
    const atSpeed = listInWords(curve.namesAtSpeed, 'or');
    const speeds = listInWords(curve.speedsOfName.map(speedInWords), 'and');
    return [
      {
        place: equalisation.place,
        message: `No standard defines ${curve.name} at ${speedInWords(speed.value)}.`,
        found: `${equalisation.written} at ${speed.written}`,
        expected:
          atSpeed === ''
            ? `time constants, such as 3180/50`
            : `${atSpeed} at ${speedInWords(speed.value)}, or time constants such as inf/35`,
        action: `Look at the box for the speed and the curve: ${curve.name} goes with ${speeds}. If the machine that made the tape had a position of its own, write its time constants instead of a name.`,
        related: [{ message: `speed: ${speed.written}`, place: speed.place }],
      },
    ];
  },
});
