import { type Seconds, seconds } from '#model/units.ts';
import { type Parsed, parsed, quoted, type Refusal, refused } from './parsed.ts';
import { spaced } from './quantity.ts';

const CLOCK = /^(?:(?<h>\d{1,4}):(?<hm>\d{2})|(?<m>\d{1,4})):(?<s>\d{2}(?:\.\d{1,6})?)$/u;
const IN_WORDS =
  /^(?:(?<h>\d{1,6}(?:\.\d{1,6})?) ?h)?(?: ?(?<m>\d{1,6}(?:\.\d{1,6})?) ?min)?(?: ?(?<s>\d{1,9}(?:\.\d{1,6})?) ?s)?$/u;
const WITH_POINT = /^(?<m>\d{1,4})\.(?<s>\d{1,2})$/u;
const WITH_MARKS = /^(?<m>\d{1,4}) ?(?:['′’]|m|mins?|minutes?) ?(?<s>\d{1,2}) ?(?:["″”]|''|s|secs?|seconds?)?$/iu;
const FORMS = '19:44, or 19 min 44 s';

/** A duration: `19:44`, `1:06:40`, `19 min 44 s`, `36 h`, `3 s`. Minutes may pass 59 when there are no hours. */
export function parseDuration(text: string): Parsed<Seconds> {
  const plain = spaced(text);
  const clock = CLOCK.exec(plain)?.groups;
  if (clock !== undefined) return fromClock(text, clock);
  const words = plain === '' ? undefined : IN_WORDS.exec(plain)?.groups;
  if (words !== undefined) {
    return parsed(seconds(Number(words.h ?? 0) * 3600 + Number(words.m ?? 0) * 60 + Number(words.s ?? 0)));
  }
  return refuse(text, plain);
}

function fromClock(text: string, clock: Readonly<Record<string, string | undefined>>): Parsed<Seconds> {
  const minutes = Number(clock.hm ?? clock.m);
  const s = Number(clock.s);
  if (s >= 60 || (clock.h !== undefined && minutes >= 60)) {
    const which = s >= 60 ? 'seconds' : 'minutes';
    const action = 'Look at the label again: the last two figures of each part go up to 59.';
    return refused(`${quoted(text)} has more than 59 ${which}.`, FORMS, action);
  }
  return parsed(seconds(Number(clock.h ?? 0) * 3600 + minutes * 60 + s));
}

function refuse(text: string, plain: string): Refusal {
  const point = WITH_POINT.exec(plain)?.groups;
  if (point !== undefined) return refusePoint(plain, point.m ?? '', point.s ?? '');
  const marks = WITH_MARKS.exec(plain)?.groups;
  if (marks !== undefined) {
    const clock = `${marks.m}:${(marks.s ?? '').padStart(2, '0')}`;
    return refused(`${quoted(text)} isn't one of the forms of a duration.`, FORMS, `Write ${clock}.`);
  }
  if (/^\d{1,9}$/u.test(plain)) {
    const action = `Write ${plain} min or ${plain} s.`;
    return refused(`${plain} has no unit: minutes or seconds?`, FORMS, action);
  }
  const action = 'Write minutes and seconds with a colon, or leave the key out if it is not recorded.';
  return refused(`${quoted(text)} can't be read as a duration.`, FORMS, action);
}

/** A point may stand for a colon or be a decimal point; the two differ, so it is asked. */
function refusePoint(plain: string, m: string, s: string): Refusal {
  const asMinutes = `${plain} min (${Number((Number(plain) * 60).toFixed(3))} s)`;
  const written = s.padEnd(2, '0');
  if (Number(written) >= 60) {
    return refused(
      `${plain} has a point where minutes and seconds have a colon.`,
      FORMS,
      `Write ${asMinutes}, if decimal minutes are meant.`,
    );
  }
  const clock = `${m}:${written} (${Number(m) * 60 + Number(written)} s)`;
  const action = `Write ${m}:${written} if the point stands for a colon, ${plain} min if it is a decimal point.`;
  return refused(`${plain} can be ${clock} or ${asMinutes}.`, `${m}:${written}, or ${plain} min`, action);
}
