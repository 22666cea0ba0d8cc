import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { careOf } from '#compute/care/care.ts';
import { makeNumberIndex } from '#compute/identifiers/number-index.ts';
import type { Catalogue } from '#model/catalogue.ts';
import type { OwnShare } from '#model/dossier.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import { photographPath } from '#model/photograph-path.ts';
import type { Region } from '#model/region.ts';
import { withoutTurns } from '#model/turned-text.ts';
import { calculationForms } from '#reckoner/forms.ts';
import type { Site } from '#render/site.ts';
import { catalogueJson } from './catalogue-json.ts';
import type { PageNote } from './entry-pages.ts';
import { type ReplaceOptions, replaceWhole } from './finished-folder.ts';
import { buildPages } from './integration.ts';
import { KeptPages } from './kept-pages.ts';
import type { LivePages } from './live-pages.ts';
import { clearHeap } from './memory.ts';
import { type PhotographWanted, type PublishedPhotographs, publishPhotographs } from './photographs.ts';
import { sha256 } from './picture-cache.ts';
import { problemLines } from './problem-lines.ts';
import { programVersion } from './program-version.ts';
import { writeSearch } from './search.ts';
import { searchRecords } from './search-records.ts';
import { writeManifests } from './site-iiif.ts';

export interface SiteOptions extends ReplaceOptions {
  /** The folder, or rather the link to it, that the site is to stand at; absolute. */
  readonly out: string;
  /** Where the photographs lie; absolute. */
  readonly collection: string;
  /** Survives builds, and may be thrown away at any time; absolute. */
  readonly cache: string;
  /** `/` or `/sub/`, with both slashes. */
  readonly base: string;
  /** Keeps the bundled pages, to make single ones after the build. */
  readonly live?: LivePages;
  /** What each share would show, by its id; without it the site has no pages of shares. */
  readonly shares?: ReadonlyMap<string, OwnShare>;
  /** Whether the text index is made; it is unless this is false. */
  readonly textIndex?: boolean;
  /** `https://…/` of its first page, where that is known: then it has what viewers elsewhere need. */
  readonly address?: string | undefined;
  /** Called as long work goes on, with what is being done: `photographs 3 of 90`. */
  readonly progress?: (doing: string) => void;
}

/** Writes the owner's site: photographs, pages, text index, number index and `catalogue.json`, all of it or nothing.
 *
 * @throws {NotOurs} when something else stands at `out`. */
export async function publishSite(catalogue: Catalogue, options: SiteOptions): Promise<PublishedPhotographs> {
  const { out, cache, progress = () => undefined } = options;
  return await replaceWhole(
    out,
    async (into) => {
      const published = await publishPhotographs(wantedPhotographs(catalogue, options.collection), into, {
        cache,
        progress: (done, of) => progress(`photographs ${done} of ${of}`),
      });
      progress('indexes');
      await writeIndexes(catalogue, into, options);
      progress('pages');
      const site = await siteOf(catalogue, published.photographs, options);
      const kept = keptPages(options);
      await buildPages(site, into, 'site', { kept, live: options.live });
      if (options.address !== undefined) await writeManifests(catalogue, published.photographs, into, options.address);
      kept.replace();
      return published;
    },
    options,
  );
}

/** The text index's maker is a program of its own: meanwhile the other indexes are written. All are done before the pages
 * are made, so that its memory isn't needed beside theirs. */
async function writeIndexes(catalogue: Catalogue, into: string, { textIndex = true }: SiteOptions): Promise<void> {
  const control = new AbortController();
  if (textIndex) clearHeap();
  const text = textIndex ? writeTextIndex(catalogue, into, control.signal) : undefined;
  // Again when they are written: the maker's own need is greatest when it has everything.
  const others = writeIndexTexts(catalogue, into).then(() => (textIndex ? clearHeap() : undefined));
  others.catch((error: unknown) => control.abort(error));
  // Whichever fails, the other has ended too when this throws.
  for (const end of await Promise.allSettled([others, text])) if (end.status === 'rejected') throw end.reason;
}

async function writeIndexTexts(catalogue: Catalogue, into: string): Promise<void> {
  for (const [name, text] of indexTexts(catalogue)) await writeFile(join(into, name), text());
}

/** The pages of this site's last build. Each collection has notes of its own, for each place that its pages stand at. */
function keptPages({ out, cache, collection, base }: SiteOptions): KeptPages<PageNote> {
  const name = sha256(JSON.stringify([collection, base, out])).slice(0, 32);
  return new KeptPages(join(cache, 'pages', name), programVersion(), out);
}

/** What the owner's pages are made from. */
export async function siteOf(
  catalogue: Catalogue,
  photographs: Site['photographs'],
  { base, collection, shares }: Pick<SiteOptions, 'base' | 'collection' | 'shares'>,
): Promise<Site> {
  const calculations = await calculationForms(catalogue.today);
  const entryLines = await problemLines(catalogue.problems, collection);
  let care: Site['care'];
  return {
    catalogue,
    photographs,
    base,
    entryLines,
    // Few pages ask: one that is served by itself doesn't wait for it.
    get care() {
      care ??= careOf(catalogue);
      return care;
    },
    calculations,
    ...(shares === undefined ? {} : { shares }),
  };
}

/** `catalogue.json` and the number index, each made when it is asked for, in parts; by name. */
export const indexTexts = (catalogue: Catalogue) =>
  new Map<string, () => Iterable<string>>([
    ['catalogue.json', () => catalogueJson(catalogue)],
    ['numbers.json', () => [withoutTurns(JSON.stringify(makeNumberIndex(catalogue.numbers())))]],
  ]);

/** @param signal  ends it early, which throws its reason. */
export async function writeTextIndex(catalogue: Catalogue, into: string, signal?: AbortSignal): Promise<void> {
  const { entries } = catalogue;
  const language = valueOf(entries.collection.language) ?? 'en';
  await writeSearch(searchRecords(entries, catalogue.numbers()), language, into, signal);
}

/** Every photograph that an entry names and that opens, with the regions that readings mark on it; by path. */
export function wantedPhotographs(
  catalogue: Pick<Catalogue, 'entries' | 'photographs'>,
  collection: string,
): readonly PhotographWanted[] {
  const { collection: _, unusable: __, ...lists } = catalogue.entries;
  const wanted = new Map<string, Region[]>();
  for (const entry of Object.values(lists).flat()) {
    for (const photo of itemsOf(entry.photos)) {
      const path = photographPath(entry.file, photo.file.value);
      if (path !== undefined && catalogue.photographs.get(path)?.opens === true)
        wanted.set(path, wanted.get(path) ?? []);
    }
    for (const { photo, region } of entry.folder === 'reels' ? itemsOf(entry.readings) : []) {
      const path = photo === undefined ? undefined : photographPath(entry.file, photo.value);
      if (path !== undefined && region !== undefined) wanted.get(path)?.push(region.value);
    }
  }
  const paths = [...wanted.keys()].sort();
  return paths.map((path) => ({ path, file: join(collection, path), regions: wanted.get(path) ?? [] }));
}
