import { relative, resolve } from 'node:path';
import type { Entries } from '#model/entries.ts';
import { acceptedJson } from '#publish/catalogue-json.ts';
import { commandLine } from './arguments.ts';
import { DONE, type Io, PROBLEMS } from './io.ts';
import { loadCatalogue } from './load.ts';
import { countsOf, countsText, many, plain, problemText } from './problem-list.ts';

/** Reads everything and lists the problems. Exits 1 on an error; with --strict on a warning too. */
export async function check(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, {
    strict: { type: 'boolean' },
    cache: { type: 'string' },
    bag: { type: 'string' },
  });
  if (values.bag !== undefined) return await checkBagAt(resolve(io.cwd, values.bag), shared.json, io);
  const { catalogue } = await loadCatalogue(shared, io, values.cache);
  const { problems, accepted } = catalogue;
  const counts = countsOf(problems);
  if (shared.json) {
    io.out(`${JSON.stringify({ problems, accepted: accepted.map(acceptedJson), counts }, null, 2)}\n`);
  } else {
    io.out(problems.map((problem) => problemText(problem, io.width)).join('\n'));
    io.err(`${problems.length === 0 ? '' : '\n'}${countsText(counts, accepted)}`);
    if (problems.length === 0 && isEmpty(catalogue.entries)) io.err(howToBegin(shared.collection, io));
  }
  return counts.error > 0 || (values.strict === true && counts.warning > 0) ? PROBLEMS : DONE;
}

const isEmpty = ({ collection: _, unusable, ...kinds }: Entries) =>
  unusable.size === 0 && Object.values(kinds).every((entries) => entries.length === 0);

function howToBegin(collection: string, io: Io): string {
  const folder = relative(io.cwd, collection) || '.';
  const there = folder === 'collection' ? '' : ` --collection ${folder.startsWith('..') ? collection : folder}`;
  return `There is no entry in ${collection} yet, so there was nothing to check. "npm run new -- reel ID${there}" writes the first, and "npm run import -- FILE${there}" makes entries of a spreadsheet.\n`;
}

/** Whether a bag is whole: every file is there, and none has changed since it was made. */
async function checkBagAt(bag: string, json: boolean, io: Io): Promise<number> {
  const { checkBag } = await import('#publish/export/bag-check.ts');
  const verdict = await checkBag(bag);
  if (json) io.out(`${JSON.stringify(verdict, null, 2)}\n`);
  else io.out(verdict.faults.map((fault) => `${plain(fault)}\n`).join(''));
  const whole = `The bag is whole: ${many(verdict.files, 'file')}, each as it was when the bag was made.\n`;
  const state = verdict.complete ? 'complete, and not valid' : 'not complete';
  io.err(verdict.valid ? whole : `The bag is ${state}: ${many(verdict.faults.length, 'fault')}.\n`);
  return verdict.valid ? DONE : PROBLEMS;
}
