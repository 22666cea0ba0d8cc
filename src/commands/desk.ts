import { join } from 'node:path';
import { buildCatalogue } from '#catalogue';
import { measurePhotographs } from '#publish/photographs.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { makePage } from '../desk/page-files.ts';
import { DeskRefusal } from '../desk/refusal.ts';
import { serveDesk } from '../desk/serve-desk.ts';
import { commandLine } from './arguments.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { loadCatalogue } from './load.ts';
import { readPlaceLogs } from './place-logs.ts';

/** Serves the desk, a page to enter a collection on, until it is interrupted. */
export async function desk(args: readonly string[], io: Io): Promise<number> {
  const { shared, values } = commandLine(args, io, { port: { type: 'string' }, lan: { type: 'boolean' } });
  const { collection, today } = shared;
  const { cache } = await loadCatalogue(shared, io);
  const check = async (files: CollectionFiles) => {
    const paths = files.images.map((path) => ({ path, file: join(collection, path) }));
    const photographs = await measurePhotographs(paths, { cache });
    const { entries, problems } = validateAll(files, photographs);
    const logs = await readPlaceLogs(collection, entries.places, files.logs);
    const all = [...files.problems, ...problems, ...logs.problems];
    return buildCatalogue({ entries, problems: all, photographs, climate: logs.climate, today });
  };
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65_536))
    throw new UsageError(`--port takes a number from 1 to 65535, not "${values.port}".`);
  const serving = await serveDesk({
    root: collection,
    check,
    page: await makePage(),
    lan: values.lan === true,
    ...(port === undefined ? {} : { port }),
  }).catch((error: unknown) => {
    throw error instanceof DeskRefusal ? new UsageError(error.message) : error;
  });
  io.err(`\n  ${serving.address}\n\nOpen this address in a browser on this computer. Ctrl-C stops it.\n`);
  if (serving.room !== undefined) {
    io.err(`\nFor one phone in the same room: ${serving.room.addresses.join(' or ')}, code ${serving.room.code}.\n`);
    io.err('The code works once, for ten minutes. What goes over the room’s network is not encrypted: use your own.\n');
  }
  await new Promise<void>((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
  await serving.close();
  return DONE;
}
