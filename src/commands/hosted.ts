import { realpath } from 'node:fs/promises';
import { dirname, sep } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import { HostedUnread, rememberHosted, takeAwayHosted } from '#publish/hosted-files.ts';
import { dayOf } from './arguments.ts';
import { type Io, UsageError } from './io.ts';

/** Takes away the hosted files of shares that have ended or are gone, and says of each what became of it. A share has
 * ended only when it has by the clock as well: a build for another day takes nothing away. */
export async function takeAwayEnded(
  { entries, today }: Pick<Catalogue, 'entries' | 'today'>,
  collection: string,
  io: Io,
): Promise<void> {
  const days = [today, dayOf(io.now)].sort();
  const over = (id: string) => {
    const share = entries.shares.find((one) => one.id === id);
    if (share === undefined)
      return entries.unusable.has(`shares/${id}`) ? undefined : `there is no share ${id} any more`;
    const last = valueOf(share.until)?.latest ?? undefined;
    return last !== undefined && last < (days[0] ?? today) ? `its share ended on ${share.until?.written}` : undefined;
  };
  try {
    for (const { file, why, gone } of await takeAwayHosted(collection, over)) {
      io.err(
        gone
          ? `${file}: taken away, since ${why}. If a copy of it stands on a host, take that away too.\n`
          : `${file}: not taken away, though ${why}: it isn’t the file that was sealed there.\n`,
      );
    }
  } catch (error) {
    if (!isToldAs(error)) throw error;
    io.err(`Hosted dossiers were not looked at: ${messageOf(error)} The site itself is whole.\n`);
  }
}

/** Remembers a file that is to be hosted, and says so. The file is sealed by now: what goes wrong here is only said. */
export async function rememberAsHosted(
  { collection, share, file, until }: { collection: string; share: string; file: string; until: string | undefined },
  bytes: string,
  io: Io,
): Promise<void> {
  try {
    await rememberHosted(collection, share, file, bytes);
    const when = until === undefined ? 'without its share' : `after ${until}, or without its share,`;
    io.err(`Remembered as hosted: the first build ${when} takes it away from there.\n`);
  } catch (error) {
    if (!isToldAs(error)) throw error;
    io.err(`It couldn’t be remembered as hosted (${messageOf(error)}): take it away yourself when its time is over.\n`);
  }
}

/** What the disk says, or the list: no fault of the program. */
const isToldAs = (error: unknown) => error instanceof HostedUnread || (error instanceof Error && 'code' in error);

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Throws UsageError for a place inside a site that a build made: the next one would replace it, sealed file and all. */
export async function refuseInsideSite(out: string): Promise<void> {
  const folder = await realpath(dirname(out)).catch(() => dirname(out));
  if (folder.split(sep).some((name) => /^\.tailout-.*-[0-9a-f]{12}$/.test(name)))
    throw new UsageError(`${out} is inside a site that the next build replaces. Choose a folder of its own for it.`);
}
