import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { replaceWhole } from '#publish/finished-folder.ts';

/** Started as a program of its own, to be killed: makes one site after another, each saying its own number in every
 * file, and prints the number of each that is done. */
const [out = '', first = '0'] = process.argv.slice(2);
for (let run = Number(first); ; run += 1) {
  await replaceWhole(out, async (into) => {
    for (let at = 0; at < 40; at += 1) {
      await mkdir(join(into, `page-${at}`));
      await writeFile(join(into, `page-${at}`, 'index.html'), `${run}`);
    }
  });
  process.stdout.write(`${run}\n`);
}
