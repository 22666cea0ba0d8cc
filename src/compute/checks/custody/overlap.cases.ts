import { casesOf } from '../cases.ts';
import { overlap } from './overlap.ts';

const custody = (...lines: string[]) => ({
  'reels/a': `custody:\n${lines.map((line) => `  - { ${line} }`).join('\n')}`,
});

export const cases = casesOf(overlap, [
  {
    when: 'the dealer bought it two years before the studio let it go',
    given: custody(
      'holder: Ostrel Studio, from: "1978", until: "1991"',
      'holder: A dealer in Ostrava, from: "1989", until: "2019"',
    ),
    then: 'fires',
    severity: 'warning',
    says: ['1991', '1989'],
  },
  {
    when: 'they are listed the other way round',
    given: custody('holder: owner, from: "1989-05"', 'holder: Ostrel Studio, from: "1978", until: "1989-08"'),
    then: 'fires',
  },
  {
    when: 'it rests on an “about”',
    given: custody('holder: Ostrel Studio, from: "1978", until: "1991~"', 'holder: A dealer, from: "1989"'),
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'both dates are the same year',
    given: custody('holder: Ostrel Studio, from: "1978", until: "1989"', 'holder: A dealer, from: "1989"'),
    then: 'silent',
  },
  {
    when: 'the studio lent it, and had it back',
    given: custody(
      'holder: Ostrel Studio, from: "1978", until: "1991"',
      'holder: A remix engineer, from: "1985", until: "1986", how: lent for a remix',
    ),
    then: 'silent',
  },
  {
    when: 'two people owned it together',
    given: custody('holder: Ana Brode, from: "1978", until: "1991"', 'holder: Iva Brode, from: "1978", until: "1991"'),
    then: 'silent',
  },
  {
    when: 'it changed hands some time within a span',
    given: custody('holder: Ostrel Studio, from: "1978", until: "1991"', 'holder: owner, from: "1989/1993"'),
    then: 'silent',
  },
  {
    when: 'nobody knows until when the first had it',
    given: custody('holder: Ostrel Studio, from: "1978"', 'holder: owner, from: "1989"'),
    then: 'silent',
  },
  {
    when: 'nobody knows from when the second had it',
    given: custody('holder: Ostrel Studio, from: "1978", until: "1991"', 'holder: owner'),
    then: 'silent',
  },
]);
