import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';

/** Gives each way of naming a person one key, so that `hollin-overseas`, `Hollin Overseas` and the initials that only
 * that entry has are one client. Initials that several entries have, or none, stay as they are. */
export function personKeys(entries: Entries): (ref: PersonRef) => string {
  const byName = new Map<string, string>();
  const byInitials = new Map<string, string[]>();
  for (const person of entries.people) {
    byName.set(fold(person.title.value), person.id);
    byName.set(fold(person.id), person.id);
    for (const initials of itemsOf(person.initials)) {
      const key = fold(initials.value);
      byInitials.set(key, [...(byInitials.get(key) ?? []), person.id]);
    }
  }
  return (ref) => {
    switch (ref.is) {
      case 'entry':
        return `person:${ref.id}`;
      case 'owner':
        return 'owner';
      case 'initials': {
        const ids = byInitials.get(fold(ref.text)) ?? [];
        const [only] = ids;
        return only !== undefined && ids.length === 1 ? `person:${only}` : `text:${fold(ref.text)}`;
      }
      case 'text': {
        const id = byName.get(fold(ref.text));
        return id === undefined ? `text:${fold(ref.text)}` : `person:${id}`;
      }
    }
  };
}

/** A name without capitals, points and runs of spaces. */
const fold = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
