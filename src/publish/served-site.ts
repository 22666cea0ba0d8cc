import { mkdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Catalogue } from '#model/catalogue.ts';
import type { PublishedPhotograph } from '#model/published-photograph.ts';
import { LivePages } from './live-pages.ts';
import { publishPhotographs } from './photographs.ts';
import type { Fresh } from './serve.ts';
import { indexTexts, type SiteOptions, siteOf, wantedPhotographs, writeTextIndex } from './site.ts';
import { openWorkroom } from './workroom.ts';

/** A site that is being served while its collection changes: pages are made anew as they are asked for, photographs and
 * indexes are written to a folder of its own, which goes when the program ends. The finished site isn't touched. */
export class ServedSite implements Fresh {
  readonly pages = new LivePages();
  #folder: Promise<string> | undefined;
  #indexes: string | undefined;
  #photographs: { readonly key: string; readonly published: ReadonlyMap<string, PublishedPhotograph> } | undefined;
  #pictures: string | undefined;
  #count = 0;

  /** Texts beside the pages, by address: made when they are asked for, as they are large. */
  #texts = new Map<string, () => string>();

  isPage = (address: string) => this.#texts.has(address) || this.pages.isPage(address);
  page = async (address: string) => {
    const text = this.#texts.get(address);
    return text === undefined ? await this.pages.page(address) : text();
  };
  folders = () => [this.#indexes, this.#pictures].filter((folder) => folder !== undefined);

  /** From now on pages are made from this catalogue. */
  async show(
    catalogue: Catalogue,
    options: Pick<SiteOptions, 'base' | 'collection' | 'cache' | 'shares'>,
  ): Promise<void> {
    const wanted = wantedPhotographs(catalogue, options.collection);
    const states = await Promise.all(
      wanted.map(async ({ file }) => {
        const about = await stat(file).catch(() => undefined);
        return [about?.size, about?.mtimeMs, about?.ctimeMs, about?.ino];
      }),
    );
    const key = JSON.stringify([wanted, states]);
    if (this.#photographs?.key !== key) {
      const into = await this.#newFolder('pictures');
      const { photographs } = await publishPhotographs(wanted, into, options);
      this.#photographs = { key, published: photographs };
      this.#pictures = into;
    }
    this.pages.show(await siteOf(catalogue, this.#photographs.published, options));
    this.#texts = new Map(
      [...indexTexts(catalogue)].map(([name, make]) => [`/${name}`, onceMade(() => [...make()].join(''))]),
    );
  }

  /** Text search knows of this catalogue when it is done; number search does from when it is shown.
   * @param signal  ends it early, which throws its reason. */
  async index(catalogue: Catalogue, signal?: AbortSignal): Promise<void> {
    const into = await this.#newFolder('indexes');
    try {
      await writeTextIndex(catalogue, into, signal);
    } catch (error) {
      await rm(into, { recursive: true, force: true });
      throw error;
    }
    const before = this.#indexes;
    this.#indexes = into;
    if (before !== undefined) await rm(before, { recursive: true, force: true });
  }

  async close(): Promise<void> {
    if (this.#folder !== undefined) await rm(await this.#folder, { recursive: true, force: true });
  }

  async #newFolder(name: string): Promise<string> {
    this.#folder ??= openWorkroom();
    this.#count += 1;
    const folder = join(await this.#folder, `${name}-${this.#count}`);
    await mkdir(folder);
    return folder;
  }
}

function onceMade(make: () => string): () => string {
  let text: string | undefined;
  return () => {
    text ??= make();
    return text;
  };
}
