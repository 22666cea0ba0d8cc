import { isUtf8 } from 'node:buffer';
import { closeSync, constants, fstatSync, openSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Diagnostic } from '#model/diagnostic.ts';
import { notPlain } from './collection-problems.ts';
import { entryProblem, startOf } from './entry-problem.ts';
import type { SourceFile } from './source-file.ts';

/** An entry is at most 1 MB. */
const LARGEST_ENTRY_BYTES = 1024 * 1024;

/** Reads one entry's file. It is opened once and asked what it is, so that nothing can be put in its place between. */
export function readSource(root: string, path: string): SourceFile | Diagnostic {
  let bytes: Buffer;
  try {
    const handle = openSync(join(root, path), constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const stat = fstatSync(handle);
      if (!stat.isFile()) return notPlain(path);
      if (stat.size > LARGEST_ENTRY_BYTES) return tooLarge(path, stat.size);
      bytes = readFileSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    return unreadable(path, error);
  }
  return isUtf8(bytes) ? { path, text: bytes.toString('utf8') } : notUtf8(path, bytes);
}

function tooLarge(path: string, bytes: number): Diagnostic {
  return entryProblem('entry/code-refused', startOf(path), {
    message: 'The file is over the size limit of an entry, and was not read.',
    found: `${bytes} bytes`,
    expected: `at most ${LARGEST_ENTRY_BYTES} bytes (1 MB)`,
    action: 'Move what is not the entry itself into a file beside it, or into notes/.',
  });
}

function unreadable(path: string, error: unknown): Diagnostic {
  const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
  const gone = code === 'ENOENT';
  return entryProblem('entry/unreadable', startOf(path), {
    message: gone
      ? 'The file was here when the folder was listed, and gone when it was to be read.'
      : "The file can't be opened.",
    found: code,
    expected: 'a file that you may read',
    action: gone ? 'Run this again; an editor or a copying program may have been at work.' : 'Look at who may read it.',
  });
}

function notUtf8(path: string, bytes: Buffer): Diagnostic {
  let line = 1;
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0 && isUtf8(bytes.subarray(start, end)); end = bytes.indexOf(10, start)) {
    line++;
    start = end + 1;
  }
  const text = bytes.subarray(start, start + 2000).toString('utf8');
  const column = text.indexOf('\ufffd') + 1;
  return entryProblem(
    'entry/unreadable',
    { file: path, line, column: Math.max(column, 1), field: '' },
    {
      message: "The file isn't UTF-8 text.",
      found: (text.split('\n')[0] ?? '').slice(0, 200),
      expected: 'UTF-8, which every editor of today can save',
      action: 'Save it again as UTF-8, and look at the accented letters and signs in it.',
    },
  );
}
