import { listInWords } from '../../figure/in-words.ts';
import { crossCheck } from '../check.ts';
import type { MissingSide } from '../missing-sides.ts';

/** A set with a side that isn't here: what is missing, and every number to look for. */
export const sideMissing = crossCheck({
  code: 'set/side-missing',
  title: 'A side of a set is missing',
  severity: 'warning',
  scope: 'set',
  reads: ['set', 'missingSides'],
  judge: ({ set, missingSides: { held, side, missing } }) => {
    const sides = missing.map((one) => one.written);
    const lost = missing.flatMap(({ known }) => (known === undefined || known.file > held.file ? [] : [known]));
    return [
      {
        place: side.place,
        message: `Side ${listInWords(sides)} of the set ${set.name} ${missing.length === 1 ? 'is' : 'are'} missing, and side ${side.written} is here. ${missing.map(whatIsKnown).join(' ')}`,
        found: `side ${side.written}`,
        expected: `side ${listInWords(sides)} as well`,
        action: `Look for ${numbers(missing)}. Write an entry for a reel that you know of and don’t have; somebody else’s is status: elsewhere.`,
        related: lost.map((reel) => ({
          message: `${reel.title.written}: ${reel.status.written}`,
          place: reel.status.place,
        })),
      },
    ];
  },
});

function whatIsKnown({ written, known }: MissingSide): string {
  if (known === undefined) return `No entry tells of side ${written}.`;
  return `Side ${written} is known: ${known.title.written}, ${known.status.written}.`;
}

function numbers(missing: readonly MissingSide[]): string {
  const told = missing.map(({ written, numbers: found }) =>
    found.length === 0 ? `side ${written}, of which no number is known` : `side ${written} by ${found.join(', ')}`,
  );
  return listInWords(told);
}
