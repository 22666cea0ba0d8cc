import type { Accepted, Diagnostic } from '#model/diagnostic.ts';
import type { Entries } from '#model/entries.ts';
import type { AcceptedCode, EntryBase } from '#model/entry.ts';

/** Parts the problems that an entry has accepted, with its reason, from those still open.
 * An error can't be accepted: the entry can't be used as it stands. A problem between two entries may be accepted in
 * either of them. */
export function partAccepted(
  problems: readonly Diagnostic[],
  entries: Entries,
): { open: readonly Diagnostic[]; accepted: readonly Accepted[] } {
  const byFile = acceptedByFile(entries);
  if (byFile.size === 0) return { open: problems, accepted: [] };
  const open: Diagnostic[] = [];
  const accepted: Accepted[] = [];
  for (const problem of problems) {
    const reason = problem.severity === 'error' ? undefined : reasonFor(problem, byFile);
    if (reason === undefined) open.push(problem);
    else accepted.push({ problem, why: reason.why?.written ?? '', on: reason.on?.written });
  }
  return { open, accepted };
}

function reasonFor(
  problem: Diagnostic,
  byFile: ReadonlyMap<string, readonly AcceptedCode[]>,
): AcceptedCode | undefined {
  const files = [problem.place.file, ...problem.related.map((related) => related.place.file)];
  for (const file of files) {
    const reason = byFile.get(file)?.find((one) => one.code.value === problem.code);
    if (reason !== undefined) return reason;
  }
  return undefined;
}

function acceptedByFile(entries: Entries): ReadonlyMap<string, readonly AcceptedCode[]> {
  const all: readonly EntryBase[] = [
    ...entries.reels,
    ...entries.editions,
    ...entries.machines,
    ...entries.stocks,
    ...entries.places,
    ...entries.people,
    ...entries.shares,
    ...entries.notes,
  ];
  return new Map(all.filter((entry) => entry.accepted.length > 0).map((entry) => [entry.file, entry.accepted]));
}
