import { readdirSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Diagnostic } from '#model/diagnostic.ts';
import { ENTRY_KINDS } from '#model/words.ts';
import { entryProblem, startOf } from './entry-problem.ts';

/** A link that may be read as the file it leads to gives undefined: it must lead to a plain file in the collection. */
export function linkProblem(root: string, path: string): Diagnostic | undefined {
  let target: string;
  try {
    target = realpathSync(join(root, path));
    if (target.startsWith(root + sep) && statSync(target).isFile()) return undefined;
  } catch {
    target = 'nothing';
  }
  const inside = target.startsWith(root + sep) || target === root;
  return entryProblem('entry/not-a-file', startOf(path), {
    message: inside ? 'A link to a folder is not followed.' : 'A link that leads out of the collection is not opened.',
    found: inside
      ? `a link to ${target.slice(root.length + 1) || 'the collection itself'}`
      : 'a link to somewhere else',
    expected: 'a file of its own, or a link to a file in the collection',
    action: 'Put the file itself here, or take the link away.',
  });
}

/** A pipe, a socket, a device: opening it could wait for ever. */
export function notPlain(path: string): Diagnostic {
  return entryProblem('entry/not-a-file', startOf(path), {
    message: 'This is no plain file, and was not opened.',
    found: 'a pipe, a socket, a device or a folder',
    expected: 'a plain file',
    action: 'Take it out of the collection.',
  });
}

export function unlistable(path: string, error: unknown): Diagnostic {
  return entryProblem('entry/unreadable', startOf(path === '' ? '.' : path), {
    message: "The folder can't be listed, so nothing in it was read.",
    found: error instanceof Error && 'code' in error ? String(error.code) : String(error),
    expected: 'a folder that you may look into',
    action: 'Look at who may read it.',
  });
}

/** A folder at the top that is no kind's. It matters when it holds what look like entries. */
export function strayFolder(root: string, path: string): readonly Diagnostic[] {
  let entries: string[] = [];
  try {
    entries = readdirSync(join(root, path)).filter((name) => name.endsWith('.md'));
  } catch {
    return [];
  }
  if (entries.length === 0) return [];
  const words = {
    message: `${entries.length === 1 ? 'The file' : `The ${entries.length} files`} in this folder ${entries.length === 1 ? 'is' : 'are'} not read: no kind of entry is kept in it.`,
    found: `${path}/`,
    expected: ENTRY_KINDS.map((kind) => `${kind}/`).join(', '),
    action: 'Rename the folder if it is one of these, or move it out of the collection.',
  };
  return [entryProblem('entry/out-of-place', startOf(path), words)];
}
