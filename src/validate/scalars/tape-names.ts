/** A thickness by the name that tape was sold under. */
export interface TapeName {
  readonly name: string;
  readonly short: string;
  /** µm, the film alone. */
  readonly baseUm: number;
  /** µm, the whole tape: from, to. */
  readonly totalUm: readonly [number, number];
  /** What a 7 in reel of it holds, which a box often prints. */
  readonly feetOnSevenInches: number;
  readonly source: string;
}

/** By base, the thickest first. */
const TAPE_NAMES: readonly TapeName[] = [
  {
    name: 'standard play',
    short: 'SP',
    baseUm: 38,
    totalUm: [50, 52],
    feetOnSevenInches: 1200,
    source: 'a page on tape types; ARSC list, 19 August 2016',
  },
  {
    name: 'long play',
    short: 'LP',
    baseUm: 25,
    totalUm: [35, 35],
    feetOnSevenInches: 1800,
    source: 'a page on tape types; ARSC list, 19 August 2016',
  },
  {
    name: 'double play',
    short: 'DP',
    baseUm: 19,
    totalUm: [26, 26],
    feetOnSevenInches: 2400,
    source: 'a page on tape types; ARSC list, 19 August 2016',
  },
  {
    name: 'triple play',
    short: 'TP',
    baseUm: 12,
    totalUm: [18, 18],
    feetOnSevenInches: 3600,
    source: 'a page on tape types; the length on a reel from memory',
  },
];

/** The row that a text names: `long play`, `LP`, `long-playing`. */
export function tapeNamed(text: string): TapeName | undefined {
  const plain = text
    .slice(0, 30)
    .toLowerCase()
    .replace(/[-\s]+/gu, ' ')
    .trim();
  return TAPE_NAMES.find(
    ({ name, short }) => plain === name || plain === `${name}ing` || plain === short.toLowerCase(),
  );
}
