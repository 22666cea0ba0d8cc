import { commandLine } from './arguments.ts';
import { DONE, type Io, PROBLEMS } from './io.ts';
import { loadCatalogue } from './load.ts';
import { countsOf, countsText, problemText } from './problem-list.ts';

/** Reads everything and lists the problems. Exits 1 on an error; with --strict on a warning too. */
export async function check(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, { strict: { type: 'boolean' }, cache: { type: 'string' } });
  const { catalogue } = await loadCatalogue(shared, io, values.cache);
  const { problems, accepted } = catalogue;
  const counts = countsOf(problems);
  if (shared.json) {
    io.out(`${JSON.stringify({ problems, accepted, counts }, null, 2)}\n`);
  } else {
    io.out(problems.map(problemText).join('\n'));
    io.err(`${problems.length === 0 ? '' : '\n'}${countsText(counts, accepted)}`);
  }
  return counts.error > 0 || (values.strict === true && counts.warning > 0) ? PROBLEMS : DONE;
}
