/** Draws the label photographs of the demo collection. Run by hand, from the project's root:
 *
 *      node tests/demo/photographs.ts [REEL …]
 *
 * Each is drawn as SVG in a browser (the one that the browser tests use), in
 * faces under open licences, and then given grain, a colour profile and the metadata that a telephone writes: maker and
 * model (invented), date, orientation, a position (invented, in the open sea), and on some an XMP and an IPTC block, all
 * with a canary text, so that tests can prove that nothing of it is published. One is 4,000 pixels wide, to zoom into.
 *
 * Where a line of writing is one that an entry reads, its place is measured in the drawn page; `photos:` and `readings:`
 * for each entry are printed on standard output, to be looked at and put into the entry by hand. Another machine's
 * browser may draw other bytes; the regions must then be put in again with them. */
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openBrowser } from '../site/browser.ts';
import { develop } from './camera.ts';
import { CADERNO } from './labels/caderno.ts';
import { FAROL_AND_OTHERS } from './labels/farol-and-others.ts';
import { FEIRA } from './labels/feira.ts';
import { ILHA } from './labels/ilha.ts';
import { LANTERNA } from './labels/lanterna.ts';
import { type Found, settleWriting } from './measure.ts';
import { pageOf, type Shot } from './shot.ts';

const REELS = join(import.meta.dirname, '../../collection/reels');
const SHOTS: readonly Shot[] = [...CADERNO, ...FEIRA, ...ILHA, ...LANTERNA, ...FAROL_AND_OTHERS];

const asked = new Set(process.argv.slice(2));
const wanted = SHOTS.filter((shot) => asked.size === 0 || asked.has(shot.reel));

const quoted = (text: string) => `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`;

function entryLines(shots: readonly (readonly [Shot, readonly Found[]])[]): string {
  const photos = shots.map(
    ([shot]) =>
      `  - { file: ${shot.file}, shows: ${shot.shows}, on: "${shot.taken.slice(0, 10)}"${shot.note === undefined ? '' : `, note: ${quoted(shot.note)}`} }`,
  );
  const readings = shots.flatMap(([shot, found]) =>
    found.map(
      ({ of, written, sure, region }) =>
        `  - { of: ${/\[/.test(of) ? quoted(of) : of}, photo: ${shot.file}, region: ${quoted(region)}, written: ${quoted(written)}, sure: ${sure} }`,
    ),
  );
  return ['photos:', ...photos, ...(readings.length === 0 ? [] : ['readings:', ...readings])].join('\n');
}

/** Each in a browser of its own: one that has drawn a dozen of these runs out of memory. */
async function photograph(shot: Shot): Promise<{ jpeg: Buffer; found: Found[] }> {
  const browser = await openBrowser();
  try {
    const page = await browser.newPage({
      viewport: { width: shot.width, height: shot.height },
      deviceScaleFactor: shot.scale ?? 1,
    });
    await page.setContent(pageOf(shot));
    const found = await settleWriting(page, shot);
    const jpeg = await develop(
      await page.screenshot({ type: 'png', timeout: 300_000 }),
      shot,
      1000 + SHOTS.indexOf(shot),
    );
    return { jpeg, found };
  } finally {
    await browser.close();
  }
}

const drawn: (readonly [Shot, readonly Found[]])[] = [];
for (const [i, shot] of wanted.entries()) {
  const { jpeg, found } = await photograph(shot);
  const folder = join(REELS, shot.reel);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${shot.file}.new`), jpeg);
  renameSync(join(folder, `${shot.file}.new`), join(folder, shot.file));
  drawn.push([shot, found]);
  process.stderr.write(`${i + 1}/${wanted.length} ${shot.reel}/${shot.file}, ${Math.round(jpeg.length / 1024)} kB\n`);
}
for (const reel of new Set(wanted.map((shot) => shot.reel))) {
  process.stdout.write(`# ${reel}\n${entryLines(drawn.filter(([shot]) => shot.reel === reel))}\n`);
}
