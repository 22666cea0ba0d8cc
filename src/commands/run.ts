import { resolve } from 'node:path';
import { diskTrouble } from '#publish/disk-trouble.ts';
import { FAULT, type Io, USED_WRONGLY, UsageError } from './io.ts';
import { Terminal } from './terminal.ts';

type Command = (args: readonly string[], io: Io) => Promise<number>;

/** Each command is loaded when it is asked for, so that `check` never waits for the site's builder. */
const COMMANDS: Record<string, () => Promise<Command>> = {
  build: async () => (await import('./build.ts')).build,
  check: async () => (await import('./check.ts')).check,
  export: async () => (await import('./export.ts')).exportAs,
  desk: async () => (await import('./desk.ts')).desk,
  find: async () => (await import('./find.ts')).find,
  import: async () => (await import('./import.ts')).importSheet,
  migrate: async () => (await import('./migrate.ts')).migrate,
  new: async () => (await import('./new.ts')).newEntry,
  reckon: async () => (await import('./reckon.ts')).reckon,
  seal: async () => (await import('./seal.ts')).seal,
  start: async () => (await import('./start.ts')).start,
};

/** Runs one command for this process and gives its exit code; a fault prints a stack and where to report it. */
export async function runCommand(name: string, args: readonly string[]): Promise<number> {
  const terminal = new Terminal();
  const io = processIo(terminal);
  const load = COMMANDS[name];
  if (load === undefined) {
    io.err(`There is no command "${name}". There are: ${Object.keys(COMMANDS).join(', ')}.\n`);
    return USED_WRONGLY;
  }
  try {
    return await (await load())(args, io);
  } catch (error) {
    if (error instanceof UsageError) {
      io.err(`${error.message}\n`);
      return USED_WRONGLY;
    }
    const trouble = diskTrouble(error);
    if (trouble !== undefined) {
      io.err(`${trouble}\n`);
      return USED_WRONGLY;
    }
    io.err(`A fault of the program's own. Your entries are as they were.\n${stackOf(error)}\n`);
    io.err('Please report it with the lines above; DEVELOPERS.md says where.\n');
    return FAULT;
  } finally {
    terminal.close();
  }
}

function processIo(terminal: Terminal): Io {
  return {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    cwd: resolve(process.env['INIT_CWD'] ?? process.cwd()),
    now: new Date(),
    env: process.env,
    terminal: process.stderr.isTTY === true,
    piped: process.stdout.isTTY !== true,
    ...(process.stdout.isTTY === true ? { width: process.stdout.columns || 100 } : {}),
    ...(process.stdin.isTTY === true && process.stderr.isTTY === true ? { ask: terminal.ask } : {}),
  };
}

const stackOf = (error: unknown) => (error instanceof Error ? (error.stack ?? error.message) : String(error));
