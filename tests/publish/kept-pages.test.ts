import { globSync, readFileSync } from 'node:fs';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PageNote } from '#publish/entry-pages.ts';
import { buildPages } from '#publish/integration.ts';
import { type PackedPage, PageStore, type StoredPage } from '#publish/page-store.ts';
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

class CountingStore extends PageStore<PageNote> {
  readonly made: string[] = [];
  readonly taken: string[] = [];

  override keep(address: string, page: StoredPage<PageNote>): void {
    this.made.push(address);
    super.keep(address, page);
  }

  override keepOn(address: string, page: PackedPage<PageNote>): void {
    this.taken.push(address);
    super.keepOn(address, page);
  }
}

async function pagesMade(): Promise<CountingStore> {
  const catalogue = await load();
  const store = new CountingStore(at('counted'), 'this version');
  const site = await siteOf(catalogue, new Map(), { base: '/', collection: at('collection') });
  await mkdir(at('made'), { recursive: true });
  await buildPages(site, at('made'), 'site', { store });
  store.replace();
  await rm(at('made'), { recursive: true, force: true });
  return store;
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

test('pages from a file that is damaged anywhere, or of another version, are not believed', async () => {
  const html = (text: string) => Buffer.from(text.repeat(20));
  const made = new PageStore<string>(at('store'), 'one');
  for (const name of ['a', 'b']) made.keep(`/reels/${name}`, { note: `of ${name}`, html: html(name) });
  made.replace();
  const sound = await readFile(at('store'));
  const read = () => {
    const store = new PageStore<string>(at('store'), 'one');
    const found = ['a', 'b'].map((name) => {
      const page = store.before(`/reels/${name}`);
      if (page === undefined) return 0;
      expect([page.note, Buffer.from(page.html)]).toEqual([`of ${name}`, html(name)]);
      return 1;
    });
    store.abandon();
    return found.reduce<number>((sum, one) => sum + one, 0);
  };
  expect(read()).toBe(2);
  for (let byte = 0; byte < sound.length; byte += 1) {
    const damaged = Buffer.from(sound);
    damaged[byte] = (damaged[byte] ?? 0) ^ 1;
    await writeFile(at('store'), damaged);
    expect(read(), `byte ${byte}`).toBeLessThan(2);
  }
  for (let bytes = 0; bytes < sound.length; bytes += 7) {
    await writeFile(at('store'), sound.subarray(0, bytes));
    expect(read(), `cut to ${bytes}`).toBe(0);
  }
  await writeFile(at('store'), sound);
  const other = new PageStore<string>(at('store'), 'two');
  expect(other.before('/reels/a')).toBeUndefined();
  other.abandon();
});

test('a build that fails leaves the pages of the last one; one that ends keeps only what it used', async () => {
  const store = () => new PageStore<string>(at('used'), 'one');
  const first = store();
  for (const name of ['a', 'b']) first.keep(name, { note: '', html: Buffer.from(name) });
  first.replace();

  const failed = store();
  failed.keep('c', { note: '', html: Buffer.from('c') });
  failed.abandon();
  const second = store();
  const a = second.before('a');
  if (a !== undefined) second.keepOn('a', a);
  expect(second.before('c')).toBeUndefined();
  second.replace();

  const third = store();
  expect(['a', 'b'].map((name) => third.before(name)?.html.toString())).toEqual(['a', undefined]);
  third.abandon();
  expect((await readdir(folder)).filter((name) => name.includes('used'))).toEqual(['used']);
});

test('pages of a few sites are kept side by side, and those made longest ago go', async () => {
  const nameOf = (site: number) => String(site).padStart(32, '0');
  for (let site = 0; site < 9; site += 1) {
    const file = at(`sites/${nameOf(site)}`);
    new PageStore<string>(file, 'one').replace();
    await utimes(file, site, site);
  }
  await writeFile(at('sites/something else'), '');
  new PageStore<string>(at(`sites/${nameOf(9)}`), 'one').replace();
  expect((await readdir(at('sites'))).sort()).toEqual([...[4, 5, 6, 7, 8, 9].map(nameOf), 'something else']);
});
