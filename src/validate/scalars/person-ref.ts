import { isId } from '#model/entry-id.ts';
import type { PersonRef } from '#model/person.ts';
import { type Parsed, parsed, refused } from './parsed.ts';

const INITIALS = /^(?:\p{Lu}\.){1,6}$/u;

/** A person: an id in people/, `owner`, initials with points that nobody has resolved, or free text. Free text has a
 * space or a capital, so that a mistyped id is never taken for it. */
export function parsePersonRef(text: string): Parsed<PersonRef> {
  if (text === 'owner') return parsed({ is: 'owner' });
  if (isId(text)) return parsed({ is: 'entry', id: text });
  if (INITIALS.test(text)) return parsed({ is: 'initials', text });
  if (text === 'none') {
    return refused(
      '"none" names nobody.',
      'an id in people/, owner, initials such as T.K., or a name',
      'Leave the key out if it is not known who.',
    );
  }
  return parsed({ is: 'text', text });
}
