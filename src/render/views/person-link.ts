import type { PersonRef } from '#model/person.ts';
import { entryHref } from '../links.ts';
import { html, type Markup } from '../markup.ts';
import { asWritten } from '../words/fact.ts';
import { personWords } from '../words/person.ts';
import type { Lookup } from './lookup.ts';

/** Whoever did it: a link to their page, the owner, initials that nobody resolved, or the words of the entry. */
export function personLink(person: PersonRef, lookup: Lookup): Markup {
  if (person.is !== 'entry')
    return person.is === 'initials' ? html`${asWritten(person.text)}` : html`${personWords(person)}`;
  const name = lookup.person(person.id)?.title.value;
  return name === undefined ? html`${person.id}` : html`<a href="${entryHref('people', person.id)}">${name}</a>`;
}

/** The same without a link, for drawings and titles. */
export const personName = (person: PersonRef, lookup: Lookup): string =>
  person.is === 'entry' ? (lookup.person(person.id)?.title.value ?? person.id) : personWords(person);
