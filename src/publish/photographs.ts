import { join } from 'node:path';
import type { PhotographFact } from '#model/catalogue.ts';
import {
  type PublishedPhotograph,
  type PublishedPicture,
  regionKey,
  type ZoomTiles,
} from '#model/published-photograph.ts';
import type { Region } from '#model/region.ts';
import { cropBox } from './crop-box.ts';
import {
  type Measured,
  makeCrop,
  makeSizes,
  makeZoom,
  measurePicture,
  openPicture,
  PICTURE_SETTINGS,
  type PictureFault,
} from './images.ts';
import { SeenFiles, type SourceFile } from './photograph-source.ts';
import { copyKept, DamagedCache, type Kept, keep, readKept, sha256 } from './picture-cache.ts';
import { noteUse, shelfOf } from './unused-pictures.ts';

/** Two at a time: each decoded photograph takes tens of megabytes. */
const AT_ONCE = 2;
/** Where the pictures stand in the site. */
const FOLDER = 'photographs';
/** How often pictures are made anew when another program keeps taking their place. */
const MOST_TRIES = 3;
const SETTINGS = sha256(PICTURE_SETTINGS).slice(0, 12);

export interface PhotographFile {
  /** Relative to the collection, with `/`. */
  readonly path: string;
  /** Absolute; already known to lie inside the collection. */
  readonly file: string;
}

export interface PhotographWanted extends PhotographFile {
  readonly regions: readonly Region[];
}

export interface Options {
  /** Absolute; survives builds, and may be thrown away at any time. */
  readonly cache: string;
  /** Called after each photograph, with how many are done. */
  readonly progress?: (done: number, of: number) => void;
}

/** How much work it was: photographs decoded, and sets of pictures made and taken from the cache. */
interface Work {
  opened: number;
  made: number;
  reused: number;
}

export interface PublishedPhotographs {
  /** By path, in the order asked for; one that can't be used is in `faults`. */
  readonly photographs: ReadonlyMap<string, PublishedPhotograph>;
  readonly faults: ReadonlyMap<string, PictureFault>;
  /** Regions that reach outside their photograph. */
  readonly outside: readonly { readonly path: string; readonly region: Region }[];
  readonly work: Readonly<Work>;
}

/** Size of each photograph, and whether all of it can be decoded. By path; nothing is thrown for a bad photograph. */
export async function measurePhotographs(
  files: readonly PhotographFile[],
  options: Options,
): Promise<ReadonlyMap<string, PhotographFact>> {
  const seen = await SeenFiles.open(options.cache);
  const facts = await eachOf(files, options.progress, async ({ path, file }): Promise<PhotographFact> => {
    const photograph = await openPhotograph(file, seen, options.cache);
    if ('problem' in photograph) return { path, opens: false, ...photograph };
    return { path, opens: true, widthPx: photograph.widthPx, heightPx: photograph.heightPx };
  });
  await seen.save();
  return new Map(facts.map((fact) => [fact.path, fact]));
}

/** Makes, or takes from the cache, what the site shows of each photograph, and puts it into the site's folder.
 *
 * @param into  the folder that the site is being written to.
 * @throws the system's error when the cache or the folder can't be written. */
export async function publishPhotographs(
  wanted: readonly PhotographWanted[],
  into: string,
  options: Options,
): Promise<PublishedPhotographs> {
  const seen = await SeenFiles.open(options.cache);
  const work: Work = { opened: 0, made: 0, reused: 0 };
  const photographs = new Map<string, PublishedPhotograph>();
  const faults = new Map<string, PictureFault>();
  const outside: { path: string; region: Region }[] = [];
  const turns = new Map<string, Promise<unknown>>();
  const results = await eachOf(wanted, options.progress, async ({ file, regions }) => {
    const photograph = await openPhotograph(file, seen, options.cache);
    if ('problem' in photograph) return photograph;
    // The same photograph beside two entries is made once: the second waits, and finds it kept.
    const before = turns.get(photograph.shelf) ?? Promise.resolve();
    const published = before
      .then(() => publishOne(photograph, regions, join(into, FOLDER), work))
      .catch(faultOfPicture);
    turns.set(
      photograph.shelf,
      published.catch(() => undefined),
    );
    return await published;
  });
  await seen.save();
  for (const [at, { path, regions }] of wanted.entries()) {
    const result = results[at];
    if (result === undefined || 'problem' in result) {
      if (result !== undefined) faults.set(path, result);
      continue;
    }
    photographs.set(path, result);
    outside.push(
      ...regions.filter((region) => !result.crops.has(regionKey(region))).map((region) => ({ path, region })),
    );
  }
  return { photographs, faults, outside, work };
}

