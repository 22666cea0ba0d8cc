import { casesOf } from '../cases.ts';
import { unknownFact } from './unknown-fact.ts';

const share = (more: string) => ({ 'reels/a': '', 'shares/one': `for: valuer\nreels: [a]\n${more}` });

export const cases = casesOf(unknownFact, [
  {
    when: 'a key is misspelt',
    given: share('shows: [condtion]'),
    then: 'fires',
    severity: 'error',
    says: ['condtion', 'Write condition'],
  },
  {
    when: 'a part is named without the whole that it is a part of',
    given: share('shows-private: [price]'),
    then: 'fires',
    says: 'custody.price',
  },
  {
    when: 'it means to show what no share shows: the owner’s notes',
    given: share('shows-private: [notes]'),
    then: 'fires',
  },
  { when: 'it is like nothing that there is', given: share('shows: [weather]'), then: 'fires', says: 'recorded.on' },
  { when: 'it names a part of a list', given: share('shows: [contents.note, copy-log.note]'), then: 'silent' },
  {
    when: 'it names a private fact, meaning to',
    given: share('shows-private: [place, custody.price]'),
    then: 'silent',
  },
  { when: 'it names a private fact among the others', given: share('shows: [place]'), then: 'silent' },
  { when: 'it adds nothing', given: share('to: Ilda'), then: 'silent' },
]);
