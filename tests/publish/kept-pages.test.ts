import { globSync, readFileSync, statSync } from 'node:fs';
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PageNote } from '#publish/entry-pages.ts';
import { buildPages } from '#publish/integration.ts';
import { KeptPages, pageFile } from '#publish/kept-pages.ts';
import { publishSite, siteOf } from '#publish/site.ts';
import { loadCatalogue } from '../../src/commands/load.ts';
import { ownShares } from '../../src/commands/share-dossier.ts';
import { chance } from '../bench/chance.ts';
import { editAtRandom } from '../given/edit-at-random.ts';

const DEMO = resolve(import.meta.dirname, '../../collection');
const SILENT = { err: () => undefined, terminal: false };
/** Of edits and two builds each. TAILOUT_EDITS=50 npx vitest run --config tests/vitest.config.ts tests/publish/kept-pages.test.ts */
const ROUNDS = Number(process.env['TAILOUT_EDITS'] ?? 3);
const EDITS_A_ROUND = 4;

let folder = '';
const at = (name: string) => join(folder, name);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tailout-test-kept-'));
  await cp(DEMO, at('collection'), { recursive: true });
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

const load = async (today = '2026-04-01') =>
  (await loadCatalogue({ collection: at('collection'), today: today as never }, SILENT, at('cache'))).catalogue;

async function build(out: string, cache: string, today?: string): Promise<void> {
  const catalogue = await load(today);
  const shares = ownShares(catalogue);
  await publishSite(catalogue, { out, collection: at('collection'), cache, base: '/', shares, textIndex: false });
}

function expectSame(warm: string, cold: string, after: string): void {
  const files = (site: string) =>
    globSync('**/*', { cwd: site, withFileTypes: true })
      .filter((found) => found.isFile())
      .map((found) => join(found.parentPath, found.name).slice(site.length))
      .sort();
  expect(files(warm), after).toEqual(files(cold));
  for (const file of files(cold)) {
    const [own, wanted] = [readFileSync(join(warm, file)), readFileSync(join(cold, file))];
    // Only a difference is worth printing.
    if (!own.equals(wanted)) expect(String(own), `${file} after ${after}`).toBe(String(wanted));
  }
}

test('after any edits a build that takes pages from the last one is a build from nothing, byte for byte', async () => {
  const next = chance(Number(process.env['TAILOUT_EDITS'] ?? 7));
  await build(at('warm'), at('cache'));
  for (let round = 0; round < ROUNDS; round += 1) {
    const edits: string[] = [];
    for (let edit = 0; edit < EDITS_A_ROUND; edit += 1) edits.push(await editAtRandom(at('collection'), next));
    const today = round < ROUNDS / 2 ? '2026-04-01' : '2031-04-01';
    await build(at('warm'), at('cache'), today);
    await rm(at('cold-cache/pages'), { recursive: true, force: true });
    await build(at('cold'), at('cold-cache'), today);
    expectSame(at('warm'), at('cold'), edits.join(', '));
  }
}, 3_600_000);

class CountedPages extends KeptPages<PageNote> {
  readonly made: string[] = [];
  readonly taken: string[] = [];

  override keep(address: string, note: PageNote, html: Uint8Array): void {
    this.made.push(address);
    super.keep(address, note, html);
  }

  override take(address: string, into: string): boolean {
    const taken = super.take(address, into);
    if (taken) this.taken.push(address);
    return taken;
  }
}

async function pagesMade(): Promise<CountedPages> {
  const catalogue = await load();
  const kept = new CountedPages(at('counted'), 'this version', at('last'));
  const site = await siteOf(catalogue, new Map(), { base: '/', collection: at('collection') });
  await mkdir(at('made'), { recursive: true });
  await buildPages(site, at('made'), 'site', { kept });
  kept.replace();
  await rm(at('last'), { recursive: true, force: true });
  await rename(at('made'), at('last'));
  return kept;
}

test('a new title makes the pages that show it, and no others; an unseen change of the file none', async () => {
  const first = await pagesMade();
  expect(first.taken).toEqual([]);
  const [path = ''] = globSync('reels/*/index.md', { cwd: at('collection') }).sort();
  const file = join(at('collection'), path);
  const text = await readFile(file, 'utf8');

  await writeFile(file, text.replace(/^title: .*$/m, 'title: Another name altogether'));
  const second = await pagesMade();
  expect(second.made).toContain(`/${path.replace('/index.md', '')}`);
  expect(second.made.length).toBeLessThan(first.made.length / 2);
  expect(second.made.length + second.taken.length).toBe(first.made.length);

  const third = await pagesMade();
  expect(third.made).toEqual([]);
}, 300_000);

