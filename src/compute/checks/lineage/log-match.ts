import { between, crossCheck } from '../check.ts';

/** A line of a copy log that fits a reel nobody linked: proposed with its reasons, and never a fact until it is written. */
export const logMatch = crossCheck({
  code: 'lineage/log-match',
  title: 'A log line fits an unlinked reel',
  severity: 'note',
  scope: 'reel',
  reads: ['reel', 'matchedLines'],
  judge: ({ reel, matchedLines }) =>
    matchedLines.map(({ line, copy, proposal }) => {
      const reasons = proposal.reasons.join('; ');
      const against = proposal.against.length === 0 ? '' : ` Against it: ${proposal.against.join('; ')}.`;
      return {
        ...between(
          {
            place: line.place,
            message: `${reel.title.written}: line ${proposal.line + 1} of its log`,
            found: reasons,
            expected: `reel: ${copy.id}, in that line`,
          },
          {
            place: { ...copy.place, field: 'copied-from' },
            message: `${copy.title.written}: copied from nothing yet`,
            found: reasons,
            expected: `copied-from: [${reel.id}]`,
          },
        ),
        message: `Line ${proposal.line + 1} of the copy log of ${reel.id} fits ${copy.id}, which nobody linked.`,
        action: `Compare the two boxes; if they agree, write copied-from: [${reel.id}] in ${copy.id}, or reel: ${copy.id} in the line.${against} Until then it is no fact.`,
      };
    }),
});
