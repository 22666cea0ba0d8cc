import { casesOf } from '../cases.ts';
import { sideLetter } from './side-letter.ts';

export const cases = casesOf(sideLetter, [
  {
    when: 'side 2 bears side A’s number',
    given: { 'reels/a': 'side: "2"\nnumbers: { matrix: HLX 2207-A }' },
    then: 'fires',
    says: ['HLX 2207-A on side 2', 'letter B'],
    severity: 'warning',
  },
  {
    when: 'side A bears side D’s number',
    given: { 'reels/a': 'side: A\nnumbers: { matrix: HLX 2207 D }' },
    then: 'fires',
    says: ['letter A'],
  },
  {
    when: 'side 2 bears side B’s number',
    given: { 'reels/a': 'side: "2"\nnumbers: { matrix: HLX 2207-B2 }' },
    then: 'silent',
  },
  {
    when: 'the number has no letter',
    given: { 'reels/a': 'side: "2"\nnumbers: { matrix: "12345-3" }' },
    then: 'silent',
  },
  {
    when: 'the second disc of two is lettered A and B again',
    given: { 'reels/a': 'set: tide\nside: "3"\nnumbers: { matrix: HLX 2208-A }' },
    then: 'silent',
  },
  {
    when: 'four sides are coupled for an automatic changer',
    given: {
      'reels/a': 'set: tide\nside: "2"\nnumbers: { matrix: HLX 2208-A }',
      'reels/b': 'set: tide\nside: "4"\nnumbers: { matrix: HLX 2207-B }',
    },
    then: 'silent',
  },
  {
    when: 'a cassette master holds both sides and bears both numbers',
    given: { 'reels/a': 'side: ["1", "2"]\nnumbers: { matrix: [HLX 2207-A, HLX 2207-B] }' },
    then: 'silent',
  },
]);
