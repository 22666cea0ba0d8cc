import type { PartialDate } from '#model/dates.ts';
import { itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Person } from '#model/person-entry.ts';
import type { Reel } from '#model/reel.ts';
import type { CheckContext } from './context.ts';

/** Somebody named on a reel's entry, with what they did and when, as far as it is written. */
export interface Deed {
  readonly who: Known<PersonRef>;
  readonly what: string;
  readonly on: Known<PartialDate> | undefined;
}

/** Who did what with a reel. Those who held it are left out: an owner may hold a tape long after work has ended. */
export const PEOPLE_FACTS = {
  deeds: (reel: Reel) => deedsOf(reel),
  /** By people who have an entry with their years, each with that entry. */
  deedsByKnown: (reel: Reel, context: CheckContext) => {
    const found = deedsOf(reel).flatMap((deed) => {
      const person = deed.who.value.is === 'entry' ? context.people.get(deed.who.value.id) : undefined;
      const active = valueOf(person?.active);
      return person === undefined || active === undefined || deed.on === undefined
        ? []
        : [{ ...deed, on: deed.on, person, active }];
    });
    return found.length === 0 ? undefined : found;
  },
  /** Initials that are nobody's entry, each once, with who they could be. */
  unresolvedInitials: (reel: Reel, context: CheckContext) => {
    const seen = new Set<string>();
    const found = deedsOf(reel).flatMap((deed) => {
      const ref = deed.who.value;
      if (ref.is !== 'initials' || seen.has(plain(ref.text))) return [];
      seen.add(plain(ref.text));
      return [{ ...deed, initials: ref.text, people: context.peopleByInitials.get(plain(ref.text)) ?? [] }];
    });
    return found.length === 0 ? undefined : found;
  },
};

function deedsOf(reel: Reel): readonly Deed[] {
  const recorded = valueOf(reel.recorded);
  const recordedOn = recorded?.on;
  const deed = (
    who: Known<PersonRef> | undefined,
    what: string,
    on: Known<PartialDate> | undefined,
  ): readonly Deed[] => (who === undefined ? [] : [{ who, what, on }]);
  return [
    ...deed(recorded?.by, 'recorded it', recordedOn),
    ...deed(recorded?.for, 'had it recorded', recordedOn),
    ...deed(reel.client?.is === 'known' ? reel.client : undefined, 'had it made', recordedOn),
    ...itemsOf(reel.copyLog).flatMap((line) => [
      ...deed(line.by, 'ran a copy off from it', line.on),
      ...deed(line.for, 'had a copy run off from it', line.on),
    ]),
    ...itemsOf(reel.cuts).flatMap((cut) => deed(cut.by, 'cut from it', cut.on)),
    ...itemsOf(reel.condition).flatMap((inspection) => deed(inspection.by, 'looked at it', inspection.on)),
    ...itemsOf(reel.handling).flatMap((handling) => deed(handling.by, `did a ${handling.what.value}`, handling.on)),
  ];
}

/** Initials without points and spaces, in capitals. */
const plain = (text: string): string => text.replaceAll(/[^\p{L}]/gu, '').toUpperCase();

/** People by their initials, as their entries give them or as their names begin. */
export function peopleByInitials(people: readonly Person[]): ReadonlyMap<string, readonly Person[]> {
  const found = new Map<string, Set<Person>>();
  for (const person of people) {
    const given = itemsOf(person.initials).map((initials) => plain(initials.value));
    for (const key of [...given, initialsOfName(person.title.value)]) {
      if (key.length < 2) continue;
      found.set(key, (found.get(key) ?? new Set()).add(person));
    }
  }
  return new Map([...found].map(([key, group]) => [key, [...group]]));
}

const initialsOfName = (name: string): string =>
  name
    .split(/[\s-]+/u)
    .map((word) => plain(word).slice(0, 1))
    .join('');
