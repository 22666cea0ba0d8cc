import { casesOf } from '../cases.ts';
import { cutOrder } from './cut-order.ts';

const cuts = (...lines: readonly string[]) => ({
  'reels/a': `cuts:\n${lines.map((line) => `  - { ${line} }`).join('\n')}`,
});

export const cases = casesOf(cutOrder, [
  {
    when: 'cut 2 is dated before cut 1',
    given: cuts('number: "1", on: "1978-06-27"', 'number: "2", on: "1978-06-02"'),
    then: 'fires',
    says: ['1978-06-02 for cut 2', '1978-06-27 or later'],
    severity: 'warning',
  },
  {
    when: 'one number is listed twice',
    given: cuts('number: "1", on: "1978-06-27"', 'number: "1", on: "1978-07-02"'),
    then: 'fires',
    says: ['twice'],
    severity: 'warning',
  },
  {
    when: 'the contradiction rests on an approximate date',
    given: cuts('number: "1", on: "1978"', 'number: "2", on: "1977~"'),
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'both were cut within one year',
    given: cuts('number: "1", on: "1978-06-27"', 'number: "2", on: "1978"'),
    then: 'silent',
  },
  {
    when: 'they are listed last first',
    given: cuts('number: "2", on: "1978-07-02"', 'number: "1", on: "1978-06-27"'),
    then: 'silent',
  },
  {
    when: 'each side counts for itself',
    given: cuts('number: "1", side: "1", on: "1978-06-27"', 'number: "1", side: "2", on: "1978-06-27"'),
    then: 'silent',
  },
  {
    when: 'a reissue starts again at 1',
    given: {
      'editions/first': '',
      'editions/later': '',
      ...cuts('number: "2", edition: first, on: "1978-06-27"', 'number: "1", edition: later, on: "1985-01-11"'),
    },
    then: 'silent',
  },
]);
