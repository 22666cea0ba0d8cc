import type { AstroPrerenderer, RouteData } from 'astro';
import { handOver, type Site } from '#render/site.ts';

/** What the builder's own prerenderer has beside what is documented (Astro 7.3.5, core/build/default-prerenderer.js):
 * the lists of pages, which it keeps and which go stale when the site changes, and where it tells of faults. */
interface Prerenderer extends AstroPrerenderer {
  readonly app?: {
    readonly routeCache?: { clearAll(): void };
    readonly logger?: { setDestination(to: { write(): void }): void };
  };
}

/** Where the builder says that it is. No page shows it. */
const ORIGIN = 'http://localhost:4321';

/** The pages of a site that were bundled once for a build, and can be made one by one afterwards from whatever the
 * collection has become: a page that is asked for is made from all of what is there now, and none is ever reused. */
export class LivePages {
  #prerenderer: Prerenderer | undefined;
  #routes: readonly RouteData[] = [];
  #site: Site | undefined;
  #made = new Map<string, Promise<string | undefined>>();

  /** Keeps the builder's way to make pages, of the build that bundles them, and gives it back. */
  keep(own: AstroPrerenderer): AstroPrerenderer {
    this.#prerenderer = own;
    const list = own.getStaticPaths.bind(own);
    own.getStaticPaths = async () => {
      const paths = await list();
      this.#routes = [...new Set(paths.map(({ route }) => route))];
      return paths;
    };
    return own;
  }

  /** Whether single pages can be made: a build has ended, and the builder is the one that this was written for. */
  get ready(): boolean {
    return this.#prerenderer?.app?.routeCache !== undefined;
  }

  /** From now on pages are made from this. */
  show(site: Site): void {
    this.#prerenderer?.app?.routeCache?.clearAll();
    // It prints a stack for every page that isn't there, and throws what it prints.
    this.#prerenderer?.app?.logger?.setDestination({ write: () => undefined });
    this.#made = new Map();
    this.#site = site;
    handOver(site);
  }

  /** A page as HTML, or another text that is made with the pages; undefined where there is no page, or nothing was shown yet.
   * @param address  from the site's root, decoded, such as `/reels/low-water/` or `/calendar.ics`. */
  async page(address: string): Promise<string | undefined> {
    const known = this.#made.get(address);
    if (known !== undefined) return await known;
    const made = this.#make(address);
    this.#made.set(address, made);
    return await made;
  }

  /** Whether an address is one that a page could have. */
  isPage(address: string): boolean {
    return this.#site !== undefined && this.#routeOf(address) !== undefined;
  }

  #routeOf(address: string): RouteData | undefined {
    const path = address === '/' ? address : address.replace(/\/$/, '');
    const type = address.endsWith('/') ? 'page' : 'endpoint';
    return this.#routes.find((route) => route.type === type && route.pattern.test(path));
  }

  async #make(address: string): Promise<string | undefined> {
    const route = this.#routeOf(address);
    const site = this.#site;
    if (route === undefined || site === undefined || this.#prerenderer === undefined) return undefined;
    const url = new URL(site.base + address.slice(1).split('/').map(encodeURIComponent).join('/'), ORIGIN);
    try {
      const answer = await this.#prerenderer.render(new Request(url), { routeData: route });
      const response = answer instanceof Response ? answer : answer.response;
      return response.status === 200 ? await response.text() : undefined;
    } catch (error) {
      if (error instanceof Error && error.name === 'NoMatchingStaticPathFound') return undefined;
      throw error;
    }
  }
}
