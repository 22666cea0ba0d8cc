import type { Known } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';

/** A person as the entry has them: a name, an id, or `the owner`. */
export const personWritten = (who: Known<PersonRef>): string => (who.value.is === 'owner' ? 'the owner' : who.written);
