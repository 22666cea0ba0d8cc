import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Stretch, Tick } from '../drawings/strip.ts';
import { clock, spoken } from '../words/duration.ts';

/** A line of the contents table: where a title starts, when that can be said. */
interface ContentsRow {
  readonly number: number;
  readonly title: string;
  readonly side: string | undefined;
  readonly startsS: number | undefined;
  readonly durationS: number | undefined;
  readonly note: string | undefined;
}

/** A side of the tape as it runs, with what was stated and what was not. */
export interface ReelSide {
  readonly rows: readonly ContentsRow[];
  /** Undefined when a title or a gap has no length, so that nothing can be drawn to scale. */
  readonly strip:
    | { readonly stretches: readonly Stretch[]; readonly ticks: readonly Tick[]; readonly words: string }
    | undefined;
  readonly titlesS: number | undefined;
  readonly gapsS: number | undefined;
  readonly runOutS: number | undefined;
  readonly togetherS: number | undefined;
}

const STEP_S = [60, 300, 600, 1800, 3600];
const MOST_TICKS = 9;

/** The titles one after another from the head of the programme, each with the gap after it. */
export function sideOf(reel: Reel): ReelSide {
  const titles = itemsOf(reel.contents);
  const gap = gapAfter(reel);
  const runOut = valueOf(reel.runOutSound);
  const runOutS = runOut?.durationS?.value;
  const rows: ContentsRow[] = [];
  const stretches: Stretch[] = [];
  let at: number | undefined = 0;
  for (const [index, title] of titles.entries()) {
    const durationS = title.durationS?.value;
    rows.push({
      number: index + 1,
      title: title.title.value,
      side: title.side?.value,
      startsS: at,
      durationS,
      note: title.note?.value,
    });
    if (at === undefined || durationS === undefined) {
      at = undefined;
      continue;
    }
    stretches.push({ is: 'title', from: at, to: at + durationS, words: String(index + 1) });
    at += durationS;
    if (index === titles.length - 1) continue;
    const gapS = gap(index);
    if (gapS === undefined) stretches.push({ is: 'asked gap', from: at, to: at });
    else if (gapS > 0) stretches.push({ is: 'gap', from: at, to: at + gapS });
    at += gapS ?? 0;
  }
  const counted = runOut?.counted?.value !== false;
  if (at !== undefined && runOutS !== undefined && counted) {
    stretches.push({ is: 'run-out', from: at, to: at + runOutS });
    at += runOutS;
  }
  const titlesS = sum(titles.map((title) => title.durationS?.value));
  const gapsS = reel.gaps === undefined ? undefined : sum(titles.slice(1).map((_, index) => gap(index)));
  return {
    rows,
    titlesS,
    gapsS,
    runOutS,
    togetherS: gapsS === undefined ? undefined : at,
    strip: stripOf(stretches, at, titles.length),
  };
}

function gapAfter(reel: Reel): (index: number) => number | undefined {
  if (reel.gaps === undefined) return () => undefined;
  if (reel.gaps.is === 'none') return () => 0;
  const gaps = reel.gaps.value;
  if (gaps.is === 'each') return () => gaps.gapS;
  return (index) => {
    const after = itemsOf(reel.contents)[index]?.gapAfterS;
    return after?.is === 'none' ? 0 : after?.value;
  };
}

const sum = (parts: readonly (number | undefined)[]): number | undefined => {
  let total = 0;
  for (const part of parts) {
    if (part === undefined) return undefined;
    total += part;
  }
  return parts.length === 0 ? undefined : total;
};

function stripOf(stretches: readonly Stretch[], endS: number | undefined, titles: number): ReelSide['strip'] {
  if (endS === undefined || titles === 0 || endS === 0) return undefined;
  const step = STEP_S.find((one) => endS / one <= MOST_TICKS) ?? 3600;
  const marks = Array.from({ length: Math.ceil(endS / step) }, (_, index) => index * step);
  // The end has its own figure; a mark that would run into it is left out.
  const ticks = [...marks.filter((mark) => mark === 0 || endS - mark > step / 3), endS].map((mark) => ({
    at: mark,
    words: clock(mark),
  }));
  const asked = stretches.filter((stretch) => stretch.is === 'asked gap').length;
  const words = `The side drawn to scale, ${spoken(endS)}: ${titles} titles${asked > 0 ? `, ${asked} gaps that nobody stated` : ''}`;
  return { stretches, ticks, words };
}
