import { cp, readdir, rename } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { AstroInlineConfig, AstroIntegration } from 'astro';
import { handOver, type Site } from '#render/site.ts';
import { isCode } from './atomic.ts';
import { keepingEntryPages, type PageNote } from './entry-pages.ts';
import type { KeptPages } from './kept-pages.ts';
import type { LivePages } from './live-pages.ts';
import { inWorkroom } from './workroom.ts';

const ROOT = resolve(import.meta.dirname, '../..');
/** The owner's pages, and those of a sealed dossier. */
const PAGES = { site: join(ROOT, 'src', 'render'), dossier: join(ROOT, 'src', 'render', 'dossier') } as const;
/** A folder for each build's half-made pages. It is inside the checkout, since they look for packages from where they
 * stand upwards; and each has its own, since two builds at once would take each other's. */
const WORKROOMS = join(ROOT, '.cache', 'building');

interface Keeping {
  /** The pages of the last build, of which those are taken that would come out the same. */
  readonly kept?: KeptPages<PageNote> | undefined;
  /** Keeps the bundled pages, to make single ones after the build. */
  readonly live?: LivePages | undefined;
}

/** Builds every page of the site into a folder. The pages find the site through the global object (`site()`), since
 * the builder bundles them with a copy of their own of every module.
 *
 * @param into  may hold other parts of the site already; they stay.
 * @throws {Error} a program fault, when a page can't be built. */
export async function buildPages(
  site: Site,
  into: string,
  which: keyof typeof PAGES = 'site',
  keeping: Keeping = {},
): Promise<void> {
  // Before the builder is loaded: it would otherwise ask to send how it is used to its makers.
  process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
  await inWorkroom((workroom) => buildIn(workroom, site, into, which, keeping), WORKROOMS);
}

async function buildIn(
  workroom: string,
  site: Site,
  into: string,
  which: keyof typeof PAGES,
  { kept, live }: Keeping,
): Promise<void> {
  const { build } = await import('astro');
  // For pages that go to a place outside the current folder, the builder keeps its half-made ones in the current folder.
  if (!workroom.startsWith(process.cwd())) process.chdir(ROOT);
  handOver(site);
  try {
    const pages = join(workroom, 'pages');
    const entryPages: AstroIntegration = {
      name: 'entry-pages',
      hooks: {
        'astro:build:start': ({ setPrerenderer }) => {
          setPrerenderer((own) => keepingEntryPages(live?.keep(own) ?? own, { site, into: pages, kept }));
        },
      },
    };
    await build({ ...settings(site.base, workroom, PAGES[which]), integrations: [entryPages] });
    for (const name of await readdir(pages)) {
      await move(join(pages, name), join(into, name));
    }
  } finally {
    handOver(undefined);
  }
}

/** To another disk it is a copy. */
async function move(from: string, to: string): Promise<void> {
  await rename(from, to).catch(async (error: unknown) => {
    if (!isCode(error, 'EXDEV')) throw error;
    await cp(from, to, { recursive: true });
  });
}

const settings = (base: string, workroom: string, pages: string): AstroInlineConfig => ({
  configFile: false,
  root: ROOT,
  srcDir: pages,
  publicDir: join(ROOT, 'public'),
  outDir: join(workroom, 'pages'),
  cacheDir: join(workroom, 'cache'),
  base,
  output: 'static',
  logLevel: 'warn',
  devToolbar: { enabled: false },
  build: { format: 'directory', inlineStylesheets: 'never' },
  // Nothing is written into a page that the policy forbids there: no small script, no font as data.
  vite: { build: { assetsInlineLimit: 0 }, logLevel: 'warn' },
});
