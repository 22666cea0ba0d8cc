import { casesOf } from '../cases.ts';
import { notActive } from './not-active.ts';

const PERSON = { 'people/tam-kestrel': 'title: Tam Kestrel\nactive: 1968/1985' };

export const cases = casesOf(notActive, [
  {
    when: 'a tape of 1991 was recorded by someone who stopped in 1985',
    given: { ...PERSON, 'reels/a': 'recorded: { on: "1991-03", by: tam-kestrel }' },
    then: 'fires',
    severity: 'note',
    says: ['Tam Kestrel', '1991-03', '1968/1985'],
  },
  {
    when: 'a cut is older than the cutter’s first known year',
    given: { ...PERSON, 'reels/a': 'cuts: [{ number: "1", on: "1966", by: tam-kestrel }]' },
    then: 'fires',
    says: 'cut from it',
  },
  {
    when: 'it was in the last of those years',
    given: { ...PERSON, 'reels/a': 'recorded: { on: "1985-12-30", by: tam-kestrel }' },
    then: 'silent',
  },
  {
    when: 'the date is a decade that reaches into them',
    given: { ...PERSON, 'reels/a': 'recorded: { on: "198X", by: tam-kestrel }' },
    then: 'silent',
  },
  {
    when: 'a former engineer kept the tape until long after',
    given: { ...PERSON, 'reels/a': 'custody: [{ holder: tam-kestrel, from: 1985, until: 2011 }]' },
    then: 'silent',
  },
  {
    when: 'nobody knows their years',
    given: { 'people/tam-kestrel': 'title: Tam Kestrel', 'reels/a': 'recorded: { on: "1991", by: tam-kestrel }' },
    then: 'silent',
  },
  { when: 'the tape has no date', given: { ...PERSON, 'reels/a': 'recorded: { by: tam-kestrel }' }, then: 'silent' },
]);
