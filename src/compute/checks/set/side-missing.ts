import { listInWords } from '../../figure/in-words.ts';
import { between, crossCheck } from '../check.ts';
import type { MissingSide } from '../missing-sides.ts';

/** A set with a side that isn't here: what is missing, and every number to look for. */
export const sideMissing = crossCheck({
  code: 'set/side-missing',
  title: 'A side of a set is missing',
  severity: 'warning',
  scope: 'set',
  reads: ['set', 'missingSides'],
  judge: ({ set, missingSides: { held, side, missing } }) => {
    const sides = listInWords(missing.map((one) => one.written));
    const noun = missing.length === 1 ? 'side' : 'sides';
    const lost = missing.flatMap(({ known, written }) => (known === undefined ? [] : [{ known, written }]));
    return [
      {
        ...between(
          {
            place: side.place,
            message: `${held.title.written}: side ${side.written}`,
            found: `side ${side.written}`,
            expected: `${noun} ${sides} as well`,
          },
          ...lost.map(({ known, written }) => ({
            place: known.status.place,
            message: `${known.title.written}: ${known.status.written}`,
            found: `side ${written}, ${known.status.written}`,
            expected: `side ${written} here, beside side ${side.written}`,
          })),
        ),
        message: `${missing.length === 1 ? 'Side' : 'Sides'} ${sides} of the set ${set.name} ${missing.length === 1 ? 'is' : 'are'} missing, and side ${side.written} is here. ${missing.map(whatIsKnown).join(' ')}`,
        action: `Look for ${numbers(missing)}. Write an entry for a reel that you know of and don’t have; somebody else’s is status: elsewhere.`,
      },
    ];
  },
});

function whatIsKnown({ written, known }: MissingSide): string {
  if (known === undefined) return `No entry tells of side ${written}.`;
  return `Side ${written} is known: ${known.title.written}, ${known.status.written}.`;
}

function numbers(missing: readonly MissingSide[]): string {
  const told = missing.map(({ written, known, numbers: found }) => {
    const what = `${known?.status.value === 'destroyed' ? 'another copy of ' : ''}side ${written}`;
    return found.length === 0 ? `${what}, of which no number is known` : `${what} by ${found.join(', ')}`;
  });
  return listInWords(told);
}
