import { type CurveAnswer, curveOf, yearsOf } from '#compute/equalisation/curve-of.ts';
import type { CurveAtSpeed } from '#compute/equalisation/replay-difference.ts';
import type { StandardCurve } from '#compute/equalisation/standards.ts';
import { constantsInWords } from '#compute/equalisation/time-constants.ts';
import type { Equalisation } from '#model/equalisation.ts';
import { asInchesPerSecond, type MillimetresPerSecond } from '#model/units.ts';
import type { WorkedInput } from '#model/worked.ts';
import { parsePartialDate } from '#validate/date.ts';
import { parseEqualisation } from '#validate/scalars/equalisation.ts';
import { type Parsed, parsed } from '#validate/scalars/parsed.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import type { Asked } from './asked.ts';

/** When the tape was recorded: what a name means may hang on it. */
export const YEAR_KEY = { name: 'year', form: '1972', optional: true } as const;

export interface AskedCurve {
  readonly curve: CurveAtSpeed;
  readonly inputs: readonly WorkedInput[];
  readonly source: string | undefined;
  readonly mind: readonly string[];
}

/** A speed with its curve, `30 in/s AES`, `15 in/s 3180/50`. */
export function askedCurve(asked: Asked, key: string): AskedCurve | undefined {
  const read = asked.one(key, parseSpeedAndCurve);
  return read === undefined
    ? undefined
    : namedCurve(asked, key, read.written, read.value.speed, read.value.equalisation);
}

/** What a name means at a speed, in the year that was given; a name that stays open is asked about. */
export function namedCurve(
  asked: Asked,
  key: string,
  written: string,
  speed: MillimetresPerSecond,
  equalisation: Equalisation,
): AskedCurve | undefined {
  const year = asked.one('year', parsePartialDate);
  if (asked.has('year') && year === undefined) return undefined;
  const answer = curveOf(equalisation, speed, yearsOf(year?.value));
  if (answer.is !== 'resolved') return refuseCurve(asked, key, written, speed, answer);
  const { lowUs, highUs, called, source } = answer.curve;
  const constants = constantsInWords(answer.curve);
  const inputs: WorkedInput[] = [
    { name: key, written, basis: 'stated' },
    { name: `time constants, ${key}`, written: constants, basis: called === undefined ? 'stated' : 'worked' },
  ];
  const otherwise = answer.otherwise.map((other) => `${constantsInWords(other)} as ${other.called}`).join('; ');
  const mind =
    otherwise === '' ? [] : [`${written} was taken as ${constants}, ${called}. In other years it meant ${otherwise}.`];
  return { curve: { lowUs, highUs, speedMmPerS: speed }, inputs, source, mind };
}

function refuseCurve(
  asked: Asked,
  key: string,
  written: string,
  speed: MillimetresPerSecond,
  answer: Exclude<CurveAnswer, { is: 'resolved' }>,
): undefined {
  const speedWords = `${asInchesPerSecond(speed)} in/s`;
  if (answer.is === 'ambiguous') {
    const meanings = answer.meanings.map((one) => `${constantsInWords(one)}, ${one.called}`).join('; or ');
    return asked.refuse(key, {
      code: 'equalisation/date-trap',
      message: `${written} has meant more than one curve.`,
      found: written,
      expected: meanings,
      action: `Give ${howToSay(answer.meanings, speedWords)}.`,
    });
  }
  const at = answer.speedsOfName.map((one) => `${asInchesPerSecond(one)}`).join(', ');
  const names = answer.namesAtSpeed.length === 0 ? 'no name is' : `${answer.namesAtSpeed.join(', ')} are`;
  return asked.refuse(key, {
    code: 'equalisation/not-at-speed',
    message: `No standard defines ${answer.name} at ${speedWords}.`,
    found: written,
    expected: `${answer.name} at ${at} in/s; at ${speedWords} ${names} defined`,
    action: `Look at the label again, or give time constants, such as "${speedWords} 3180/50".`,
  });
}

/** The spellings that leave nothing open: the year, another name, or the time constants themselves. */
function howToSay(meanings: readonly StandardCurve[], speed: string): string {
  const constants = meanings.map((one) => {
    const low = Number.isFinite(one.lowUs) ? String(one.lowUs) : 'inf';
    return `"${speed} ${low}/${one.highUs}"`;
  });
  const names = meanings.some((one) => one.name === 'IEC') && speed === '30 in/s' ? 'IEC1, IEC2, ' : '';
  return `${names}--year with the year of recording, or ${constants.join(' or ')}`;
}

interface SpeedAndCurve {
  readonly speed: MillimetresPerSecond;
  readonly equalisation: Equalisation;
}

function parseSpeedAndCurve(text: string): Parsed<SpeedAndCurve> {
  const words = text.trim().split(/\s+/);
  for (let count = Math.min(words.length - 1, 4); count > 0; count -= 1) {
    const speed = parseSpeed(words.slice(0, count).join(' '));
    if (!speed.ok) continue;
    const equalisation = parseEqualisation(words.slice(count).join(' '));
    return equalisation.ok ? parsed({ speed: speed.value, equalisation: equalisation.value }) : equalisation;
  }
  const alone = parseSpeed(text);
  if (alone.ok) return parseEqualisation('') as Parsed<never>;
  return { ...alone, expected: '30 in/s AES, or 15 in/s 3180/50', message: `"${text}" doesn’t begin with a speed.` };
}
