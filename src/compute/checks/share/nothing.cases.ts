import { casesOf } from '../cases.ts';
import { nothing } from './nothing.ts';

export const cases = casesOf(nothing, [
  {
    when: 'its list is empty',
    given: { 'shares/one': 'for: friend\nreels: []' },
    then: 'fires',
    severity: 'error',
    says: 'nothing in it',
  },
  { when: 'it says none', given: { 'shares/one': 'for: valuer\nreels: none\nshows: [cuts]' }, then: 'fires' },
  { when: 'it shows one reel', given: { 'reels/a': '', 'shares/one': 'for: friend\nreels: [a]' }, then: 'silent' },
  {
    when: 'it shows a reel of which only the title is known',
    given: { 'reels/a': 'status: elsewhere', 'shares/one': 'for: engineer\nreels: [a]' },
    then: 'silent',
  },
  {
    when: 'it has ended',
    given: { 'reels/a': '', 'shares/one': 'for: friend\nreels: [a]\nuntil: "2020"' },
    then: 'silent',
  },
]);
