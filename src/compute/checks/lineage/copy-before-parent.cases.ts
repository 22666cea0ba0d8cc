import { casesOf } from '../cases.ts';
import { copyBeforeParent } from './copy-before-parent.ts';

export const cases = casesOf(copyBeforeParent, [
  {
    when: 'the copy is four months older',
    given: {
      'reels/copy': 'recorded: { on: "1978-02" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1978-06-20" }',
    },
    then: 'fires',
    severity: 'warning',
    says: ['1978-06-20', '1978-02'],
    file: 'reels/master.md',
  },
  {
    when: 'day and month turned round would agree',
    given: {
      'reels/copy': 'recorded: { on: "1978-03-06" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1978-05-20" }',
    },
    then: 'fires',
    says: '1978-06-03',
  },
  {
    when: 'only the master’s log names the copy',
    given: {
      'reels/copy': 'recorded: { on: "1971" }',
      'reels/master': 'recorded: { on: "1974" }\ncopy-log: [{ reel: copy }]',
    },
    then: 'fires',
  },
  {
    when: 'it rests on an “about”',
    given: {
      'reels/copy': 'recorded: { on: "1973~" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1974" }',
    },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'the copy was run off on the day of the mix',
    given: {
      'reels/copy': 'recorded: { on: "1978-06-20" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1978-06-20" }',
    },
    then: 'silent',
  },
  {
    when: 'the master was worked on over months, and the copy made in one of them',
    given: {
      'reels/copy': 'recorded: { on: "1978-02-09" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1977-11/1978-03" }',
    },
    then: 'silent',
  },
  {
    when: 'the box of the copy has a year only, the same as the master’s',
    given: {
      'reels/copy': 'recorded: { on: "1978" }\ncopied-from: [master]',
      'reels/master': 'recorded: { on: "1978-11-30" }',
    },
    then: 'silent',
  },
  {
    when: 'the copy has no date',
    given: { 'reels/copy': 'copied-from: [master]', 'reels/master': 'recorded: { on: "1978" }' },
    then: 'silent',
  },
  {
    when: 'the master has no date',
    given: { 'reels/copy': 'recorded: { on: "1971" }\ncopied-from: [master]', 'reels/master': '' },
    then: 'silent',
  },
  {
    when: 'it isn’t known what it was copied from',
    given: { 'reels/copy': 'recorded: { on: "1971" }', 'reels/master': 'recorded: { on: "1974" }' },
    then: 'silent',
  },
]);
