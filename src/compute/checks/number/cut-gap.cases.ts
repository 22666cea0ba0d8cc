import { casesOf } from '../cases.ts';
import { cutGap } from './cut-gap.ts';

const cuts = (...lines: readonly string[]) => ({
  'reels/a': `cuts:\n${lines.map((line) => `  - { ${line} }`).join('\n')}`,
});

export const cases = casesOf(cutGap, [
  {
    when: 'cuts 1 and 3 are known',
    given: cuts('number: "1"', 'number: "3"'),
    then: 'fires',
    says: ['cut 2'],
    severity: 'note',
  },
  { when: 'only cut 3 is known', given: cuts('number: "3", used: yes'), then: 'fires', says: ['cuts 1 and 2'] },
  { when: 'cuts 1 and 2 are known', given: cuts('number: "1", used: no', 'number: "2", used: yes'), then: 'silent' },
  {
    when: 'two sides share a reel, each with its cuts',
    given: cuts('number: "1", side: "1"', 'number: "2", side: "1"', 'number: "1", side: "2"'),
    then: 'silent',
  },
  {
    when: 'the reissue was cut from the same tape and counts on',
    given: {
      'editions/first': '',
      'editions/again': '',
      ...cuts('number: "1", edition: first', 'number: "2", edition: again'),
    },
    then: 'silent',
  },
  { when: 'the house letters its cuts', given: cuts('number: "1"', 'number: "C"'), then: 'silent' },
  { when: 'the number is a year and no count', given: cuts('number: "1"', 'number: "78"'), then: 'silent' },
]);
