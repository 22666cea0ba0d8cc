import { clock, listInWords, spanInWords } from '../figure/in-words.ts';
import type { SummedContents } from './contents-sum.ts';
import { type DigitReading, digitReadings } from './digit-readings.ts';

/** One title's length is stated to the second, so each may be out by one. Common practice, no source. */
const SLACK_PER_TITLE_S = 1;
/** A gap between titles that a careful engineer leaves: whole seconds, no more than these. Common practice, no source. */
const USUAL_GAPS_S = { least: 2, most: 6 };
/** Leader between titles of which nothing is recorded may be this long before it calls for an explanation. */
const LONGEST_GAP_S = 10;
/** Sound put into the run-out is seconds long; a title is longer than a minute's half. Common practice, no source. */
const LONGEST_RUN_OUT_S = 15;
const SHORTEST_TITLE_S = 30;
const LONGEST_TITLE_S = 900;

/** Why a stated length and the listed contents differ. */
export type Explanation =
  | { readonly is: 'agrees' }
  /** The gaps that the label denies would account for it, each of whole seconds. */
  | {
      readonly is: 'gaps';
      readonly eachS: number;
      readonly differenceS: number;
      /** A title's length with two figures swapped that would account for it as well. */
      readonly orElse: string | undefined;
    }
  | {
      readonly is: 'differs';
      readonly differenceS: number;
      readonly nearestS: number;
      /** What would make them agree, as a sentence that says where to look; the likeliest only. */
      readonly says: string;
      /** The stated length as it would have to read, where a reading of it agrees. */
      readonly gives: string | undefined;
      /** Nothing is recorded of gaps, and gaps of a usual length would do as well. */
      readonly mayBeGaps: boolean;
    };

/** Holds a stated length against the sum of the contents; where they differ, tries the readings that would agree: two
 * figures swapped, gaps, the run-out sound, one figure misread, a title missing or listed twice. */
export function explainDifference(stated: { value: number; written: string }, contents: SummedContents): Explanation {
  const slackS = SLACK_PER_TITLE_S * contents.titles.length;
  const nearestS = nearest(contents.allowed, stated.value);
  const differenceS = stated.value - nearestS;
  if (Math.abs(differenceS) <= slackS) return { is: 'agrees' };
  const mayBeGaps = isUnrecordedGaps(differenceS, contents);
  const differs = (says: string, gives?: string): Explanation => ({
    is: 'differs',
    differenceS,
    nearestS,
    says,
    gives,
    mayBeGaps,
  });
  const swapped = statedReading(stated.written, contents, 'swap');
  if (swapped !== undefined) return differs(swapped.says, swapped.gives);
  if (mayBeGaps) return { is: 'agrees' };
  const eachS = deniedGap(differenceS, contents);
  if (eachS !== undefined) {
    return { is: 'gaps', eachS, differenceS, orElse: titleReading(stated.value, contents, 'swap') };
  }
  const misread = statedReading(stated.written, contents, 'misread');
  const says =
    recordedRunOut(differenceS, slackS, contents) ??
    titleReading(stated.value, contents, 'swap') ??
    unrecordedRunOut(differenceS, contents) ??
    misread?.says ??
    titleReading(stated.value, contents, 'misread') ??
    missingOrTwice(differenceS, slackS, contents) ??
    'Add the titles up against the label again.';
  return differs(says, says === misread?.says ? misread.gives : undefined);
}

const nearest = (allowed: readonly number[], stated: number) =>
  allowed.toSorted((a, b) => Math.abs(stated - a) - Math.abs(stated - b))[0] ?? 0;

/** Gaps of which nothing is recorded can account for a length that is a little longer than its titles. */
const isUnrecordedGaps = (differenceS: number, { gapsS, gapCount }: SummedContents) =>
  gapsS === undefined && differenceS > 0 && differenceS <= gapCount * LONGEST_GAP_S;

