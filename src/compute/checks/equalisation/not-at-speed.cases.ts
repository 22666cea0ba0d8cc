import { casesOf } from '../cases.ts';
import { notAtSpeed } from './not-at-speed.ts';

const reel = (speed: string, curve: string) => ({ 'reels/a': `format: { speed: ${speed}, equalisation: ${curve} }` });

export const cases = casesOf(notAtSpeed, [
  {
    // C-277
    when: 'AES stands on a 7½ in/s tape',
    given: reel('7.5 in/s', 'AES'),
    then: 'fires',
    says: ['AES goes with 30 in/s', 'NAB'],
    severity: 'warning',
  },
  {
    // C-278
    when: 'NAB stands on a 30 in/s tape',
    given: reel('30 in/s', 'NAB'),
    then: 'fires',
    says: ['AES'],
  },
  {
    // C-044
    when: 'AES stands on a 15 in/s tape',
    given: reel('15 in/s', 'AES'),
    then: 'fires',
    says: ['IEC'],
  },
  { when: 'AES stands on a 30 in/s tape', given: reel('30 in/s', 'AES'), then: 'silent' },
  { when: 'NAB stands on a 3¾ in/s tape', given: reel('9.5 cm/s', 'NAB'), then: 'silent' },
  { when: 'a house’s own position is given by its time constants', given: reel('30 in/s', '3180/50'), then: 'silent' },
  { when: 'the older name for the same curve is used', given: reel('15 in/s', 'CCIR'), then: 'silent' },
]);
