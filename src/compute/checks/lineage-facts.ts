import type { PartialDate } from '#model/dates.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Proposal } from '#model/lineage.ts';
import type { Place } from '#model/place.ts';
import type { LogLine, Reel } from '#model/reel.ts';
import { couldBeSameTime } from '../lineage/intervals.ts';
import type { CheckContext } from './context.ts';

/** A parent that a reel is known to have, and where that is written. */
export interface KnownParent {
  readonly parent: Reel;
  readonly place: Place;
}

/** A line of a reel's copy log with the unlinked reel that it was matched to. */
export interface MatchedLine {
  readonly line: LogLine;
  readonly copy: Reel;
  readonly proposal: Proposal;
}

/** A copy that a log should have and hasn't: made while the log was being kept. */
export interface UnloggedCopy {
  readonly copy: Reel;
  readonly on: Known<PartialDate>;
  readonly first: Known<PartialDate>;
  readonly last: Known<PartialDate>;
}

/** What a reel was copied from and what its log says was copied from it. */
export const LINEAGE_FACTS = {
  /** Parents that the reel states or that a log names; missing when none has an entry. */
  knownParents: (reel: Reel, context: CheckContext): readonly KnownParent[] | undefined => {
    const stated = new Map(itemsOf(reel.copiedFrom).map((parent) => [parent.value, parent.place]));
    const parents = (context.lineage.byReel.get(reel.id)?.parents ?? []).flatMap((id) => {
      const parent = context.reels.get(id);
      if (parent === undefined) return [];
      const line = itemsOf(parent.copyLog).find((one) => one.reel?.value === reel.id);
      return [{ parent, place: stated.get(id) ?? line?.reel?.place ?? reel.place }];
    });
    return parents.length === 0 ? undefined : parents;
  },
  /** Whether any parent of it is known; never missing. */
  isKnownCopy: (reel: Reel, context: CheckContext): boolean =>
    (context.lineage.byReel.get(reel.id)?.parents ?? []).some((id) => context.reels.has(id)),
  /** Lines of its log that fit a reel nobody linked; missing when there are none. */
  matchedLines: (reel: Reel, context: CheckContext): readonly MatchedLine[] | undefined => {
    const found = (context.proposals.get(reel.id) ?? []).flatMap((proposal) => {
      const line = itemsOf(reel.copyLog)[proposal.line];
      const copy = context.reels.get(proposal.reel);
      return line === undefined || copy === undefined ? [] : [{ line, copy, proposal }];
    });
    return found.length === 0 ? undefined : found;
  },
  /** Copies of it, dated inside the time that its log covers, that no line can be about. */
  unloggedCopies: (reel: Reel, context: CheckContext): readonly UnloggedCopy[] | undefined => {
    const lines = itemsOf(reel.copyLog);
    const dates = lines.flatMap((line) => (line.on === undefined ? [] : [line.on]));
    const first = dates.toSorted((a, b) => order(a.value.latest, b.value.latest))[0];
    const last = dates.toSorted((a, b) => order(b.value.earliest, a.value.earliest))[0];
    if (first === undefined || last === undefined || dates.length < 2) return undefined;
    const named = new Set(lines.map((line) => line.reel?.value));
    const open = lines.filter((line) => line.reel === undefined);
    const children = context.lineage.byReel.get(reel.id)?.children ?? [];
    const found = children.flatMap((id) => {
      const copy = context.reels.get(id);
      const on = valueOf(copy?.recorded)?.on;
      if (copy === undefined || on === undefined || named.has(id) || !isInside(on.value, first.value, last.value))
        return [];
      const couldBe = open.some((line) => line.on === undefined || couldBeSameTime(line.on.value, on.value));
      return couldBe ? [] : [{ copy, on, first, last }];
    });
    return found.length === 0 ? undefined : found;
  },
};

const order = (a: string | null, b: string | null) => (a ?? '').localeCompare(b ?? '', 'en');

/** Surely after the first day that the log is kept and before its last. */
function isInside(on: PartialDate, first: PartialDate, last: PartialDate): boolean {
  if (on.earliest === null || on.latest === null || first.latest === null || last.earliest === null) return false;
  return first.latest <= on.earliest && on.latest <= last.earliest;
}
