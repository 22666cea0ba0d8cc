import { casesOf } from '../cases.ts';
import { dateTrap } from './date-trap.ts';

const reel = (speed: string, curve: string, on?: string) => ({
  'reels/a': `format: { speed: ${speed}, equalisation: ${curve} }${on === undefined ? '' : `\nrecorded: { on: "${on}" }`}`,
});

export const cases = casesOf(dateTrap, [
  {
    // C-279: then ∞/35, now ∞/17.5.
    when: 'a 30 in/s tape of 1972 says IEC',
    given: reel('30 in/s', 'IEC', '1972'),
    then: 'fires',
    says: ['∞/35 µs', '∞/17.5 µs'],
    severity: 'note',
  },
  {
    // C-280: then ∞/100, later ∞/70.
    when: 'a 7½ in/s tape of 1964 says CCIR',
    given: reel('7.5 in/s', 'CCIR', '1964'),
    then: 'fires',
    says: ['∞/100 µs', '∞/70 µs'],
  },
  {
    when: 'a 30 in/s tape says IEC and nobody recorded the year',
    given: reel('30 in/s', 'IEC'),
    then: 'fires',
    says: [/Record when the tape was made/],
  },
  {
    // C-045: sources differ on the year of the change.
    when: 'a 7½ in/s tape was made in the years in which the sources differ',
    given: reel('7.5 in/s', 'CCIR', '1966'),
    then: 'fires',
    says: ['∞/100 µs', '∞/70 µs', 'Sources differ'],
  },
  { when: 'a 30 in/s tape of 1990 says IEC', given: reel('30 in/s', 'IEC', '1990'), then: 'silent' },
  { when: 'the name says which of the two it is', given: reel('30 in/s', 'IEC1', '1972'), then: 'silent' },
  { when: 'the name meant one curve in every year', given: reel('15 in/s', 'CCIR', '1964'), then: 'silent' },
  { when: 'the time constants are written out', given: reel('7.5 in/s', 'inf/100'), then: 'silent' },
]);
