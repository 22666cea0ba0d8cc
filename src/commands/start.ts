import { watch } from 'node:fs';
import { join, resolve } from 'node:path';
import { PortTaken, type ServeOptions, serve } from '#publish/serve.ts';
import { ServedSite } from '#publish/served-site.ts';
import { EntryMemory } from '#read/entry-memory.ts';
import { commandLine } from './arguments.ts';
import { type BuildOptions, baseOf, buildSite } from './build-site.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { KeepCurrent } from './keep-current.ts';
import { countsOf, countsText, problemText } from './problem-list.ts';

/** Checks, builds, serves on the loopback address, and shows what changes. Ends when it is interrupted. */
export async function start(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, {
    port: { type: 'string' },
    out: { type: 'string' },
    base: { type: 'string' },
    cache: { type: 'string' },
  });
  const cache = values.cache === undefined ? undefined : resolve(io.cwd, values.cache);
  const out = resolve(io.cwd, values.out ?? join(import.meta.dirname, '..', '..', 'dist'));
  const served = new ServedSite();
  const options: BuildOptions = {
    ...shared,
    out,
    base: baseOf(values.base),
    cache,
    memory: new EntryMemory(),
    live: served.pages,
  };
  await buildAndTell(options, io);
  const serving = await serveSite({ root: out, base: options.base, live: true, fresh: served }, values.port);
  io.err(`\n  ${serving.address}\n\nOpen this address in a browser on this computer. Ctrl-C stops it.\n`);
  const current = new KeepCurrent(options, io, served, serving.changed);
  const watcher = watch(shared.collection, { recursive: true }, () => current.edited());
  await interrupted();
  watcher.close();
  await serving.close();
  await current.close();
  await served.close();
  return DONE;
}

async function buildAndTell(options: BuildOptions, io: Io): Promise<void> {
  const { catalogue } = await buildSite(options, io);
  const errors = catalogue.problems.filter((problem) => problem.severity === 'error');
  for (const problem of errors) io.err(`${problemText(problem, io.width)}\n`);
  io.err(countsText(countsOf(catalogue.problems), catalogue.accepted));
}

async function serveSite(options: ServeOptions, port: string | undefined) {
  const number = port === undefined ? undefined : Number(port);
  if (number !== undefined && !(Number.isInteger(number) && number > 0 && number < 65_536)) {
    throw new UsageError(`--port takes a number from 1 to 65535, not "${port}".`);
  }
  try {
    return await serve({ ...options, ...(number === undefined ? {} : { port: number }) });
  } catch (error) {
    if (error instanceof PortTaken) throw new UsageError(error.message);
    throw error;
  }
}

const interrupted = () =>
  new Promise<void>((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
