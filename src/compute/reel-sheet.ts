import type { ReelSheet } from '#model/catalogue.ts';

type Lazy = 'numbers' | 'worked' | 'packVerdict' | 'wrongCurves' | 'missing';

/** A reel's sheet. What only a page or an export asks for is worked out when it is first asked for, and once: listing
 * the problems of ten thousand reels needs none of it. */
export function reelSheet(told: Omit<ReelSheet, Lazy>, lazy: { readonly [K in Lazy]: () => ReelSheet[K] }): ReelSheet {
  const sheet = { ...told };
  for (const [name, work] of Object.entries(lazy)) {
    Object.defineProperty(sheet, name, {
      enumerable: true,
      configurable: true,
      get: () => settle(sheet, name, work()),
    });
  }
  return sheet as ReelSheet;
}

/** Puts the value in the place of its getter. */
function settle<T>(sheet: object, name: string, value: T): T {
  Object.defineProperty(sheet, name, { enumerable: true, value });
  return value;
}
