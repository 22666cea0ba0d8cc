import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, statfs, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { diskTrouble } from '#publish/disk-trouble.ts';
import { replaceWhole } from '#publish/finished-folder.ts';
import { writeSearch } from '#publish/search.ts';
import { writeCollection } from '../given/written-collection.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { contentOf, run } from './command.ts';

/** A program of its own, since a disk that it mounts is seen by itself only: runs each command on a disk with too little
 * room, a real one (`mounted`) or a make-believe one, and prints what came of it as JSON. */
const mounted = process.argv[2] === 'mounted';
const folder = await mkdtemp(join(tmpdir(), 'full-'));
const disk = join(folder, 'disk');
await mkdir(disk);
if (mounted) execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=8m', 'tmpfs', disk]);

const at = (...names: string[]) => join(disk, ...names);
const shared = ['--collection', at('tapes'), '--today', '2026-04-01', '--cache', join(folder, 'cache')];
const told: Record<string, unknown> = { mounted };

await writeCollection(
  at('tapes'),
  {
    'reels/low-water': 'title: Low Water\nphotos: [front.jpg]',
    'shares/for-one': 'title: Shown to one\nfor: friend\nreels: [low-water]\nopened-by: link',
    'reels/low-water/front.jpg': '',
  },
  () => cameraPhotograph(900, 700),
);
await mkdir(at('temporary'));
await replaceWhole(at('dist'), (into) => writeFile(join(into, 'index.html'), 'the last site'));
await writeFile(at('reels.csv'), 'the last export');
// With room for this, the picture cache is warm and only what is asked for can fail.
await run(['check', ...shared], { cwd: folder });

/** Leaves room for so much, or for so many files. */
async function leave(kilobytes: number, files: number): Promise<Record<string, string>> {
  await rm(at('filler'), { force: true });
  if (!mounted) {
    const preload = pathToFileURL(join(import.meta.dirname, 'no-room.ts')).href;
    return { NODE_OPTIONS: `--import=${preload}`, NO_ROOM_BELOW: disk, NO_ROOM_AFTER: String(files) };
  }
  const { bavail, bsize } = await statfs(disk);
  await writeFile(at('filler'), Buffer.alloc(Math.max(0, bavail * bsize - kilobytes * 1024)));
  return {};
}

async function tell(name: string, args: readonly string[], kilobytes: number, files: number): Promise<void> {
  const entries = await contentOf(at('tapes'));
  const env = await leave(kilobytes, files);
  const { exit, err } = await run(args, { cwd: folder, temporary: at('temporary'), env });
  told[name] = { exit, err, entriesStay: (await contentOf(at('tapes'))) === entries };
}

await tell('build', ['build', ...shared, '--out', at('dist')], 300, 12);
await tell('bag', ['export', ...shared, '--as', 'bag', '--out', at('bag')], 40, 5);
await tell('csv', ['export', ...shared, '--as', 'csv', '--out', at('reels.csv')], 0, 0);
await tell('seal', ['seal', 'for-one', ...shared, '--out', at('one.html')], 0, 0);
await tell('new', ['new', '--collection', at('tapes'), 'reel', 'high-water'], 0, 0);
if (mounted) {
  await leave(40, 0);
  await mkdir(at('indexed'));
  const record = { url: '/a/', content: 'low water', meta: { title: 'a' }, filters: {} };
  told['index'] = await writeSearch([record], 'en', at('indexed')).then(() => 'written', diskTrouble);
  await rm(at('indexed'), { recursive: true });
}
told['left'] = (await readdir(disk)).filter((name) => name !== 'filler').sort();
told['site'] = await readFile(at('dist', 'index.html'), 'utf8');
told['export'] = await readFile(at('reels.csv'), 'utf8');
told['temporary'] = await readdir(at('temporary'));
if (mounted) execFileSync('umount', ['-l', disk]);
await rm(folder, { recursive: true, force: true });
process.stdout.write(JSON.stringify(told));
