import { casesOf } from '../cases.ts';
import { gap } from './gap.ts';

const custody = (...lines: string[]) => ({
  'reels/a': `custody:\n${lines.map((line) => `  - { ${line} }`).join('\n')}`,
});

export const cases = casesOf(gap, [
  {
    when: 'a studio had it until 1989, and a dealer from 2019',
    given: custody('holder: Ostrel Studio, until: "1989-06"', 'holder: A dealer in Ostrava, from: "2019"'),
    then: 'fires',
    severity: 'note',
    says: ['1989-06', '2019', 'rather than guess'],
  },
  {
    when: 'a whole calendar year lies between',
    given: custody('holder: Ostrel Studio, until: "1999"', 'holder: owner, from: "2001"'),
    then: 'fires',
    says: 'the owner from 2001',
  },
  {
    when: 'one year ends where the next begins',
    given: custody('holder: Ostrel Studio, until: "1999"', 'holder: owner, from: "2000"'),
    then: 'silent',
  },
  {
    when: 'it was some months in a lawyer’s hands',
    given: custody('holder: Ostrel Studio, until: "1999-02"', 'holder: owner, from: "1999-11"'),
    then: 'silent',
  },
  {
    when: 'it changed hands some time within a span',
    given: custody('holder: Ostrel Studio, until: "1989/2005"', 'holder: owner, from: "2006-03"'),
    then: 'silent',
  },
  {
    when: 'nobody knows until when',
    given: custody('holder: Ostrel Studio, from: "1978"', 'holder: owner, from: "2019"'),
    then: 'silent',
  },
  {
    when: 'nobody knows from when',
    given: custody('holder: Ostrel Studio, until: "1989"', 'holder: owner'),
    then: 'silent',
  },
  { when: 'nothing is known of who had it', given: { 'reels/a': 'recorded: { on: "1978" }' }, then: 'silent' },
]);
