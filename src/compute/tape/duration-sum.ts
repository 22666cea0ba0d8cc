import type { Given } from '#model/given.ts';
import { type Seconds, seconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';

/** Titles with the gaps between them: one gap fewer than titles. A run-out sound is no title; add it yourself. */
export function durationSum(titlesS: readonly Seconds[], gapS: Seconds): Seconds {
  let totalS = gapS * Math.max(0, titlesS.length - 1);
  for (const titleS of titlesS) totalS += titleS;
  return seconds(totalS);
}

/** The sum of a side's titles, in s. Each title is taken as written, so the sum has no band of its own. */
export function workedDurationSum(titles: readonly Given<Seconds>[], gap: Given<Seconds>): Worked {
  return workOut(
    { name: 'duration-sum', unit: 's', formula: 'Σ titles + (n − 1)·gap', source: 'arithmetic' },
    [...titles, gap],
    (...values) => durationSum(values.slice(0, -1) as Seconds[], values.at(-1) as Seconds),
  );
}