const ADDRESSES = ['/reels/a', '/reels/b'];
const htmlOf = (address: string) => Buffer.from(address.repeat(20));

/** Notes at `notes` of a site at `site`, which is made whole. */
async function keepTwo(): Promise<void> {
  const made = new KeptPages<string>(at('notes'), 'one', at('site'));
  for (const address of ADDRESSES) {
    await mkdir(join(at('site'), address), { recursive: true });
    await rm(pageFile(at('site'), address), { force: true });
    await writeFile(pageFile(at('site'), address), htmlOf(address));
    made.keep(address, `of ${address}`, htmlOf(address));
  }
  made.replace();
}

/** Which of the two pages are taken into a new site; those that are must be as they were made. */
async function found(version = 'one'): Promise<readonly string[]> {
  const kept = new KeptPages<string>(at('notes'), version, at('site'));
  await rm(at('next'), { recursive: true, force: true });
  const taken: string[] = [];
  for (const address of ADDRESSES) {
    await mkdir(join(at('next'), address), { recursive: true });
    const note = kept.noteOf(address);
    if (!kept.take(address, at('next'))) continue;
    expect([note, await readFile(pageFile(at('next'), address))]).toEqual([`of ${address}`, htmlOf(address)]);
    const inodes = [at('site'), at('next')].map((site) => statSync(pageFile(site, address)).ino);
    expect(inodes[0], 'one file in both sites').toBe(inodes[1]);
    taken.push(address);
  }
  expect(globSync('**/index.html', { cwd: at('next') }).sort()).toEqual(
    taken.map((one) => `${one.slice(1)}/index.html`),
  );
  return taken;
}

test('notes that are damaged anywhere, or of another version, are not believed', async () => {
  await keepTwo();
  const sound = await readFile(at('notes'));
  expect(await found()).toEqual(ADDRESSES);
  expect(await found('two')).toEqual([]);
  for (let byte = 0; byte < sound.length; byte += 1) {
    const damaged = Buffer.from(sound);
    damaged[byte] = (damaged[byte] ?? 0) ^ 1;
    await writeFile(at('notes'), damaged);
    expect(await found(), `byte ${byte}`).toEqual([]);
    await writeFile(at('notes'), sound.subarray(0, byte));
    expect(await found(), `cut to ${byte}`).toEqual([]);
  }
  await rm(at('notes'));
  expect(await found()).toEqual([]);
});

test('a page that was changed, cut short or removed since it was made is made again', async () => {
  const [first = '', second = ''] = ADDRESSES;
  const file = pageFile(at('site'), first);
  for (const changed of [Buffer.from('another'), htmlOf(first).subarray(1), Buffer.from('')]) {
    await keepTwo();
    await writeFile(file, changed);
    expect(await found()).toEqual([second]);
  }
  await rm(file);
  expect(await found()).toEqual([second]);
  await rm(at('site'), { recursive: true });
  expect(await found()).toEqual([]);
});

test('a build that fails leaves the notes of the last one; one that ends keeps only what it used', async () => {
  const [first = ''] = ADDRESSES;
  await keepTwo();
  const failed = new KeptPages<string>(at('notes'), 'one', at('site'));
  failed.keep('/reels/c', '', Buffer.from('c'));
  expect(await found()).toEqual(ADDRESSES);

  const next = new KeptPages<string>(at('notes'), 'one', at('site'));
  await mkdir(join(at('new'), first), { recursive: true });
  expect(next.take(first, at('new'))).toBe(true);
  next.replace();
  expect(await found()).toEqual([first]);
  expect((await readdir(folder)).filter((name) => name.includes('notes'))).toEqual(['notes']);
});

test('notes of a few sites are kept side by side, and those made longest ago go', async () => {
  const nameOf = (site: number) => String(site).padStart(32, '0');
  const noteOf = (site: number) => new KeptPages<string>(at(`sites/${nameOf(site)}`), 'one', at('site')).replace();
  for (let site = 0; site < 9; site += 1) {
    noteOf(site);
    await utimes(at(`sites/${nameOf(site)}`), site, site);
  }
  await writeFile(at('sites/something else'), '');
  noteOf(9);
  expect((await readdir(at('sites'))).sort()).toEqual([...[4, 5, 6, 7, 8, 9].map(nameOf), 'something else']);
});
