import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { AstroInlineConfig } from 'astro';
import { handOver, type Site } from '#render/site.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const PAGES = join(ROOT, 'src', 'render');

/** Builds every page of the site into a folder. The pages find the site through the global object (`site()`), since
 * the builder bundles them with a copy of their own of every module.
 *
 * @param cache  the builder's own; may be thrown away.
 * @throws {Error} a program fault, when a page can't be built. */
export async function buildPages(site: Site, into: string, cache: string): Promise<void> {
  // Before the builder is loaded: it would otherwise ask to send how it is used to its makers.
  process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
  const { build } = await import('astro');
  await mkdir(cache, { recursive: true });
  const workroom = await mkdtemp(join(cache, 'building-'));
  handOver(site);
  try {
    await build(settings(site.base, into, workroom));
  } finally {
    handOver(undefined);
    await rm(workroom, { recursive: true, force: true });
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
