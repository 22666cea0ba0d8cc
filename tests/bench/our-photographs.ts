/** What a build does with photographs, by itself: measured, made or taken from the cache, and put into the site.
 * Prints how much of it was work.
 *
 *     node tests/bench/our-photographs.ts PHOTOGRAPHS OUT CACHE REGIONS_AS_JSON */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { measurePhotographs, publishPhotographs } from '#publish/photographs.ts';

const [from = '', into = '', cache = '', regions = '[]'] = process.argv.slice(2);
const files = readdirSync(from)
  .sort()
  .map((path) => ({ path, file: join(from, path) }));
await measurePhotographs(files, { cache });
const wanted = files.map((file) => ({ ...file, regions: JSON.parse(regions) }));
const { work, faults } = await publishPhotographs(wanted, into, { cache });
if (faults.size > 0) throw new Error(`fault: ${JSON.stringify([...faults])}`);
process.stdout.write(JSON.stringify(work));
