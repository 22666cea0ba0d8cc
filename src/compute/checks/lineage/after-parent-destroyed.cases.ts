import { casesOf } from '../cases.ts';
import { afterParentDestroyed } from './after-parent-destroyed.ts';

const GONE = 'status: destroyed\nleft: { how: destroyed, on: "1991-08" }';

export const cases = casesOf(afterParentDestroyed, [
  {
    when: 'the copy is two years younger than the fire',
    given: { 'reels/copy': 'recorded: { on: "1993" }\ncopied-from: [master]', 'reels/master': GONE },
    then: 'fires',
    severity: 'warning',
    says: ['1991-08', '1993'],
  },
  {
    when: 'the log of the destroyed reel names it',
    given: { 'reels/copy': 'recorded: { on: "1991-09-01" }', 'reels/master': `${GONE}\ncopy-log: [{ reel: copy }]` },
    then: 'fires',
  },
  {
    when: 'the copy was made in the month of the fire',
    given: { 'reels/copy': 'recorded: { on: "1991-08-03" }\ncopied-from: [master]', 'reels/master': GONE },
    then: 'silent',
  },
  {
    when: 'the parent was sold, and lent back for the copy',
    given: {
      'reels/copy': 'recorded: { on: "1993" }\ncopied-from: [master]',
      'reels/master': 'status: gone\nleft: { how: sold, on: "1991-08" }',
    },
    then: 'silent',
  },
  {
    when: 'it isn’t known when the parent was destroyed',
    given: { 'reels/copy': 'recorded: { on: "1993" }\ncopied-from: [master]', 'reels/master': 'status: destroyed' },
    then: 'silent',
  },
  {
    when: 'the copy has no date',
    given: { 'reels/copy': 'copied-from: [master]', 'reels/master': GONE },
    then: 'silent',
  },
  {
    when: 'nothing is said of its parent',
    given: { 'reels/copy': 'recorded: { on: "1993" }', 'reels/master': GONE },
    then: 'silent',
  },
]);
