import { createHash } from 'node:crypto';
import { cp, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import type { PublishedPicture, ZoomTiles } from '#model/published-photograph.ts';
import type { PixelBox } from './crop-box.ts';
import { pictureKind } from './picture-kind.ts';

// The library keeps decoded pixels for a next time that never comes here.
sharp.cache(false);

/** Widths that pages show, in pixels; the last is the largest. More than that is what zoom tiles are for. */
const WIDTHS = [320, 640, 1280] as const;
const LARGEST = WIDTHS[2];
const CROP_WIDTH = 960;
const TILE = 1024;
const WEBP = { quality: 78 } as const;
const JPEG = { quality: 80, mozjpeg: true } as const;
/** Tiles in the slower coding take five times as long for a tenth fewer bytes. */
const TILE_JPEG = { quality: 80 } as const;
const MOST_PIXELS = 400_000_000;
/** Above this a decoded photograph isn't held in memory, and is decoded again for each picture made from it. */
const HELD_PIXELS = 120_000_000;

/** Changes whenever the same photograph would give other bytes. */
export const PICTURE_SETTINGS = JSON.stringify([
  { version: 2, WIDTHS, CROP_WIDTH, TILE, WEBP, JPEG, TILE_JPEG },
  [sharp.versions.sharp, sharp.versions.vips],
]);

/** Why a photograph can't be used, and what its owner can do. */
export interface PictureFault {
  readonly problem: string;
  readonly action: string;
}
export type Measured = { readonly widthPx: number; readonly heightPx: number } | PictureFault;

/** Size the right way up, after decoding all of it, so that a file that breaks off is found. */
export async function measurePicture(bytes: Uint8Array): Promise<Measured> {
  const refused = refuseByStart(bytes);
  if (refused !== undefined) return refused;
  try {
    const { width, height } = (await sharp(bytes, { limitInputPixels: false }).metadata()).autoOrient;
    if (width * height > MOST_PIXELS) return tooManyPixels(width, height);
    // Small, so that a JPEG is decoded at an eighth of its size; every byte is still read.
    await opened(bytes).resize(64, 64, { fit: 'inside' }).raw().toBuffer();
    return { widthPx: width, heightPx: height };
  } catch (error) {
    return damaged(error);
  }
}

/** A photograph decoded once, for every picture that is made from it. Throws when it can't be decoded: measure first. */
export async function openPicture(bytes: Uint8Array): Promise<() => Sharp> {
  const { width, height } = (await sharp(bytes).metadata()).autoOrient;
  if (width * height > HELD_PIXELS) return () => opened(bytes);
  return await held(opened(bytes));
}

/** The whole photograph in a few widths, written into `folder` under names from their content. */
export async function makeSizes(source: () => Sharp, widthPx: number, folder: string): Promise<PublishedPicture[]> {
  // The largest first, and the smaller ones from its pixels: the photograph itself is gone through once.
  const largest = await held(source().resize({ width: LARGEST, withoutEnlargement: true }));
  const widths = [...WIDTHS.filter((width) => width < widthPx), ...(widthPx <= LARGEST ? [widthPx] : [])];
  const sizes: PublishedPicture[] = [];
  for (const width of widths) sizes.push(await writeBoth(largest().resize({ width }), folder));
  return sizes;
}

/** One region at the photograph's own pixels, narrowed when it is wider than a page shows. */
export async function makeCrop(source: () => Sharp, box: PixelBox, folder: string): Promise<PublishedPicture> {
  return await writeBoth(source().extract(box).resize({ width: CROP_WIDTH, withoutEnlargement: true }), folder);
}

/** Tiles at every scale, in a folder named by their content; none for a photograph that the sizes show whole. */
export async function makeZoom(
  source: () => Sharp,
  size: { widthPx: number; heightPx: number },
  sizes: readonly PublishedPicture[],
  folder: string,
): Promise<ZoomTiles | undefined> {
  if (size.widthPx <= LARGEST) return undefined;
  const making = join(folder, 'zoom');
  await source().jpeg(TILE_JPEG).tile({ size: TILE, layout: 'iiif3' }).toFile(making);
  const said = JSON.parse(await readFile(join(making, 'info.json'), 'utf8')) as TileFacts;
  // It names an address that isn't known here; an export that knows one writes its own. The other holds the clock.
  await rm(join(making, 'info.json'));
  await rm(join(folder, 'vips-properties.xml'), { force: true });
  const [smallest = ''] = await readdir(join(making, 'full'));
  const [smallWidth = 0, smallHeight = 0] = smallest.split(',').map(Number);
  const largest = sizes.at(-1);
  if (largest === undefined) throw new Error('fault: a photograph has tiles and no sizes');
  // Level 0 of the standard asks for this one: the whole photograph at the largest size there is.
  await mkdir(join(making, 'full', 'max', '0'), { recursive: true });
  await cp(join(folder, largest.jpeg), join(making, 'full', 'max', '0', 'default.jpg'));
  // The one tile of the smallest scale, which some readers ask for by its region rather than as the whole.
  await cp(join(making, 'full', smallest), join(making, `0,0,${size.widthPx},${size.heightPx}`, smallest), {
    recursive: true,
  });
  const root = await contentName(making);
  await rename(making, join(folder, root));
  const scaleFactors = said.tiles[0]?.scaleFactors ?? [1];
  return { root, tilePx: TILE, scaleFactors, smallest: { widthPx: smallWidth, heightPx: smallHeight } };
}

interface TileFacts {
  readonly tiles: readonly { readonly scaleFactors: readonly number[] }[];
}

/** Upright, in sRGB, on white where it was see-through. Nothing but pixels goes on: no metadata, no colour profile. */
const opened = (bytes: Uint8Array): Sharp =>
  sharp(bytes, { failOn: 'error', limitInputPixels: MOST_PIXELS, sequentialRead: true })
    .autoOrient()
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb');

async function held(picture: Sharp): Promise<() => Sharp> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: info.height, channels: info.channels };
  return () => sharp(data, { raw, limitInputPixels: MOST_PIXELS });
}

