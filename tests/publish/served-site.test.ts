import { globSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { ServedSite } from '#publish/served-site.ts';
import { publishSite } from '#publish/site.ts';
import { EntryMemory } from '#read/entry-memory.ts';
import { loadCatalogue } from '../../src/commands/load.ts';
import { chance } from '../bench/chance.ts';
import { generateCollection } from '../bench/generate.ts';

const SILENT = { err: () => undefined, terminal: false };
const ROUNDS = 3;
const EDITS_A_ROUND = 4;

let folder = '';
const served = new ServedSite();

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tailout-test-served-'));
  await generateCollection(join(folder, 'collection'), 14);
});
afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true, force: true });
});

const whole = (memory?: EntryMemory) =>
  loadCatalogue(
    { collection: join(folder, 'collection'), today: '2026-04-01' as never },
    SILENT,
    join(folder, 'cache'),
    memory,
  );

async function build(out: string, memory?: EntryMemory, live?: ServedSite['pages']): Promise<void> {
  const { catalogue } = await whole(memory);
  await publishSite(catalogue, {
    out,
    collection: join(folder, 'collection'),
    // Of its own, so that no page is taken from another build.
    cache: `${out}-cache`,
    base: '/',
    ...(live === undefined ? {} : { live }),
  });
}

const pagesOf = (out: string) =>
  globSync(['**/index.html', '*.ics', '*.json'], { cwd: out }).map((path) => `/${path.replace(/index\.html$/, '')}`);

test('after any edits every page that is served is the page of a build from nothing, byte for byte', async () => {
  const memory = new EntryMemory();
  await build(join(folder, 'first'), memory, served.pages);
  expect(served.pages.ready, 'the builder still has the part that the served pages rest on').toBe(true);
  const next = chance(41);
  let before = pagesOf(join(folder, 'first'));
  for (let round = 0; round < ROUNDS; round += 1) {
    for (let edit = 0; edit < EDITS_A_ROUND; edit += 1) await editOne(next);
    const { catalogue, cache } = await whole(memory);
    const options = { base: '/', collection: join(folder, 'collection'), cache };
    const cold = join(folder, `cold-${round}`);
    await build(cold);
    // Last: a build in the same program lets its own site go at its end.
    await served.show(catalogue, options);
    const pages = pagesOf(cold);
    for (const page of pages) {
      const own = await served.page(page);
      expect(served.isPage(page), page).toBe(true);
      // Only a difference is worth printing.
      const wanted = await readFile(join(cold, page.replace(/\/$/, '/index.html')), 'utf8');
      if (own !== wanted) expect(own, page).toBe(wanted);
    }
    for (const gone of before.filter((page) => !pages.includes(page))) {
      expect(await served.page(gone), gone).toBeUndefined();
    }
    before = pages;
  }
  expect(await served.page('/reels/nothing-of-the-kind/')).toBeUndefined();
}, 300_000);

test('a page that nobody has is a quiet nothing: not a word of it on the terminal', async () => {
  const said: unknown[] = [];
  const taps = [process.stderr, process.stdout].map((stream) =>
    vi.spyOn(stream, 'write').mockImplementation((text) => said.push(text) > 0),
  );
  const consoles = (['log', 'info', 'warn', 'error'] as const).map((name) =>
    vi.spyOn(console, name).mockImplementation((...texts) => void said.push(texts)),
  );
  const gone = ['/reels/not-here/', '/editions/not-here/', '/notes/not-here/', '/lineage/not-here/', '/shelf/99/'];
  const answers = await Promise.all(gone.map((address) => served.page(address)));
  for (const tap of [...taps, ...consoles]) tap.mockRestore();
  expect(answers).toEqual(gone.map(() => undefined));
  expect(said).toEqual([]);
});

test('a text index that is ended early leaves the one before, and says why', async () => {
  const { catalogue } = await whole();
  await served.index(catalogue);
  const before = served.folders();
  await expect(served.index(catalogue, AbortSignal.abort(new Error('an edit came')))).rejects.toThrow('an edit came');
  expect(served.folders()).toEqual(before);
});

/** As owners edit: a title, a number, a date, a measure, the notes, an entry taken out, one copied, a broken line. */
async function editOne(next: () => number): Promise<void> {
  const collection = join(folder, 'collection');
  const files = globSync('{reels,editions,people,stocks,machines}/*.md', { cwd: collection }).sort();
  const file = join(collection, files[Math.floor(next() * files.length)] ?? '');
  const text = await readFile(file, 'utf8');
  const ways: readonly (() => Promise<void>)[] = [
    () => writeFile(file, text.replace(/^title: .*$/m, `title: Renamed ${Math.floor(next() * 1000)}`)),
    () =>
      writeFile(
        file,
        text.replaceAll(/QKX (\d+)/g, (_, figures: string) => `QKX ${Number(figures) + 1}`),
      ),
    () => writeFile(file, text.replaceAll(/19(\d\d)/g, '19$1~').replaceAll('~-', '-')),
    () => writeFile(file, text.replace(/outside-diameter: \d+/, 'outside-diameter: 190')),
    () => writeFile(file, `${text}\nSee set-00001-side-1 and QKX 100005.\n`),
    () => (file.includes('/reels/') ? rm(file) : Promise.resolve()),
    () => writeFile(file.replace(/\.md$/, `-${Math.floor(next() * 1000)}.md`), text),
    () => writeFile(file, text.replace(/^status: .*$/m, 'status: somewhere')),
    () => writeFile(file, text.replace(/^edition: .*$/m, 'edition: set-00000-lp')),
  ];
  await ways[Math.floor(next() * ways.length)]?.();
}
