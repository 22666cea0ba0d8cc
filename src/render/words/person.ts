import type { PersonRef } from '#model/person.ts';

/** The words for a person whom no entry gives a name; an entry's own title is looked up by the page. */
export function personWords(person: Exclude<PersonRef, { is: 'entry' }>): string {
  return person.is === 'owner' ? 'the owner' : person.text;
}
