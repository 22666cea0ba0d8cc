import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type EntryFile, type MigrationStep, migrateFiles, STEPS } from '#compute/migration/steps.ts';
import { valueOf } from '#model/fact.ts';
import { FORMAT } from '#model/format.ts';
import { isCode, writeWhole } from '#publish/atomic.ts';
import { addFacts } from '#read/add-facts.ts';
import { NoCollection, readCollection } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { commandLine } from './arguments.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { many, plain } from './problem-list.ts';

/** Moves an older collection forward: shows what changes, and with --write writes it. */
export const migrate = (args: readonly string[], io: Io): Promise<number> => migrateBy(STEPS, FORMAT, args, io);

/** The same by given steps up to a given version. */
export async function migrateBy(
  steps: readonly MigrationStep[],
  newest: number,
  args: readonly string[],
  io: Io,
): Promise<number> {
  const { shared, values } = commandLine(args, io, { write: { type: 'boolean' } });
  const { files, version } = collectionAt(shared.collection);
  const { steps: path, to, changed } = migrateFiles(files, version, steps);
  if (shared.json)
    io.out(
      `${JSON.stringify({ from: version, to, steps: path.map(({ about }) => about), changed: changed.map(({ path: file }) => file), written: values.write === true }, null, 2)}\n`,
    );
  if (path.length === 0) {
    const only = newest === 1 ? ', the only one there is' : '';
    io.err(`The entries are in form ${version}${only}. There is nothing to move.\n`);
    return DONE;
  }
  for (const { about } of path) io.err(`${about}\n`);
  if (!shared.json) for (const file of changed) io.out(changeText(file.path, file.before, file.text));
  if (values.write !== true) {
    io.err(
      `${many(changed.length, 'file')} would change, from form ${version} to ${to}. Nothing is written yet: --write writes.\n`,
    );
    return DONE;
  }
  // The version goes last: cut off before it, the migration is simply begun again.
  for (const file of changed)
    if (file.path !== 'collection.md') await writeWhole(join(shared.collection, file.path), file.text);
  const own =
    changed.find(({ path: file }) => file === 'collection.md')?.text ?? textAt(shared.collection, 'collection.md');
  await writeWhole(join(shared.collection, 'collection.md'), withVersion(own, to));
  io.err(`Moved ${many(changed.length, 'file')} to form ${to}. "npm run check" says what it makes of them.\n`);
  return DONE;
}

function collectionAt(collection: string): { readonly files: readonly EntryFile[]; readonly version: number } {
  try {
    const read = readCollection(collection);
    const files = read.entries.map(({ path }) => ({ path, text: textAt(collection, path) ?? '' }));
    return { files, version: valueOf(validateAll(read).entries.collection.format) ?? 1 };
  } catch (error) {
    if (error instanceof NoCollection) throw new UsageError(`${error.message} --collection names it.`);
    throw error;
  }
}

function textAt(collection: string, path: string): string | undefined {
  try {
    return readFileSync(join(collection, path), 'utf8');
  } catch (error) {
    if (isCode(error, 'ENOENT')) return undefined;
    throw error;
  }
}

function withVersion(text: string | undefined, version: number): string {
  if (text === undefined) return `---\nformat: ${version}\n---\n`;
  if (/^format:.*$/mu.test(text)) return text.replace(/^format:.*$/mu, `format: ${version}`);
  return addFacts(text, `format: ${version}\n`) ?? text;
}

/** The lines that change, with the first and the last common ones left out. */
function changeText(path: string, before: string, after: string): string {
  const [old, now] = [before.split('\n'), after.split('\n')];
  let first = 0;
  while (first < old.length && old[first] === now[first]) first += 1;
  let last = 0;
  while (last < old.length - first && last < now.length - first && old.at(-1 - last) === now.at(-1 - last)) last += 1;
  const cut = (lines: readonly string[], sign: string) =>
    lines.slice(first, lines.length - last).map((line) => `  ${sign} ${plain(line)}\n`);
  return `${path}:${first + 1}\n${cut(old, '-').join('')}${cut(now, '+').join('')}`;
}
