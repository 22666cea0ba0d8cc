import { byText } from '#model/diagnostic.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Reel } from '#model/reel.ts';

/** A part that somebody had in a reel. */
export interface Role {
  readonly role: string;
  readonly person: PersonRef;
}

/** Everyone whom a reel's entry names, with what they did. */
export function rolesOf(reel: Reel): readonly Role[] {
  const recorded = valueOf(reel.recorded);
  const client = valueOf(reel.client);
  const roles: (Role | undefined)[] = [
    client && { role: 'made for', person: client },
    recorded?.by && { role: 'recorded by', person: recorded.by.value },
    ...itemsOf(reel.copyLog).flatMap((line) => [
      line.for && { role: 'a copy for', person: line.for.value },
      line.by && { role: 'a copy by', person: line.by.value },
    ]),
    ...itemsOf(reel.cuts).map(
      (cut) => cut.by && { role: `cut ${cut.number?.value ?? ''}`.trim(), person: cut.by.value },
    ),
    ...itemsOf(reel.handling).map((one) => one.by && { role: one.what.value, person: one.by.value }),
    ...itemsOf(reel.custody).map((one) => ({ role: 'held by', person: one.holder.value })),
  ];
  return roles.filter((role) => role !== undefined);
}

export const rolesIn = (reel: Reel, id: string): readonly string[] => [
  ...new Set(
    rolesOf(reel)
      .filter(({ person }) => person.is === 'entry' && person.id === id)
      .map(({ role }) => role),
  ),
];

/** Initials on reels that no entry has, each with the reels that bear them; sorted. */
export function unresolvedInitials(reels: readonly Reel[]) {
  const found = new Map<string, Set<Reel>>();
  for (const reel of reels) {
    for (const { person } of rolesOf(reel)) {
      if (person.is === 'initials') found.set(person.text, (found.get(person.text) ?? new Set()).add(reel));
    }
  }
  return [...found]
    .map(([initials, named]) => ({ initials, reels: [...named] }))
    .sort((a, b) => byText(a.initials, b.initials));
}
