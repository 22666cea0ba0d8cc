import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { AstroPrerenderer, RouteData } from 'astro';
import { takeBytes } from '#render/page-bytes.ts';
import { handOver, type Site } from '#render/site.ts';
import { type KeptPages, pageFile } from './kept-pages.ts';
import { PageReads, type Reads } from './page-reads.ts';

/** Of a page that is kept: what it read, and what the answers came to. */
export interface PageNote {
  readonly reads: Reads;
  readonly digest: string;
}

/** The pages of entries, nearly all of a large site, and of labels, which are in order of ids and slow to draw. The others
 * are lists, which change with every entry. */
const KEPT = new Set(['/reels/[id]', '/editions/[id]', '/lineage/[id]', '/labels/[...page]']);
/** Addresses that are the same as a path of a file on every system, and as an address in a request. */
const PLAIN = /^\/[a-z]+(?:\/[a-z0-9][a-z0-9-]*)?$/;
/** Where the builder says that it is. No page shows it. */
const ORIGIN = 'http://localhost:4321';

interface Making {
  readonly site: Site;
  /** Where the pages go; absolute. */
  readonly into: string;
  /** The pages of the last build, and notes for the next; without it every page is made. */
  readonly kept?: KeptPages<PageNote> | undefined;
}

/** The builder's own way to make pages, but for those of entries: each is made from what it asks of the site, and taken
 * from the last build when the answers are the same. The builder is told of the others only. */
export function keepingEntryPages(own: AstroPrerenderer, making: Making): AstroPrerenderer {
  return {
    name: 'entry-pages',
    setup: async () => own.setup?.(),
    render: async (request, options) => await own.render(request, options),
    teardown: async () => own.teardown?.(),
    getStaticPaths: async () => {
      const all = await own.getStaticPaths();
      // Of two pages at one address the first is made, as the builder does.
      const ours = new Map(
        all
          .filter(isOurs)
          .map((path) => [path.pathname, path] as const)
          .reverse(),
      );
      await makePages([...ours.values()].reverse(), own, making);
      return all.filter((path) => !isOurs(path));
    },
  };
}

interface Path {
  readonly pathname: string;
  readonly route: RouteData;
}

const isOurs = ({ pathname, route }: Path) => KEPT.has(route.route) && PLAIN.test(pathname);

async function makePages(paths: readonly Path[], own: AstroPrerenderer, { site, into, kept }: Making): Promise<void> {
  const pageReads = new PageReads(site);
  const folders = new Set(paths.map(({ pathname }) => dirname(pathname)));
  for (const folder of folders) mkdirSync(join(into, folder), { recursive: true });
  try {
    for (const { pathname, route } of paths) {
      if (!folders.has(pathname)) mkdirSync(join(into, pathname));
      const note = kept?.noteOf(pathname);
      const same = note !== undefined && pageReads.digest(note.reads) === note.digest;
      if (same && kept?.take(pathname, into)) continue;
      const { seen, reads } = pageReads.watch();
      handOver(seen);
      const html = await htmlOf(own, pathname, route, site.base);
      writeFileSync(pageFile(into, pathname), html);
      const digest = kept && pageReads.digest(reads());
      if (digest !== undefined) kept?.keep(pathname, { reads: reads(), digest }, html);
    }
  } finally {
    handOver(site);
  }
}

async function htmlOf(own: AstroPrerenderer, pathname: string, route: RouteData, base: string): Promise<Uint8Array> {
  const request = new Request(new URL(`${base}${pathname.slice(1)}/`, ORIGIN));
  const taken = takeBytes();
  const answer = await own.render(request, { routeData: route });
  const response = answer instanceof Response ? answer : answer.response;
  const bytes = taken();
  if (response.status !== 200) throw new Error(`fault: the page ${pathname} answered ${response.status}`);
  return bytes ?? new Uint8Array(await response.arrayBuffer());
}
