import { CURVE_NAMES, type CurveName, type Equalisation } from '#model/equalisation.ts';
import { microseconds } from '#model/units.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';
import { spaced } from './quantity.ts';

const NUMBER = String.raw`\d{1,6}(?:\.\d{1,4})?`;
const TIME_CONSTANTS = new RegExp(`^(?<low>inf|∞|${NUMBER}) ?(?:[uµμ]s)? ?/ ?(?<high>${NUMBER}) ?(?:[uµμ]s)?$`, 'iu');
const FORMS = `${CURVE_NAMES.join(', ')}, or time constants such as 3180/50 or inf/35`;

/** A replay curve as a label names it, or by its time constants in µs, the longer first: `3180/50`, `inf/35`. */
export function parseEqualisation(text: string): Parsed<Equalisation> {
  const plain = spaced(text);
  const name = curveNamed(plain);
  if (name !== undefined) return parsed({ is: 'name', name });
  const both = TIME_CONSTANTS.exec(plain)?.groups;
  if (both === undefined) return refuse(text, plain);
  const [low, high] = [both.low ?? '', Number(both.high)];
  const lowUs = /^\d/u.test(low) ? Number(low) : Infinity;
  if (high > 0 && lowUs > high)
    return parsed({ is: 'time-constants', lowUs: microseconds(lowUs), highUs: microseconds(high) });
  return refused(
    'The first time constant, for the bass, is the longer one.',
    '3180/50, or inf/35',
    high > 0 && lowUs > 0 && lowUs < high
      ? `Write ${high}/${low} if the two stand in the other order.`
      : 'Look at the curve again.',
  );
}

function curveNamed(plain: string): CurveName | undefined {
  const bare = plain.toUpperCase().replace(/^(IEC) ([12])$/u, '$1$2');
  return CURVE_NAMES.find((name) => name === bare);
}

function refuse(text: string, plain: string) {
  if (/^\d{1,6}(?:\.\d{1,4})? ?(?:[uµμ]s)?$/iu.test(plain)) {
    const high = plain.replace(/ ?[uµμ]s$/iu, '');
    const action = `Write inf/${high} if the curve lifts no bass, 3180/${high} if it does.`;
    return refused('A curve has two time constants, one for the bass and one for the treble.', FORMS, action);
  }
  const action =
    'Write the name as the label has it if it is one of these, else its two time constants; leave the key out if it is not known.';
  return refused(`${quoted(text)} names no curve that is known here.`, FORMS, action);
}
