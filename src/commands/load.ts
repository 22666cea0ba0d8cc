import { join } from 'node:path';
import { buildCatalogue } from '#catalogue';
import type { Catalogue, PhotographFact } from '#model/catalogue.ts';
import { type CollectionFiles, NoCollection, readCollection } from '#read/collection.ts';
import type { EntryMemory } from '#read/entry-memory.ts';
import { type Validated, validateAll } from '#validate/entries.ts';
import type { SharedOptions } from './arguments.ts';
import { type Io, UsageError } from './io.ts';
import { readPlaceLogs } from './place-logs.ts';

export interface Loaded {
  readonly catalogue: Catalogue;
  /** Absolute: where what was made of photographs is kept between builds. */
  readonly cache: string;
}

const CACHE = join(import.meta.dirname, '..', '..', '.cache');

/** Reads a collection, measures its photographs, reads its logs, and builds the catalogue of it.
 *
 * @param memory  what was read the last time, so that only what changed is parsed.
 * Throws UsageError when there is no such folder. */
export async function loadCatalogue(
  { collection, today }: Pick<SharedOptions, 'collection' | 'today'>,
  io: Pick<Io, 'err' | 'terminal'>,
  cache: string = CACHE,
  memory?: EntryMemory,
): Promise<Loaded> {
  const files = filesOf(collection, memory);
  const photographs = await measure(files.images, collection, cache, io);
  const validated = validateAll(files, photographs);
  const { climate, problems } = await readPlaceLogs(collection, validated.entries.places, files.logs);
  const catalogue = buildCatalogue({
    entries: validated.entries,
    problems: [...files.problems, ...validated.problems, ...problems],
    photographs,
    climate,
    today,
  });
  return { catalogue, cache };
}

/** What opens photographs is loaded where there is one to open. */
async function measure(
  images: readonly string[],
  collection: string,
  cache: string,
  io: Pick<Io, 'err' | 'terminal'>,
): Promise<ReadonlyMap<string, PhotographFact>> {
  if (images.length === 0) return new Map();
  const { measurePhotographs } = await import('#publish/photographs.ts');
  const files = images.map((path) => ({ path, file: join(collection, path) }));
  return await measurePhotographs(files, { cache, progress: progressOf('photographs opened', io) });
}

/** Reads a collection and its entries, and nothing beside them: for what asks neither photographs nor logs.
 * Throws UsageError when there is no such folder. */
export const loadEntries = (collection: string): Validated => validateAll(filesOf(collection));

function filesOf(collection: string, memory?: EntryMemory): CollectionFiles {
  try {
    return readCollection(collection, memory);
  } catch (error) {
    if (error instanceof NoCollection)
      throw new UsageError(
        `${error.message} --collection names it; "npm run new -- reel ID --collection DIR" makes one with a first reel in it.`,
      );
    throw error;
  }
}

/** How far a long piece of work has come, on one line that moves; silent where the output is no terminal. */
export function progressOf(
  what: string,
  io: Pick<Io, 'err' | 'terminal'>,
): ((done: number, of: number) => void) | undefined {
  if (!io.terminal) return undefined;
  return (done, of) => io.err(`\r${done} of ${of} ${what}${done === of ? '\n' : ''}`);
}
