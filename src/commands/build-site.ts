import { HeldElsewhere } from '#publish/build-lock.ts';
import { NotOurs } from '#publish/finished-folder.ts';
import { baseAddress } from '#publish/iiif.ts';
import type { LivePages } from '#publish/live-pages.ts';
import { publishSite } from '#publish/site.ts';
import { dropUnused } from '#publish/unused-pictures.ts';
import type { EntryMemory } from '#read/entry-memory.ts';
import type { SharedOptions } from './arguments.ts';
import { takeAwayEnded } from './hosted.ts';
import { type Io, UsageError } from './io.ts';
import { type Loaded, loadCatalogue } from './load.ts';
import { many, plain } from './problem-list.ts';
import { ownShares } from './share-dossier.ts';

export interface BuildOptions extends Pick<SharedOptions, 'collection' | 'today'> {
  /** Absolute. */
  readonly out: string;
  /** `/` or `/sub/`. */
  readonly base: string;
  /** `https://…/sub/`, where it is known. */
  readonly address?: string | undefined;
  readonly cache?: string | undefined;
  /** Of a program that stays: what it read, and the pages that it can make one by one. */
  readonly memory?: EntryMemory;
  readonly live?: LivePages;
}

/** Loads a collection and writes its site, whole or not at all; says on the way what it does. */
export async function buildSite(options: BuildOptions, io: Io): Promise<Loaded> {
  const started = performance.now();
  const loaded = await loadCatalogue(options, io, options.cache, options.memory);
  const { catalogue, cache } = loaded;
  const progress = io.terminal ? (doing: string) => io.err(`\r\u001b[K${doing}`) : undefined;
  try {
    const { faults } = await publishSite(catalogue, {
      ...options,
      cache,
      shares: ownShares(catalogue),
      ...(progress === undefined ? {} : { progress }),
      waiting: (sentence) => io.err(`${sentence}\n`),
    });
    // These opened when the build began.
    for (const [path, { problem }] of faults)
      io.err(`${plain(`${path} isn’t on the pages: it changed while the site was built. ${problem}`)} Build again.\n`);
    // A cache that can't be tidied is still of use.
    await dropUnused(cache).catch(() => 0);
  } catch (error) {
    if (error instanceof NotOurs || error instanceof HeldElsewhere) throw new UsageError(error.message);
    throw error;
  }
  await takeAwayEnded(catalogue, options.collection, io);
  const seconds = (performance.now() - started) / 1000;
  const clear = io.terminal ? '\r\u001b[K' : '';
  io.err(`${clear}${many(catalogue.reels.length, 'reel')}, built in ${seconds.toFixed(1)} s.\n`);
  return loaded;
}

/** Where the site is to stand: the part of its address, and the whole one where that is given. */
export function standingAt(given: string | undefined): Pick<BuildOptions, 'base' | 'address'> {
  const address = given === undefined ? undefined : baseAddress(given);
  return address === undefined ? { base: baseOf(given) } : { base: baseOf(new URL(address).pathname), address };
}

/** The part of an address under which the site stands, with both slashes. Throws UsageError for anything else. */
export function baseOf(given: string | undefined): string {
  if (given === undefined) return '/';
  if (/^\/(?:[\w.~-]+\/)*$/.test(given)) return given;
  throw new UsageError(`--base takes a path such as /tapes/, with a slash at both ends, not "${given}".`);
}
