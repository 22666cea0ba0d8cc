import { casesOf } from '../cases.ts';
import { initialsUnknown } from './initials-unknown.ts';

const TAM = { 'people/tam-kestrel': 'title: Tam Kestrel\ninitials: [T.K.]\nactive: 1968/1985' };

export const cases = casesOf(initialsUnknown, [
  {
    when: 'two people could be meant',
    given: { ...TAM, 'people/tove-karr': 'title: Tove Karr', 'reels/a': 'recorded: { on: "1978", by: T.K. }' },
    then: 'fires',
    severity: 'note',
    says: ['Tam Kestrel', 'Tove Karr'],
  },
  {
    when: 'nobody with those initials is known',
    given: { 'reels/a': 'cuts: [{ number: "1", by: R.S. }]' },
    then: 'fires',
    says: ['R.S.', 'make an entry'],
  },
  {
    when: 'the one with those initials worked in other years',
    given: { ...TAM, 'reels/a': 'recorded: { on: "1991", by: T.K. }' },
    then: 'fires',
    says: 'other years',
  },
  {
    when: 'the entry is named',
    given: { ...TAM, 'reels/a': 'recorded: { on: "1978", by: tam-kestrel }' },
    then: 'silent',
  },
  {
    when: 'a whole name is written without an entry',
    given: { ...TAM, 'reels/a': 'recorded: { on: "1978", by: Tam the tape op }' },
    then: 'silent',
  },
  {
    when: 'the owner did it',
    given: { 'reels/a': 'condition: [{ on: "2026", by: owner, found: [none] }]' },
    then: 'silent',
  },
  { when: 'nobody is named', given: { ...TAM, 'reels/a': 'recorded: { on: "1978" }' }, then: 'silent' },
]);
