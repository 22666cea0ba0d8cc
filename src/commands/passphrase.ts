import { randomInt } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { Writable } from 'node:stream';
import { MADE_BITS, makePassphrase, weakness } from '#compute/sharing/passphrase.ts';
import { type Io, UsageError } from './io.ts';

/** Words to seal with: from a file, from SEAL_PASSPHRASE, typed unseen at a terminal, else made and shown once.
 * Throws UsageError, with the reason, for words that are too weak.
 *
 * @param known  words that anybody may guess. */
export async function wordsToSeal(file: string | undefined, io: Io, known: readonly string[]): Promise<string> {
  const given =
    (await givenWords(file, io)) ?? (await typed('Words to seal it with (leave empty to have some made): '));
  if (given === undefined || given === '') {
    const made = makePassphrase((below) => randomInt(below));
    io.err(
      `\nThe words, shown this once (${MADE_BITS} bits of chance). Write them down, and tell them some other way than the file:\n\n    ${made}\n\n`,
    );
    return made;
  }
  const reason = weakness(given, known);
  if (reason !== undefined) throw new UsageError(`These words are too weak to seal with. ${reason}`);
  return given;
}

/** Words to open with, by the same ways but the last. */
export async function wordsToOpen(file: string | undefined, io: Io): Promise<string> {
  const given = (await givenWords(file, io)) ?? (await typed('The words, or the key of the link: '));
  if (given === undefined || given === '')
    throw new UsageError('Give the words with --passphrase-file FILE, or in SEAL_PASSPHRASE.');
  return given;
}

async function givenWords(file: string | undefined, io: Io): Promise<string | undefined> {
  if (file === undefined) return io.env['SEAL_PASSPHRASE'];
  try {
    const [line = ''] = (await readFile(resolve(io.cwd, file), 'utf8')).split(/\r?\n/);
    return line;
  } catch (error) {
    throw new UsageError(
      `The passphrase file can’t be read: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

/** A line typed at the terminal and not shown on it; undefined where there is none. */
async function typed(question: string): Promise<string | undefined> {
  if (process.stdin.isTTY !== true) return undefined;
  process.stderr.write(question);
  const unseen = new Writable({ write: (_chunk, _encoding, done) => done() });
  const reader = createInterface({ input: process.stdin, output: unseen, terminal: true });
  try {
    return await reader.question('');
  } finally {
    reader.close();
    process.stderr.write('\n');
  }
}
