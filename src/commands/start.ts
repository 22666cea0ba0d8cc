import { watch } from 'node:fs';
import { join, resolve } from 'node:path';
import { PortTaken, serve } from '#publish/serve.ts';
import { commandLine } from './arguments.ts';
import { type BuildOptions, baseOf, buildSite } from './build-site.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { countsOf, countsText, problemText } from './problem-list.ts';

/** Editors write a file in several steps: a build waits until they are done. */
const QUIET_MS = 60;

/** Checks, builds, serves on the loopback address, and builds again as entries change. Ends when it is interrupted. */
export async function start(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, {
    port: { type: 'string' },
    out: { type: 'string' },
    base: { type: 'string' },
    cache: { type: 'string' },
  });
  const cache = values.cache === undefined ? undefined : resolve(io.cwd, values.cache);
  const out = resolve(io.cwd, values.out ?? join(import.meta.dirname, '..', '..', 'dist'));
  const options: BuildOptions = { ...shared, out, base: baseOf(values.base), cache };
  await buildAndTell(options, io);
  const serving = await serveSite(out, options.base, values.port);
  io.err(`\n  ${serving.address}\n\nOpen this address in a browser on this computer. Ctrl-C stops it.\n`);
  const rebuild = oneAtATime(async () => {
    await buildAndTell(options, io).catch((error: unknown) => io.err(`${String(error)}\nThe last good site stays.\n`));
    serving.changed();
  });
  const watcher = watch(shared.collection, { recursive: true }, rebuild);
  await interrupted();
  watcher.close();
  await serving.close();
  return DONE;
}

async function buildAndTell(options: BuildOptions, io: Io): Promise<void> {
  const { catalogue } = await buildSite(options, io);
  const errors = catalogue.problems.filter((problem) => problem.severity === 'error');
  for (const problem of errors) io.err(`${problemText(problem)}\n`);
  io.err(countsText(countsOf(catalogue.problems), catalogue.accepted));
}

async function serveSite(root: string, base: string, port: string | undefined) {
  const number = port === undefined ? undefined : Number(port);
  if (number !== undefined && !(Number.isInteger(number) && number > 0 && number < 65_536)) {
    throw new UsageError(`--port takes a number from 1 to 65535, not "${port}".`);
  }
  try {
    return await serve({ root, base, live: true, ...(number === undefined ? {} : { port: number }) });
  } catch (error) {
    if (error instanceof PortTaken) throw new UsageError(error.message);
    throw error;
  }
}

/** Runs the work after changes have gone quiet, never twice at once; a change meanwhile makes it run once more. */
function oneAtATime(work: () => Promise<void>): () => void {
  let timer: NodeJS.Timeout | undefined;
  let running = false;
  let again = false;
  const run = async () => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    do {
      again = false;
      await work();
    } while (again);
    running = false;
  };
  return () => {
    clearTimeout(timer);
    timer = setTimeout(run, QUIET_MS);
  };
}

const interrupted = () =>
  new Promise<void>((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
