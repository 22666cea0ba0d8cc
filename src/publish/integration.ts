import { mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { AstroInlineConfig } from 'astro';
import { handOver, type Site } from '#render/site.ts';
import { isCode } from './atomic.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const PAGES = join(ROOT, 'src', 'render');
/** Inside the checkout, wherever the cache is: the builder looks for packages from its root upwards. */
const WORKROOMS = join(ROOT, '.cache', 'building');

/** Builds every page of the site into a folder. The pages find the site through the global object (`site()`), since
 * the builder bundles them with a copy of their own of every module.
 *
 * @throws {Error} a program fault, when a page can't be built. */
export async function buildPages(site: Site, into: string): Promise<void> {
  // Before the builder is loaded: it would otherwise ask to send how it is used to its makers.
  process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
  const { build } = await import('astro');
  await clearWorkrooms();
  const workroom = await mkdtemp(join(WORKROOMS, `${process.pid}-`));
  handOver(site);
  try {
    await build(settings(site.base, into, workroom));
  } finally {
    handOver(undefined);
    await rm(workroom, { recursive: true, force: true });
  }
}

/** Makes place for workrooms, and removes those of programs that were killed. */
async function clearWorkrooms(): Promise<void> {
  await mkdir(WORKROOMS, { recursive: true });
  for (const name of await readdir(WORKROOMS)) {
    if (!runs(Number.parseInt(name, 10))) await rm(join(WORKROOMS, name), { recursive: true, force: true });
  }
}

function runs(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It runs, and belongs to someone else.
    return isCode(error, 'EPERM');
  }
}

/** @param workroom  a folder of this build's own: the builder keeps half-made pages under its root, and two builds
 *   of one checkout would take each other's. */
const settings = (base: string, into: string, workroom: string): AstroInlineConfig => ({
  configFile: false,
  root: workroom,
  srcDir: PAGES,
  publicDir: join(ROOT, 'public'),
  outDir: into,
  cacheDir: join(workroom, 'cache'),
  base,
  output: 'static',
  logLevel: 'warn',
  devToolbar: { enabled: false },
  build: { format: 'directory', inlineStylesheets: 'never' },
  // Nothing is written into a page that the policy forbids there: no small script, no font as data.
  // The photographs are there already when the pages come.
  vite: { build: { assetsInlineLimit: 0, emptyOutDir: false }, logLevel: 'warn' },
});
