import type { Region } from '#model/region.ts';

/** A part of a picture in whole pixels, from its top left. */
export interface PixelBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The pixels that a region covers, on the picture the right way up: each edge at its nearest pixel, and at least one
 * pixel. Crops are cut by it and annotations point by it, so that both mean the same pixels. Undefined when the region
 * reaches outside.
 * Source: W3C Media Fragments URI 1.0, 4.2.2 (percent of the picture's width and height). */
export function cropBox(region: Region, widthPx: number, heightPx: number): PixelBox | undefined {
  const across = edges(region.xPercent, region.widthPercent, widthPx);
  const down = edges(region.yPercent, region.heightPercent, heightPx);
  if (across === undefined || down === undefined) return undefined;
  return { left: across.from, top: down.from, width: across.size, height: down.size };
}

function edges(fromPercent: number, sizePercent: number, wholePx: number) {
  const endPercent = fromPercent + sizePercent;
  // Decimals such as 33.3 + 66.7 may add up to a hair over 100.
  if (!(fromPercent >= 0 && sizePercent > 0 && endPercent <= 100 + 1e-6)) return undefined;
  const from = Math.min(Math.round((fromPercent * wholePx) / 100), wholePx - 1);
  const end = Math.min(Math.max(Math.round((endPercent * wholePx) / 100), from + 1), wholePx);
  return { from, size: end - from };
}
