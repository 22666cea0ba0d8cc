/** Time and memory as ratios in one run: a table on stderr, and a file or stdout as JSON.
 *
 *     npm run bench -- [--works collection,edit,images,find,climate] [--sizes 1000,10000] [--photographs 12]
 *                      [--numbers 10000] [--minutes 525600] [--out FILE] [--format json] [--folder DIR] */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { benchCollection, growth } from './build.ts';
import { benchClimate } from './climate.ts';
import { benchEdit } from './edit.ts';
import { benchFind } from './find.ts';
import { benchImages } from './images.ts';
import type { BenchRow } from './row.ts';
import { tableOf } from './table.ts';

const { values } = parseArgs({
  options: {
    works: { type: 'string', default: 'collection,edit,images,find,climate' },
    sizes: { type: 'string', default: '1000,10000' },
    photographs: { type: 'string', default: '12' },
    numbers: { type: 'string', default: '10000' },
    minutes: { type: 'string', default: '525600' },
    out: { type: 'string' },
    format: { type: 'string' },
    folder: { type: 'string' },
  },
});
const works = values.works.split(',');
const sizes = values.sizes.split(',').map(Number);
const own = values.folder === undefined;
const folder = own ? await mkdtemp(join(tmpdir(), 'tailout-bench-')) : resolve(values.folder ?? '');
const rows: BenchRow[] = [];
const add = (more: readonly BenchRow[]) => {
  rows.push(...more);
  process.stderr.write(`${tableOf(more)}\n`);
};

try {
  if (works.includes('collection')) {
    let before: readonly BenchRow[] | undefined;
    for (const size of sizes) {
      const now = await benchCollection(folder, size);
      add(now);
      if (before !== undefined) add(growth(before, now));
      before = now;
    }
  }
  // Seconds until the page of an edited entry is new, by how many reels there are.
  if (works.includes('edit')) for (const size of sizes) add(await benchEdit(folder, size, size <= 1000 ? 0.3 : 1));
  if (works.includes('images')) add(await benchImages(join(folder, 'images'), Number(values.photographs)));
  if (works.includes('find')) add(await benchFind(join(folder, 'find'), Number(values.numbers)));
  if (works.includes('climate')) add(await benchClimate(join(folder, 'climate'), Number(values.minutes)));
} finally {
  if (own) await rm(folder, { recursive: true, force: true });
}
const json = `${JSON.stringify({ rows }, null, 2)}\n`;
if (values.out !== undefined) await writeFile(resolve(values.out), json);
if (values.format === 'json') process.stdout.write(json);
else process.stderr.write(`\n${tableOf(rows)}\n`);