async function writeBoth(picture: Sharp, folder: string): Promise<PublishedPicture> {
  const webp = await picture.clone().webp(WEBP).toBuffer({ resolveWithObject: true });
  const jpeg = await picture.clone().jpeg(JPEG).toBuffer();
  const names = { webp: `${nameOf(webp.data)}.webp`, jpeg: `${nameOf(jpeg)}.jpg` };
  await writeFile(join(folder, names.webp), webp.data);
  await writeFile(join(folder, names.jpeg), jpeg);
  return { widthPx: webp.info.width, heightPx: webp.info.height, ...names };
}

const nameOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex').slice(0, 20);

async function contentName(folder: string): Promise<string> {
  const hash = createHash('sha256');
  const files = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((file) => file.isFile());
  for (const path of files.map((file) => join(file.parentPath, file.name)).sort()) {
    hash.update(path.slice(folder.length)).update(await readFile(path));
  }
  return hash.digest('hex').slice(0, 20);
}

function refuseByStart(bytes: Uint8Array): PictureFault | undefined {
  if (bytes.length === 0) {
    return { problem: 'The file is empty (0 bytes).', action: 'Copy the photograph from the camera or phone again.' };
  }
  const kind = pictureKind(bytes);
  if (kind === 'HEIC') {
    return {
      problem: 'It is a HEIC photograph, a form that can’t be opened here.',
      action:
        'Save it as JPEG and name that file here: open it on the phone or computer that made it and export it as JPEG, or set the phone’s camera to its most compatible format.',
    };
  }
  if (kind !== undefined) return undefined;
  return {
    problem: 'It isn’t a JPEG, PNG, WebP, AVIF or TIFF picture, whatever its name says.',
    action: 'Open it in a picture program and save it as JPEG, or name the right file.',
  };
}

const tooManyPixels = (width: number, height: number): PictureFault => ({
  problem: `It is ${width} × ${height} pixels, over the limit of ${MOST_PIXELS / 1e6} million.`,
  action: 'Save a smaller copy of it, up to 20000 × 20000 pixels, and name that file here.',
});

const damaged = (error: unknown): PictureFault => ({
  problem: `It breaks off or is damaged (${error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error)}).`,
  action: 'Copy the photograph from the camera or phone again, or take it again.',
});

const CLOSER_WIDTH = 2400;

/** One picture of a photograph in which its small writing can be read, as WebP: for a file that carries no tiles.
 *
 * @throws when it can't be decoded: measure first. */
export async function closerLook(bytes: Uint8Array): Promise<CloserLook> {
  const { data, info } = await opened(bytes)
    .resize({ width: CLOSER_WIDTH, withoutEnlargement: true })
    .webp({ quality: 70 })
    .toBuffer({ resolveWithObject: true });
  return { picture: data, widthPx: info.width, heightPx: info.height };
}

export interface CloserLook {
  readonly picture: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}
