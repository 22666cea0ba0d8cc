/** Reads a collection and writes its site, then its text index by itself, and says how long each took.
 *
 *     node tests/bench/publish-once.ts COLLECTION OUT CACHE TODAY */

import { loadCatalogue } from '../../src/commands/load.ts';
import { ownShares } from '../../src/commands/share-dossier.ts';
import { publishSite, writeTextIndex } from '../../src/publish/site.ts';

/** Seconds on the clock, and of this process on the processor. */
export interface PublishedOnce {
  readonly withoutIndexS: number;
  readonly withIndexS: number;
  readonly cpuWithoutIndexS: number;
}

const [collection = '', out = '', cache = '', today = ''] = process.argv.slice(2);
const { catalogue } = await loadCatalogue(
  { collection, today: today as never },
  { err: () => undefined, terminal: false },
  cache,
);
await publishSite(catalogue, { out, collection, cache, base: '/', shares: ownShares(catalogue), textIndex: false });
const [withoutIndexS, { user, system }] = [process.uptime(), process.cpuUsage()];
await writeTextIndex(catalogue, out);
const told: PublishedOnce = { withoutIndexS, withIndexS: process.uptime(), cpuWithoutIndexS: (user + system) / 1e6 };
process.stdout.write(JSON.stringify(told));
