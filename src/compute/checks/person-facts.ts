import type { Person } from '#model/person-entry.ts';
import type { CheckContext } from './context.ts';

/** Facts about one person. */
export const PERSON_FACTS = {
  person: (person: Person) => person,
  today: (_person: Person, context: CheckContext) => context.today,
};
