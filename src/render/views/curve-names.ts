import type { CurveDifference, CurveMeaning, CurvePoint } from '#model/curve-sheet.ts';
import { frequencyWords } from '../drawings/curves.ts';
import { listed, signed } from '../words/number.ts';

/** `IEC, CCIR or DIN, ∞/35 µs`; the time constants alone where labels have no name for them. */
export function curveWords({ names, inWords }: CurveMeaning): string {
  const all = [...new Set(names.flatMap(({ name }) => name ?? []))];
  return all.length === 0 ? inWords : `${listed(all, 'or')}, ${inWords}`;
}

/** `1966 to 1968`, `up to 1968`, `from 1965`; nothing where no year is known to bound it. */
export function yearsWords({ from, until }: { from: number | undefined; until: number | undefined }): string {
  if (from !== undefined && until !== undefined) return `${from} to ${until}`;
  return from !== undefined ? `from ${from}` : until !== undefined ? `up to ${until}` : '';
}

export const letterOf = (index: number): string => String.fromCodePoint(97 + index);

/** A difference in one sentence: `replayed on NAB, 3180/50 µs: −2.3 dB at 63 Hz, …`. */
export const differenceWords = ({ replayed, told }: CurveDifference): string =>
  `replayed on ${curveWords(replayed)}: ${told.map(pointWords).join(', ')}`;

const pointWords = ({ frequencyHz, levelDb }: CurvePoint): string =>
  `${signed(levelDb, 1)} dB at ${frequencyWords(frequencyHz)}`;
