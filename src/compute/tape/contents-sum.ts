import type { Reel, Title } from '#model/reel.ts';
import { type Seconds, seconds } from '#model/units.ts';
import { orderOf } from '../identifiers/sides.ts';

/** What the listed contents of a tape add up to. */
export interface SummedContents {
  readonly is: 'summed';
  readonly titles: readonly Title[];
  /** Titles alone. */
  readonly titlesS: Seconds;
  /** The gaps between titles as the entry gives them; undefined when nothing is said of gaps. */
  readonly gapsS: Seconds | undefined;
  /** How many gaps there are: one fewer than titles, on each side. */
  readonly gapCount: number;
  /** What the stated length may be, likeliest first: with and without the run-out sound where it isn't recorded whether
   * it counts; of a tape recorded in both directions, both sides together or the longer one. */
  readonly allowed: readonly Seconds[];
  readonly runOutS: Seconds | undefined;
  /** Whether the run-out sound is part of the stated length, as recorded. */
  readonly runOutCounted: boolean | undefined;
}

export interface UntestedContents {
  readonly is: 'untested';
  /** The dotted key that would have to be recorded: `contents[2].length`. */
  readonly lacks: string;
}

/** Titles, gaps and run-out of a reel's listing, added up.
 *
 * Gaps count between titles. A listing with a title of unknown length, or with mixed gaps of which one is missing,
 * isn't added up. Undefined when no titles are listed.
 */
export function sumOfContents(reel: Reel): SummedContents | UntestedContents | undefined {
  const titles = reel.contents?.is === 'known' ? reel.contents.value : [];
  if (titles.length === 0) return undefined;
  const lacks = whatIsLacking(reel, titles);
  if (lacks !== undefined) return { is: 'untested', lacks };
  const sides = bySide(titles);
  const sideGapsS = sides.map((side) => gapsOf(reel, side));
  const sideTitlesS = sides.map(lengthOf);
  const titlesS = sum(sideTitlesS);
  const gapsS = reel.gaps === undefined ? undefined : sum(sideGapsS);
  const sideSumsS = sideTitlesS.map((sideS, index) => sideS + (sideGapsS[index] ?? 0));
  const wholes = sides.length > 1 ? [sum(sideSumsS), Math.max(...sideSumsS)] : [sum(sideSumsS)];
  const { runOutS, runOutCounted } = runOutOf(reel);
  const allowed = wholes.flatMap((wholeS) => withRunOut(wholeS, runOutS, runOutCounted));
  return {
    is: 'summed',
    titles,
    titlesS: seconds(titlesS),
    gapsS: gapsS === undefined ? undefined : seconds(gapsS),
    gapCount: titles.length - sides.length,
    allowed: allowed.map(seconds),
    runOutS,
    runOutCounted,
  };
}

function whatIsLacking(reel: Reel, titles: readonly Title[]): string | undefined {
  const nameless = titles.findIndex((title) => title.durationS === undefined);
  if (nameless >= 0) return `contents[${nameless}].length`;
  if (reel.gaps?.is === 'known' && reel.gaps.value.is === 'mixed') {
    const open = titles.findIndex((title, index) => index < titles.length - 1 && title.gapAfterS === undefined);
    if (open >= 0) return `contents[${open}].gap-after`;
  }
  const { runOutS, runOutCounted } = runOutOf(reel);
  return runOutCounted === true && runOutS === undefined ? 'run-out-sound.length' : undefined;
}

function bySide(titles: readonly Title[]): readonly (readonly Title[])[] {
  const groups = new Map<string, Title[]>();
  for (const title of titles) {
    const side = title.side === undefined ? '' : String(orderOf(title.side.value) ?? title.side.value);
    const group = groups.get(side);
    if (group === undefined) groups.set(side, [title]);
    else group.push(title);
  }
  return [...groups.values()];
}

const lengthOf = (titles: readonly Title[]) => sum(titles.map((title) => title.durationS?.value ?? 0));

/** A title's own gap goes before the one that holds for all. */
function gapsOf(reel: Reel, titles: readonly Title[]): number {
  const gaps = reel.gaps?.is === 'known' ? reel.gaps.value : undefined;
  const eachS = gaps?.is === 'each' ? gaps.gapS : 0;
  return sum(
    titles.slice(0, -1).map(({ gapAfterS }) => {
      if (gapAfterS === undefined) return eachS;
      return gapAfterS.is === 'known' ? gapAfterS.value : 0;
    }),
  );
}

function runOutOf(reel: Reel) {
  const runOut = reel.runOutSound?.is === 'known' ? reel.runOutSound.value : undefined;
  return { runOutS: runOut?.durationS?.value, runOutCounted: runOut?.counted?.value };
}

function withRunOut(wholeS: number, runOutS: number | undefined, counted: boolean | undefined): readonly number[] {
  if (runOutS === undefined || counted === false) return [wholeS];
  return counted === true ? [wholeS + runOutS] : [wholeS, wholeS + runOutS];
}

const sum = (parts: readonly number[]) => parts.reduce((total, part) => total + part, 0);
