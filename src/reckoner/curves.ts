import { positionAtSpeed } from '#compute/equalisation/other-speed.ts';
import { type CurveAtSpeed, replayDifference } from '#compute/equalisation/replay-difference.ts';
import { constantsInWords } from '#compute/equalisation/time-constants.ts';
import { workedTransition } from '#compute/equalisation/transition-frequency.ts';
import { workOut } from '#compute/figure/work-out.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { hertz } from '#model/units.ts';
import { parseFrequency } from '#validate/scalars/frequency.ts';
import { type Parsed, parsed, refused } from '#validate/scalars/parsed.ts';
import { parseCount } from '#validate/scalars/quantity.ts';
import { parseTimeConstant } from '#validate/scalars/time-constant.ts';
import { stated } from './asked.ts';
import { answerOf, type Calculation } from './calculation.ts';
import { askedCurve, YEAR_KEY } from './curve.ts';

export const transitionFrequency: Calculation = {
  name: 'transition-frequency',
  does: 'where a time constant turns the curve',
  keys: [{ name: 'time-constant', form: '35 µs' }],
  answer: (asked) => {
    const time = asked.one('time-constant', parseTimeConstant);
    if (time === undefined) return undefined;
    const mind = time.value === Infinity ? ['An infinite time constant turns nowhere: the curve lifts no bass.'] : [];
    return answerOf(workedTransition(stated('time-constant', time)), mind);
  },
};

export const replayDifferenceOf: Calculation = {
  name: 'replay-difference',
  does: 'what a tape sounds like on a machine set to another curve',
  keys: [
    { name: 'recorded', form: '30 in/s AES' },
    { name: 'replayed', form: '15 in/s IEC' },
    { name: 'frequency', form: '1000' },
    YEAR_KEY,
  ],
  answer: (asked) => {
    const recorded = askedCurve(asked, 'recorded');
    const replayed = askedCurve(asked, 'replayed');
    const frequency = asked.one('frequency', parseHertz);
    if (recorded === undefined || replayed === undefined || frequency === undefined) return undefined;
    const worked = workOut(
      {
        name: 'replay-difference',
        unit: 'dB',
        formula:
          'Δ(f) = [N(f; t·r) − N(f; t replay)] − the same at 1 kHz; N(f) = 10·log[1 + 1/(2πf·t1)²] − 10·log[1 + (2πf·t2)²]; r = recorded speed / replay speed',
        source: sources(recorded.source, replayed.source),
      },
      [stated('frequency', frequency)],
      (f) => replayDifference(recorded.curve, replayed.curve, hertz(f)),
    );
    return {
      ...answerOf(worked, [
        'Relative to 1 kHz; the frequency is the one heard at the replay speed. Above 0 the tape sounds too strong there.',
        ...wanted(recorded.curve, replayed.curve.speedMmPerS),
        ...recorded.mind,
        ...replayed.mind,
      ]),
      inputs: [...recorded.inputs, ...replayed.inputs, ...worked.inputs],
    };
  },
};

/** A bare number is in Hz. */
function parseHertz(text: string) {
  const count = parseCount(text);
  if (count === undefined) return parseFrequency(text);
  const nothing: Parsed<never> = refused('A frequency is over 0.', '1000, or 1 kHz', 'Give the frequency in Hz.');
  return count > 0 ? parsed(hertz(count)) : nothing;
}

const sources = (...named: readonly (string | undefined)[]) =>
  [...new Set(['IEC 60094-1 (tape flux as two time constants); time scaling for another speed', ...named])]
    .filter((source) => source !== undefined)
    .join('; ');

/** At another speed than the tape's own: what the machine would have to be set to. */
function wanted(recorded: CurveAtSpeed, replayedMmPerS: MillimetresPerSecond): readonly string[] {
  if (recorded.speedMmPerS === replayedMmPerS) return [];
  const { wanted: constants, exact } = positionAtSpeed(recorded, recorded.speedMmPerS, replayedMmPerS);
  const names = [...new Set(exact.map((curve) => curve.name))].join(', ');
  const told = names === '' ? 'no standard defines that position' : `which is ${names} at that speed`;
  return [`At the replay speed this tape wants ${constantsInWords(constants)}, ${told}.`];
}