/** The one reading of the stated length that is what the contents add up to; none when several are. */
function statedReading(
  written: string,
  { allowed }: SummedContents,
  is: DigitReading['is'],
): { says: string; gives: string } | undefined {
  const agreeing = digitReadings(written).filter(
    (reading) => reading.is === is && allowed.some((sumS) => Math.abs(sumS - reading.durationS) < 1),
  );
  const [only, ...more] = agreeing;
  if (only === undefined || more.length > 0) return undefined;
  const { gives, because } = only;
  return { says: `Look at the stated length again: ${gives}, ${because}, is what the contents add up to.`, gives };
}

/** Past this many titles any sum has a reading that would do, and naming them helps nobody. */
const MOST_NAMED = 3;

/** The readings of one title's length that would make the sum exact. */
function titleReading(statedS: number, contents: SummedContents, is: DigitReading['is']): string | undefined {
  const agreeing = contents.titles.flatMap((title) =>
    digitReadings(title.durationS?.written ?? '')
      .filter((reading) => reading.is === is && agreesWith(statedS, title.durationS?.value ?? 0, reading, contents))
      .map((reading) => `${reading.gives} for ${title.title.written} (${reading.because})`),
  );
  if (agreeing.length === 0 || agreeing.length > MOST_NAMED) return undefined;
  const which = agreeing.length === 1 ? 'the title' : 'the titles';
  return `Look at ${which} again: ${listInWords(agreeing, 'or')} would make the sum ${clock(statedS)}.`;
}

const agreesWith = (statedS: number, titleS: number, reading: DigitReading, { allowed }: SummedContents) =>
  allowed.some((sumS) => Math.abs(sumS - titleS + reading.durationS - statedS) < 1);

/** Whole seconds a gap, when the label says that there are none and three or more titles leave just that over. */
function deniedGap(differenceS: number, { gapsS, gapCount }: SummedContents): number | undefined {
  if (gapsS !== 0 || gapCount < 2) return undefined;
  const eachS = differenceS / gapCount;
  return Number.isInteger(eachS) && eachS >= USUAL_GAPS_S.least && eachS <= USUAL_GAPS_S.most ? eachS : undefined;
}

function recordedRunOut(differenceS: number, slackS: number, { runOutS, runOutCounted }: SummedContents) {
  if (runOutS === undefined) return undefined;
  const sound = `the run-out sound (${spanInWords(runOutS)})`;
  if (runOutCounted === false && Math.abs(differenceS - runOutS) <= slackS) {
    return `Look at the label again: the sum agrees when ${sound} is part of the stated length, and the entry says that it isn’t.`;
  }
  if (runOutCounted === true && Math.abs(differenceS + runOutS) <= slackS) {
    return `Look at the label again: the sum agrees when ${sound} isn’t part of the stated length, and the entry says that it is.`;
  }
  return undefined;
}

function unrecordedRunOut(differenceS: number, { runOutS }: SummedContents): string | undefined {
  if (runOutS !== undefined || differenceS <= 0 || differenceS > LONGEST_RUN_OUT_S) return undefined;
  return `Look at the label again: ${spanInWords(differenceS)} of sound in the run-out, counted in the length, would account for it.`;
}

function missingOrTwice(differenceS: number, slackS: number, { titles }: SummedContents): string | undefined {
  if (differenceS >= SHORTEST_TITLE_S && differenceS <= LONGEST_TITLE_S) {
    return `Look at the listing again: a title of about ${clock(differenceS)} that isn’t listed would account for it.`;
  }
  const twice = titles.filter((title) => Math.abs((title.durationS?.value ?? 0) + differenceS) <= slackS);
  const [title, ...more] = twice;
  if (title === undefined || more.length > 0) return undefined;
  return `Look at the listing again: without ${title.title.written} (${title.durationS?.written}) the sum agrees; it may be listed twice, or not be on this tape.`;
}
