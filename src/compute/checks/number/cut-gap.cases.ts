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
  {
    when: 'copies of an edition bear cuts 1 and 3',
    given: {
      'editions/e': 'run-outs: [{ side: A, written: KK 1207-A1 }, { side: A, written: KK 1207-A3, cut: "3" }]',
    },
    then: 'fires',
    says: ['cut 3', 'cut 2', 'KK 1207-A3'],
    severity: 'note',
    file: 'editions/e.md',
  },
  {
    when: 'the box knows cut 1, and a copy bears cut 3',
    given: {
      'editions/e': 'run-outs: [{ side: A, written: KK 1207-A-3 }]',
      'reels/a': 'edition: e\nside: "1"\ncuts: [{ number: "1" }]',
    },
    then: 'fires',
    says: 'cut 2',
    file: 'editions/e.md',
  },
  {
    when: 'the cut that the box leaves out is on a copy',
    given: {
      'editions/e': 'run-outs: [{ side: A, written: KK 1207-A2 }]',
      'reels/a': 'edition: e\nside: "1"\ncuts: [{ number: "1" }, { number: "3" }]',
    },
    then: 'silent',
  },
  {
    when: 'the one copy seen bears a late cut',
    given: { 'editions/e': 'run-outs: [{ side: A, written: KK 1207-A5 }, { side: B, written: KK 1207-B1 }]' },
    then: 'silent',
  },
]);
