import { valueOf } from '#model/fact.ts';
import type { Person } from '#model/person-entry.ts';
import { listInWords } from '../../figure/in-words.ts';
import { couldBeSameTime } from '../../lineage/intervals.ts';
import { crossCheck, type KnownFacts } from '../check.ts';

type Unresolved = KnownFacts<'reel', 'unresolvedInitials'>['unresolvedInitials'][number];

/** Initials on a label that nobody has resolved, with who they could be by their years. */
export const initialsUnknown = crossCheck({
  code: 'people/initials-unknown',
  title: 'Initials that nobody resolved',
  severity: 'note',
  scope: 'reel',
  reads: ['unresolvedInitials'],
  judge: ({ unresolvedInitials }) =>
    unresolvedInitials.map((one) => {
      const could = one.people.filter((person) => wasThere(person, one));
      const names = could.map((person) => `${person.title.written} (${person.id})`);
      return {
        place: one.who.place,
        message: `Nobody has resolved the initials ${one.initials}, who ${one.what}.`,
        found: one.who.written,
        expected: could.length === 0 ? 'the id of an entry in people' : could.map((person) => person.id).join(', '),
        action: advice(names, one),
      };
    }),
});

function wasThere(person: Person, { on }: Unresolved): boolean {
  const active = valueOf(person.active);
  return active === undefined || on === undefined || couldBeSameTime(active, on.value);
}

function advice(names: readonly string[], { people }: Unresolved): string {
  if (names.length > 0) {
    return `Compare the handwriting with other labels: by initials and years they could be ${listInWords(names, 'or')}. Write the id only when you are sure; leave the initials otherwise.`;
  }
  const outside = people.length === 0 ? '' : ' Those with these initials worked in other years.';
  return `Compare the handwriting with other labels, and make an entry in people when you know.${outside} Leave the initials as they are until then.`;
}
