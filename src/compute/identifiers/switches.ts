import { runsOf } from './runs.ts';

/** How often a number changes between letters and figures without anything between them: `GY0 417` once, `GYO 417`
 *  never. Of two readings the one with fewer is likelier: a lone figure among letters is usually a misread letter. */
export function switchesOf(text: string): number {
  const runs = runsOf(text);
  let switches = 0;
  for (const [index, run] of runs.entries()) {
    const next = runs[index + 1];
    if (next !== undefined && run.is !== 'between' && next.is !== 'between') switches += 1;
  }
  return switches;
}
