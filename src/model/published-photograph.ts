import type { Region } from './region.ts';

/** One picture in two forms; paths are relative to the site's root, with `/`, and say nothing of the original. */
export interface PublishedPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly webp: string;
  readonly jpeg: string;
}

/** Tiles of the whole photograph at full size: `<root>/<x>,<y>,<w>,<h>/<w>,<h>/0/default.jpg` (IIIF Image API 3.0, level 0). */
export interface ZoomTiles {
  readonly root: string;
  /** Side of a tile, in pixels of its own scale. */
  readonly tilePx: number;
  /** 1 is full size; ascending. */
  readonly scaleFactors: readonly number[];
  /** The whole photograph small, `<root>/full/<w>,<h>/0/default.jpg`. */
  readonly smallest: { readonly widthPx: number; readonly heightPx: number };
}

/** A photograph as it stands in the site. */
export interface PublishedPhotograph {
  /** Of the original the right way up. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Narrowest first; at least one. */
  readonly sizes: readonly PublishedPicture[];
  /** By `regionKey`. A region that reaches outside the photograph has none. */
  readonly crops: ReadonlyMap<string, PublishedPicture>;
  /** Only where the original has more pixels than the largest of `sizes`. */
  readonly zoom?: ZoomTiles;
}

/** The key of a crop: the same region gives the same key, however it was written. */
export const regionKey = (region: Region): string =>
  [region.xPercent, region.yPercent, region.widthPercent, region.heightPercent].join(',');
