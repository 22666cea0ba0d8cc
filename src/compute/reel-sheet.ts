import type { ReelSheet } from '#model/catalogue.ts';

type Lazy = 'numbers' | 'worked' | 'packVerdict' | 'wrongCurves' | 'missing';

/** A reel's sheet. What only a page or an export asks for is worked out when it is first asked for, and once: listing
 * the problems of ten thousand reels needs none of it. */
export function reelSheet(told: Omit<ReelSheet, Lazy>, lazy: { readonly [K in Lazy]: () => ReelSheet[K] }): ReelSheet {
  const { reel, findings, playing, lineage, problems } = told;
  return {
    reel,
    findings,
    playing,
    lineage,
    problems,
    get numbers() {
      return settle(this, 'numbers', lazy.numbers());
    },
    get worked() {
      return settle(this, 'worked', lazy.worked());
    },
    get packVerdict() {
      return settle(this, 'packVerdict', lazy.packVerdict());
    },
    get wrongCurves() {
      return settle(this, 'wrongCurves', lazy.wrongCurves());
    },
    get missing() {
      return settle(this, 'missing', lazy.missing());
    },
  };
}

/** Puts the value in the place of its getter. */
function settle<T>(sheet: object, name: string, value: T): T {
  Object.defineProperty(sheet, name, { enumerable: true, value });
  return value;
}
