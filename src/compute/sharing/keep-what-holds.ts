import type { Catalogue, ReelSheet } from '#model/catalogue.ts';
import type { Accepted, Diagnostic } from '#model/diagnostic.ts';
import type { Finding } from '#model/finding.ts';
import type { Playing } from '#model/playing.ts';
import type { Worked } from '#model/worked.ts';
import { reduceLineage } from './outside.ts';
import type { Reduced } from './reduce.ts';
import { keyOf } from './reel-lists.ts';
import type { Allows } from './scope.ts';

/** A share's catalogue, out of what the program says of the reduced entries, held against what it says of the whole
 * collection. A sentence that follows from the allowed facts alone goes along when it is true of the whole as well: so
 * none holds a fact that stays out, and none is there only because a fact is missing.
 *
 * @param whole  the owner's catalogue.
 * @param again  the catalogue computed from `reduced`.
 * @param open  the catalogue computed from all that isn't private, under the same names. */
export function keepWhatHolds(whole: Catalogue, again: Catalogue, open: Catalogue, reduced: Reduced): Catalogue {
  const { names, shown, scopes } = reduced;
  const some = (key: string) => [...scopes.values()].some((allows) => allows(key));
  const lineage = reduceLineage(whole.lineage, { names, reels: shown, cuts: some('cuts'), lineage: some('lineage') });
  const reels = shown.flatMap((reel): ReelSheet[] => {
    const id = names.of('reel', reel.id);
    const own = whole.reels.find((sheet) => sheet.reel.id === reel.id);
    const sheet = again.reels.find((one) => one.reel.id === id);
    const wide = open.reels.find((one) => one.reel.id === id);
    const allows = scopes.get(reel.id);
    const kin = lineage.byReel.get(id);
    if (own === undefined || sheet === undefined || allows === undefined || kin === undefined) return [];
    return [
      {
        reel: sheet.reel,
        numbers: sheet.numbers,
        worked: allows('worked')
          ? sheet.worked.filter((one) => own.worked.some((other) => sameFigure(one, other))).map(placeless)
          : [],
        findings: allows('findings') ? findingsThatHold(own, sheet, wide) : [],
        // What a machine needs is told to those who will play it, and so is what another curve would do.
        wrongCurves:
          allows('playing') && sheet.wrongCurves !== undefined ? { ...sheet.wrongCurves, place: undefined } : undefined,
        playing: allows('playing') ? playingTold(sheet, reduced.players) : { verdicts: [], needs: [] },
        lineage: kin,
        missing: allows('missing') ? own.missing.filter((key) => allows(key)) : [],
        problems: allows('problems') ? problemsThatHold(own, sheet, allows) : [],
      },
    ];
  });
  return {
    today: whole.today,
    entries: again.entries,
    reels,
    lineage,
    numbers: again.numbers,
    problems: [],
    accepted: acceptedThatHolds(whole, again, reduced),
    attention: [],
    photographs: reduced.photographs,
    climate: reduced.climate,
  };
}

const sameFigure = (a: Worked, b: Worked) => a.name === b.name && a.value === b.value && a.unit === b.unit;
const placeless = (worked: Worked): Worked => ({
  ...worked,
  inputs: worked.inputs.map(({ name, written, basis }) => ({ name, written, basis })),
});

/** Machines that are only named are judged by nothing. */
const playingTold = ({ playing }: ReelSheet, players: ReadonlySet<string>): Playing => ({
  verdicts: playing.verdicts.filter((verdict) => players.has(verdict.machine)),
  needs: playing.needs,
});

/** What a reel's entry accepts, where the share shows both that and what disagrees. */
function acceptedThatHolds(whole: Catalogue, again: Catalogue, { names, scopes }: Reduced): readonly Accepted[] {
  return again.accepted.flatMap((one) =>
    [...scopes].some(
      ([id, allows]) =>
        one.problem.place.file === `reels/${names.of('reel', id)}/index.md` &&
        mayBeTold(one.problem, allows) &&
        whole.accepted.some(({ problem }) => problem.code === one.problem.code),
    )
      ? [{ ...one, problem: { ...one.problem, related: [] } }]
      : [],
  );
}

const mayBeTold = ({ place }: Diagnostic, allows: Allows) =>
  allows('problems') && (place.field === '' || allows(keyOf(place.field)));

/** Problems of the same code at the same key of the entry. Those between entries may stand in the other one. */
function problemsThatHold(own: ReelSheet, again: ReelSheet, allows: Allows): readonly Diagnostic[] {
  const codes = new Set(own.problems.map((problem) => problem.code));
  return again.problems
    .filter((problem) => codes.has(problem.code) && mayBeTold(problem, allows))
    .map((problem) => ({ ...problem, related: [] }));
}

const UNTOLD = 'It rests on facts that are not part of this dossier.';

/** Findings as the allowed facts give them; one that rests on more is told by its outcome and its cautions only, and
 * one that rests on a private fact not at all. */
function findingsThatHold(own: ReelSheet, again: ReelSheet, open: ReelSheet | undefined): readonly Finding[] {
  return own.findings.flatMap((finding) => {
    const same = (one: Finding) =>
      one.rule === finding.rule && one.outcome === finding.outcome && one.observed === finding.observed;
    const told = again.findings.find(same);
    if (told !== undefined) return [told];
    const wide = open?.findings.find(same);
    if (wide === undefined) return [];
    return [{ ...wide, because: UNTOLD, action: 'Ask the owner before this reel is moved.', observed: false }];
  });
}
