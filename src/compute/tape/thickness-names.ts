import { feet, type Micrometres, type Millimetres, micrometres, mils } from '#model/units.ts';

/** A name that tape is sold under, and what it means: the base film alone, or the whole tape. */
export interface ThicknessName {
  readonly name: string;
  /** The same, as a nominal mil of the base film; undefined where makers disagree on which. */
  readonly baseMil: number | undefined;
  readonly baseUm: Micrometres;
  /** Total: base, coat and back coat. The formula for a pack needs this one. */
  readonly totalUm: readonly [least: Micrometres, most: Micrometres];
  readonly onSevenInchReelMm: Millimetres;
  readonly source: string;
}

const SOURCE =
  'a page on tape types (standard 50 µm, 1.5 mil; long 35 µm, 1 mil; double 26 µm, 0.75 mil; triple 18 µm); ARSC list, 19 August 2016';
const band = (least: number, most: number) => [micrometres(least), micrometres(most)] as const;

/** Thickest first. */
export const THICKNESS_NAMES: readonly ThicknessName[] = [
  {
    name: 'standard play',
    baseMil: 1.5,
    baseUm: micrometres(38),
    totalUm: band(50, 52),
    onSevenInchReelMm: feet(1200),
    source: SOURCE,
  },
  {
    name: 'long play',
    baseMil: 1,
    baseUm: micrometres(25),
    totalUm: band(35, 35),
    onSevenInchReelMm: feet(1800),
    source: SOURCE,
  },
  {
    name: 'double play',
    baseMil: 0.75,
    baseUm: micrometres(19),
    totalUm: band(26, 26),
    onSevenInchReelMm: feet(2400),
    source: SOURCE,
  },
  {
    name: 'triple play',
    baseMil: undefined,
    baseUm: micrometres(12),
    totalUm: band(18, 18),
    onSevenInchReelMm: feet(3600),
    source: `${SOURCE}; length on the reel from memory`,
  },
];

/** What a tape's name in mil can mean; more than one meaning is a question for the owner, never a guess. */
export interface ThicknessReading {
  readonly baseUm?: Micrometres;
  readonly totalUm: readonly [least: Micrometres, most: Micrometres];
  readonly says: string;
}

/** The readings of a name such as "1.5 mil". Half a mil was printed on triple-play and on double-play boxes alike, and
 * can be the tape itself (from memory). */
export function readingsOfMil(mil: number): readonly ThicknessReading[] {
  if (mil === 0.5) {
    return [
      { baseUm: mils(0.5), totalUm: band(18, 18), says: 'base film 12.7 µm, whole tape about 18 µm (triple play)' },
      { totalUm: [mils(0.5), mils(0.5)], says: 'the whole tape 12.7 µm' },
      { totalUm: band(25, 26), says: 'sold as double play, whole tape 25 to 26 µm' },
    ];
  }
  const named = THICKNESS_NAMES.find((row) => row.baseMil === mil);
  if (named === undefined) return [];
  const [least, most] = named.totalUm;
  const total = least === most ? `about ${least} µm` : `${least} to ${most} µm`;
  return [
    {
      baseUm: mils(mil),
      totalUm: named.totalUm,
      says: `base film ${Number(mils(mil).toFixed(1))} µm, whole tape ${total} (${named.name})`,
    },
  ];
}
