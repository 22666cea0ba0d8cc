import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../..');
const DOOR = join(ROOT, 'src', 'start.mjs');

export interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
}

export interface Surroundings {
  readonly cwd: string;
  /** Where the program may keep its own private folders for a while. */
  readonly temporary?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** A program, and its words, that starts the command in its turn. */
  readonly by?: readonly string[];
}

/** Starts a command as its user does: as a program of its own. */
export function start(args: readonly string[], { cwd, temporary, env = {}, by = [] }: Surroundings): Running {
  const [program = process.execPath, ...words] = [...by, process.execPath, DOOR, ...args];
  const child = spawn(program, words, {
    cwd,
    env: { ...process.env, INIT_CWD: cwd, ...(temporary === undefined ? {} : { TMPDIR: temporary }), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const { promise, resolve: end, reject } = Promise.withResolvers<Ended>();
  let [out, err] = ['', ''];
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString();
  });
  child.stderr.on('data', (chunk: Buffer) => {
    err += chunk.toString();
  });
  child.on('error', reject);
  child.on('close', (exit) => end({ exit, out, err }));
  return { child, ended: promise };
}

export const run = (args: readonly string[], around: Surroundings): Promise<Ended> => start(args, around).ended;

/** Every file below a folder with a checksum of its content, as one text: the same for the same files only. */
export async function contentOf(folder: string): Promise<string> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = found.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const sums = await Promise.all(
    files.sort().map(async (file) => {
      const sum = createHash('sha256')
        .update(await readFile(file))
        .digest('hex');
      return `${file.slice(folder.length)} ${sum}`;
    }),
  );
  return sums.join('\n');
}