interface Photograph {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly source: SourceFile;
  /** Where what is made from these very bytes is kept. */
  readonly shelf: string;
}

async function openPhotograph(file: string, seen: SeenFiles, cache: string): Promise<Photograph | PictureFault> {
  const source = await seen.source(file);
  if ('problem' in source) return source;
  const shelf = shelfOf(cache, source.sha256, SETTINGS);
  await noteUse(shelf);
  const folder = join(shelf, 'measured');
  const kept =
    (await readKept<Measured>(folder)) ?? (await keep(folder, async () => measurePicture(await source.bytes())));
  return 'problem' in kept.facts ? kept.facts : { ...kept.facts, source, shelf };
}

interface Whole {
  readonly sizes: readonly PublishedPicture[];
  readonly zoom?: ZoomTiles;
}

async function publishOne(
  photograph: Photograph,
  regions: readonly Region[],
  into: string,
  work: Work,
): Promise<PublishedPhotograph> {
  let opening: ReturnType<typeof openPicture> | undefined;
  const open = () => {
    if (opening === undefined) work.opened += 1;
    opening ??= photograph.source.bytes().then(openPicture);
    return opening;
  };
  const { widthPx, heightPx, shelf } = photograph;

  const whole = await keptIn(join(shelf, 'whole'), into, work, async (folder): Promise<Whole> => {
    const source = await open();
    const sizes = await makeSizes(source, widthPx, folder);
    const zoom = await makeZoom(source, photograph, sizes, folder);
    return zoom === undefined ? { sizes } : { sizes, zoom };
  });
  const crops = new Map<string, PublishedPicture>();
  for (const region of regions) {
    const box = cropBox(region, widthPx, heightPx);
    if (box === undefined || crops.has(regionKey(region))) continue;
    const name = ['crop', box.left, box.top, box.width, box.height].join('-');
    const make = async (folder: string) => makeCrop(await open(), box, folder);
    crops.set(regionKey(region), inSite(await keptIn(join(shelf, name), into, work, make)));
  }
  const { sizes, zoom } = whole;
  const published = { widthPx, heightPx, sizes: sizes.map(inSite), crops };
  return zoom === undefined ? published : { ...published, zoom: { ...zoom, root: `${FOLDER}/${zoom.root}` } };
}

/** From the cache when it is whole there, else made; in either case copied into the site. */
async function keptIn<T>(folder: string, into: string, work: Work, make: (folder: string) => Promise<T>): Promise<T> {
  const kept = await readKept<T>(folder);
  if (kept !== undefined && (await copiedWhole(kept, into))) {
    work.reused += 1;
    return kept.facts;
  }
  work.made += 1;
  for (let tries = 1; ; tries += 1) {
    const made = await keep(folder, make);
    // Another program that made the same just now may have taken its place in mid-copy.
    if (await copiedWhole(made, into)) return made.facts;
    if (tries === MOST_TRIES) throw new DamagedCache(folder);
  }
}

async function copiedWhole(kept: Kept<unknown>, into: string): Promise<boolean> {
  try {
    await copyKept(kept, into);
    return true;
  } catch (error) {
    if (error instanceof DamagedCache) return false;
    throw error;
  }
}

const inSite = (picture: PublishedPicture): PublishedPicture => ({
  ...picture,
  webp: `${FOLDER}/${picture.webp}`,
  jpeg: `${FOLDER}/${picture.jpeg}`,
});

/** A failure of the disk is passed on; anything else is the photograph's. */
function faultOfPicture(error: unknown): PictureFault {
  if (!(error instanceof Error) || 'code' in error || error instanceof DamagedCache) throw error;
  return {
    problem: `Its pictures can’t be made (${error.message.split('\n')[0] ?? ''}).`,
    action: 'Open it in a picture program, save it as JPEG and name that file here.',
  };
}

/** Does the work on each item, a few at a time; results in the items' order. */
async function eachOf<T, R>(
  items: readonly T[],
  progress: Options['progress'],
  work: (item: T) => Promise<R>,
): Promise<R[]> {
  const results: R[] = [];
  const queue = items.entries();
  let done = 0;
  const worker = async () => {
    for (const [at, item] of queue) {
      results[at] = await work(item);
      done += 1;
      progress?.(done, items.length);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return results;
}
