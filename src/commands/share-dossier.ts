import { createHash } from 'node:crypto';
import { buildCatalogue } from '#catalogue';
import { dossierPlan } from '#compute/sharing/dossier-plan.ts';
import { keepWhatHolds } from '#compute/sharing/keep-what-holds.ts';
import { leftOutWords, planOf } from '#compute/sharing/plan.ts';
import { type Reduced, reduceEntries } from '#compute/sharing/reduce.ts';
import { notPrivate } from '#compute/sharing/scope.ts';
import { NAMEABLE } from '#compute/sharing/table.ts';
import type { Catalogue } from '#model/catalogue.ts';
import type { OwnShare } from '#model/dossier.ts';
import { valueOf } from '#model/fact.ts';
import type { Share } from '#model/share.ts';
import { catalogueJson } from '#publish/catalogue-json.ts';

/** The dossier of a share: the collection is reduced to what the share allows, and everything that the program says is
 * computed again from that.
 *
 * @param fingerprint  of the state of the catalogue. */
export function shareDossier(whole: Catalogue, share: Share, fingerprint: string): OwnShare {
  const reduced = reduceEntries(whole, share);
  const open = reduceEntries(whole, share, notPrivate);
  const compute = ({ entries, photographs, climate }: Reduced) =>
    buildCatalogue({ entries, problems: [], photographs, climate, today: whole.today });
  const kept = keepWhatHolds(whole, compute(reduced), compute(open), reduced);
  return {
    originals: reduced.originals,
    plan: planOf(share, reduced, whole),
    dossier: {
      title: share.title.value,
      to: valueOf(share.to),
      audience: share.audience.value,
      until: share.until?.is === 'known' ? share.until.written : undefined,
      lastDay: valueOf(share.until)?.latest ?? undefined,
      made: whole.today,
      fingerprint,
      leftOut: leftOutWords(reduced),
      reduced: kept,
      reels: reduced.shown.map((reel) => reduced.names.of('reel', reel.id)),
      plan: dossierPlan(whole, kept, reduced),
      shows: new Map(
        [...reduced.scopes].map(([id, allows]) => [
          reduced.names.of('reel', id),
          new Set([...NAMEABLE].filter(allows)),
        ]),
      ),
    },
  };
}

/** Why nothing is to be shown by a share yet: an error in the share itself, in collection.md, or in what any entry calls
 * private, since what was meant to stay out might go along. */
export function whyUncertain({ problems }: Catalogue, share: Share): string | undefined {
  const problem = problems.find(
    ({ severity, place }) =>
      severity === 'error' &&
      (place.file === share.file || place.file === 'collection.md' || /^private\b/.test(place.field)),
  );
  if (problem === undefined) return undefined;
  const { place, message } = problem;
  return `${place.file}:${place.line}: ${message} Mend that first: while it stands, what was meant to stay out might go along.`;
}

/** The state of a catalogue in twelve figures: the same entries on the same day give the same. */
export function fingerprintOf(catalogue: Catalogue): string {
  const hash = createHash('sha256');
  for (const part of catalogueJson(catalogue)) hash.update(part);
  return hash.digest('hex').slice(0, 12);
}

/** What each share would show, for its owner's pages. */
export function ownShares(catalogue: Catalogue): ReadonlyMap<string, OwnShare> {
  const { shares } = catalogue.entries;
  if (shares.length === 0) return new Map();
  const fingerprint = fingerprintOf(catalogue);
  return new Map(shares.map((share) => [share.id, shareDossier(catalogue, share, fingerprint)]));
}

/** The same, worked out when a page first asks: of a site that is being served few pages do, and an edit doesn't wait. */
export function ownSharesLater(catalogue: Catalogue): ReadonlyMap<string, OwnShare> {
  let made: ReadonlyMap<string, OwnShare> | undefined;
  const all = () => {
    made ??= ownShares(catalogue);
    return made;
  };
  return {
    get size() {
      return all().size;
    },
    get: (id) => all().get(id),
    has: (id) => all().has(id),
    forEach: (...given) => all().forEach(...given),
    entries: () => all().entries(),
    keys: () => all().keys(),
    values: () => all().values(),
    [Symbol.iterator]: () => all()[Symbol.iterator](),
  };
}
