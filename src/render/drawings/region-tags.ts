import type { Region } from '#model/region.ts';

/** Where a region's number stands: its top left corner, in percent of the photograph. */
export interface TagPlace {
  readonly xPercent: number;
  readonly yPercent: number;
}

/** A tag's size in percent of the photograph's width, on the desk (18 by 16 px of some 500) and on a telephone (13 by
 * 12 of some 335) alike. */
const TAG_WIDE = 3.9;
const TAG_HIGH = 3.5;

/** Places the numbers beside their regions, so that none covers what was read: left of the first letter where there is
 * room, else above, right or below it; each clear of all regions and of the tags before it. Where a label is so dense
 * that none of them is free, it stands left all the same: over its neighbour's last letter rather than its own first.
 *
 * @param aspect  width over height of the photograph.
 */
export function placeTags(regions: readonly Region[], aspect: number): readonly TagPlace[] {
  const high = TAG_HIGH * aspect;
  const taken: Box[] = regions.map((region) => ({
    x: region.xPercent,
    y: region.yPercent,
    wide: region.widthPercent,
    high: region.heightPercent,
  }));
  return regions.map((region) => {
    const places = around(region, high);
    const free = places.find((place) => isFree({ ...place, wide: TAG_WIDE, high }, taken));
    const place = free ?? { x: Math.max(0, region.xPercent - TAG_WIDE), y: region.yPercent };
    taken.push({ ...place, wide: TAG_WIDE, high });
    return { xPercent: round(place.x), yPercent: round(place.y) };
  });
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
}

function around(region: Region, high: number): readonly { x: number; y: number }[] {
  const { xPercent: x, yPercent: y, widthPercent: wide, heightPercent: tall } = region;
  const left = { x: x - TAG_WIDE, y };
  return [
    left,
    { x, y: y - high },
    { x: x + wide, y },
    { x, y: y + tall },
    { x: x + wide - TAG_WIDE, y: y - high },
    { x: x + wide - TAG_WIDE, y: y + tall },
  ];
}

/** Inside the photograph, and over nothing; boxes that only touch are apart. */
const isFree = (box: Box, taken: readonly Box[]) =>
  box.x >= 0 &&
  box.y >= 0 &&
  box.x + box.wide <= 100 &&
  box.y + box.high <= 100 &&
  taken.every(
    (other) =>
      box.x + box.wide <= other.x + TOUCH ||
      other.x + other.wide <= box.x + TOUCH ||
      box.y + box.high <= other.y + TOUCH ||
      other.y + other.high <= box.y + TOUCH,
  );

const TOUCH = 1e-9;
const round = (percent: number) => Math.round(percent * 1000) / 1000;
