import { join } from 'node:path';
import { HeldElsewhere } from '#publish/build-lock.ts';
import { NotOurs, replaceWhole } from '#publish/finished-folder.ts';
import { sealSiteFiles } from '#publish/sealed-site.ts';
import { inWorkroom } from '#publish/workroom.ts';
import type { SharedOptions } from './arguments.ts';
import { baseOf, buildSite } from './build-site.ts';
import { DONE, type Io, UsageError } from './io.ts';
import { many } from './problem-list.ts';

interface SealSiteOptions extends SharedOptions {
  readonly out: string;
  readonly base: string | undefined;
  readonly cache: string | undefined;
}

/** Builds the owner's site in a folder that is gone afterwards, and writes it sealed. */
export async function sealSite(options: SealSiteOptions, words: () => Promise<string>, io: Io): Promise<number> {
  const base = baseOf(pathOf(options.base));
  const passphrase = await words();
  return await inWorkroom(async (folder) => {
    const plain = join(folder, 'plain');
    await buildSite({ ...options, base, out: plain }, io);
    const files = await replaceWhole(options.out, (into) => sealSiteFiles(plain, into, base, passphrase), {
      waiting: (sentence) => io.err(`${sentence}\n`),
    }).catch((error: unknown) => {
      throw error instanceof NotOurs || error instanceof HeldElsewhere ? new UsageError(error.message) : error;
    });
    io.err(
      `${options.out}: ${many(files, 'file')}, each sealed. To lead someone to a page, write its path after #, as in ${base}#/reels/an-id/\n`,
    );
    return DONE;
  });
}

/** The path of an address, or what was given when it is one. */
function pathOf(base: string | undefined): string | undefined {
  if (base === undefined || !/^https?:/.test(base)) return base;
  return new URL(base).pathname.replace(/\/?$/, '/');
}
