import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { gatherNumbers } from '#compute/identifiers/gather-numbers.ts';
import { makeNumberIndex } from '#compute/identifiers/number-index.ts';
import { countList, searchList } from '#compute/identifiers/number-list.ts';
import { searchNumbers } from '#compute/identifiers/number-search.ts';
import { type OpenIndex, openNumberIndex } from '#compute/identifiers/open-index.ts';
import { commandLine, type SharedOptions } from './arguments.ts';
import { answerText, listText } from './find-text.ts';
import { DONE, type Io, PROBLEMS, UsageError } from './io.ts';
import { loadEntries } from './load.ts';

/** More hits than this are counted, not listed. */
const MOST_HITS = 500;

/** Finds reels, editions, cuts and copy-log lines by a number in any spelling, or each line of a list.
 * Exits 1 when nothing is found. */
export async function find(args: readonly string[], io: Io): Promise<number> {
  const { shared, values, positionals } = commandLine(args, io, { list: { type: 'string' } });
  const typed = positionals.join(' ');
  if ((typed.trim() === '') === (values.list === undefined)) {
    throw new UsageError('Give a number, as in npm run find -- "HLX 22?7", or a list of them with --list FILE.');
  }
  const index = openIndex(shared, io);
  return values.list === undefined
    ? one(index, typed, shared, io)
    : list(index, resolve(io.cwd, values.list), shared, io);
}

function openIndex({ collection }: SharedOptions, io: Io): OpenIndex {
  const { entries } = loadEntries(collection);
  const missing = entries.unusable.size;
  if (missing > 0) io.err(`${missing} of the entries can’t be read and aren’t looked in: npm run check says why.\n`);
  return openNumberIndex(makeNumberIndex(gatherNumbers(entries)));
}

function one(index: OpenIndex, typed: string, { json }: SharedOptions, io: Io): number {
  const answer = searchNumbers(index, typed, MOST_HITS);
  io.out(json ? `${JSON.stringify(answer, null, 2)}\n` : answerText(answer));
  return answer.hits.length > 0 ? DONE : PROBLEMS;
}

function list(index: OpenIndex, file: string, { json }: SharedOptions, io: Io): number {
  const rows = searchList(index, textOf(file));
  const counts = countList(rows);
  io.out(json ? `${JSON.stringify({ rows, counts }, null, 2)}\n` : listText(rows, counts));
  return rows.some(({ hits }) => hits.length > 0) ? DONE : PROBLEMS;
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    throw new UsageError(`The list ${file} can’t be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}
