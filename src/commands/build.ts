import { relative, resolve } from 'node:path';
import { keepHeapSmall } from '#publish/memory.ts';
import { commandLine } from './arguments.ts';
import { buildSite, standingAt } from './build-site.ts';
import { DONE, type Io, PROBLEMS } from './io.ts';
import { countsOf, countsText } from './problem-list.ts';

/** Writes the owner's site and catalogue.json. What is sound is published; an entry with an error makes the exit 1. */
export async function build(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, {
    out: { type: 'string' },
    base: { type: 'string' },
    cache: { type: 'string' },
  });
  keepHeapSmall();
  const out = resolve(io.cwd, values.out ?? 'dist');
  const cache = values.cache === undefined ? undefined : resolve(io.cwd, values.cache);
  const { catalogue } = await buildSite({ ...shared, out, ...standingAt(values.base), cache }, io);
  const counts = countsOf(catalogue.problems);
  io.err(`The site is in ${relative(io.cwd, out) || '.'}. ${countsText(counts, catalogue.accepted)}`);
  if (counts.error > 0) io.err('The entries with errors are listed on the page "To mend", and by "npm run check".\n');
  if (shared.json) io.out(`${JSON.stringify({ out, reels: catalogue.reels.length, counts })}\n`);
  return counts.error > 0 ? PROBLEMS : DONE;
}
