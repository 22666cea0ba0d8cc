/** A region in percent of the photograph, to a tenth. */
export interface DrawnRegion {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const PERCENT = /^xywh=percent:([\d.]+), ?([\d.]+), ?([\d.]+), ?([\d.]+)$/u;
const LEAST = 0.5;
const tenth = (value: number) => Math.round(value * 10) / 10;
const between = (low: number, value: number, high: number) => Math.min(Math.max(value, low), high);

export function regionFrom(text: string): DrawnRegion | undefined {
  const [x, y, w, h] = PERCENT.exec(text)?.slice(1).map(Number) ?? [];
  return x === undefined || y === undefined || w === undefined || h === undefined ? undefined : { x, y, w, h };
}

export const regionText = ({ x, y, w, h }: DrawnRegion) => `xywh=percent:${x},${y},${w},${h}`;

/** Kept within the picture and large enough to be seen. */
export function fitted({ x, y, w, h }: DrawnRegion): DrawnRegion {
  const width = tenth(between(LEAST, w, 100));
  const height = tenth(between(LEAST, h, 100));
  return { x: tenth(between(0, x, 100 - width)), y: tenth(between(0, y, 100 - height)), w: width, h: height };
}

export const spanning = (ax: number, ay: number, bx: number, by: number): DrawnRegion => {
  const [left, right] = [between(0, Math.min(ax, bx), 100), between(0, Math.max(ax, bx), 100)];
  const [top, bottom] = [between(0, Math.min(ay, by), 100), between(0, Math.max(ay, by), 100)];
  return fitted({ x: left, y: top, w: right - left, h: bottom - top });
};

/** What a key does to a region: arrows move it by one percent, with Shift they change its size, with Alt by a tenth. */
export function moved(region: DrawnRegion, key: string, resize: boolean, fine: boolean): DrawnRegion | undefined {
  const step = fine ? 0.1 : 1;
  const [dx, dy] = (
    { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] } as const
  )[key as 'ArrowLeft'] ?? [0, 0];
  if (dx === 0 && dy === 0) return undefined;
  const { x, y, w, h } = region;
  if (!resize) return fitted({ x: x + dx, y: y + dy, w, h });
  return fitted({ x, y, w: Math.min(w + dx, 100 - x), h: Math.min(h + dy, 100 - y) });
}

/** The picture's width on a phone of 360 px, and the least height of what a finger can hit (WCAG 2.2, 2.5.8). */
const PHONE_PICTURE_PX = 336;
const LEAST_PX = 24;

/** What a phone would make hard to hit: regions too low, and regions over each other.
 *
 * @param heightToWidth  Of the photograph. */
export function regionWarnings(
  regions: readonly { readonly name: string; readonly region: DrawnRegion }[],
  heightToWidth: number,
): string[] {
  const low = regions
    .filter(({ region }) => (region.h / 100) * heightToWidth * PHONE_PICTURE_PX < LEAST_PX)
    .map(({ name }) => `Region ${name} is lower than a finger can hit on a phone (24 px): draw it a little higher.`);
  const over = regions.flatMap((a, at) =>
    regions
      .slice(at + 1)
      .filter((b) => overlap(a.region, b.region))
      .map((b) => `Regions ${a.name} and ${b.name} lie over each other.`),
  );
  return [...low, ...over];
}

const overlap = (a: DrawnRegion, b: DrawnRegion) =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
