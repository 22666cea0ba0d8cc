import { casesOf } from '../cases.ts';
import { logLacksCopy } from './log-lacks-copy.ts';

const LOG = 'copy-log: [{ on: "1976-11-30", reel: other }, { on: "1978-10-04" }, { on: "1981-03-17" }]';
const OTHER = { 'reels/other': '' };

export const cases = casesOf(logLacksCopy, [
  {
    when: 'the copy is dated between two lines and near neither',
    given: { ...OTHER, 'reels/master': LOG, 'reels/copy': 'recorded: { on: "1977-02-18" }\ncopied-from: [master]' },
    then: 'fires',
    severity: 'note',
    says: ['1977-02-18', '1976-11-30'],
  },
  {
    when: 'the copy’s month is known, and the log has nothing in it',
    given: { ...OTHER, 'reels/master': LOG, 'reels/copy': 'recorded: { on: "1980-05" }\ncopied-from: [master]' },
    then: 'fires',
  },
  {
    when: 'a line that names no reel has its date',
    given: { ...OTHER, 'reels/master': LOG, 'reels/copy': 'recorded: { on: "1978-10" }\ncopied-from: [master]' },
    then: 'silent',
  },
  {
    when: 'it was made after the log ends, when nobody kept it any more',
    given: { ...OTHER, 'reels/master': LOG, 'reels/copy': 'recorded: { on: "1994" }\ncopied-from: [master]' },
    then: 'silent',
  },
  {
    when: 'the log has a line without a date, which may be it',
    given: {
      'reels/master': 'copy-log: [{ on: "1976" }, { for: Ostrel Overseas }, { on: "1981" }]',
      'reels/copy': 'recorded: { on: "1978" }\ncopied-from: [master]',
    },
    then: 'silent',
  },
  {
    when: 'the parent has no log',
    given: { 'reels/master': '', 'reels/copy': 'recorded: { on: "1977" }\ncopied-from: [master]' },
    then: 'silent',
  },
  {
    when: 'the copy has no date',
    given: { ...OTHER, 'reels/master': LOG, 'reels/copy': 'copied-from: [master]' },
    then: 'silent',
  },
]);
