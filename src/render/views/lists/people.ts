import { itemsOf } from '#model/fact.ts';
import { entryHref } from '../../links.ts';
import { notRecorded } from '../../marks.ts';
import { joined } from '../../markup.ts';
import { dateWords } from '../../words/date.ts';
import { asWritten, factWords } from '../../words/fact.ts';
import { listed } from '../../words/number.ts';
import { entryList } from './entry-list.ts';

export const peopleList = entryList({
  path: 'people',
  title: 'People',
  of: 'people',
  part: 'people',
  heading: 'Known',
  columns: ['Name', 'Initials', 'Did', 'Active'],
  empty: 'An entry in people/ is an engineer, a client or a former owner, with the initials used on labels.',
  all: ({ entries }) => entries.people,
  titleOf: ({ title }) => title.value,
  row: (person) => ({
    to: entryHref('people', person.id),
    cells: [
      factWords(person.initials, (all) =>
        joined(
          all.map((one) => asWritten(one.value)),
          ', ',
        ),
      ),
      person.did ? listed(itemsOf(person.did).map((one) => one.value)) : notRecorded(),
      factWords(person.active, dateWords),
    ],
  }),
});
