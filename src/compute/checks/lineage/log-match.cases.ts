import { casesOf } from '../cases.ts';
import { logMatch } from './log-match.ts';

const LOG = 'copy-log: [{ on: "1978-02-09", for: Ostrel Overseas, speed: 30 in/s, kind: copy master }]';
const COPY = 'kind: copy master\nclient: Ostrel Overseas\nrecorded: { on: "1978-02-09" }';

export const cases = casesOf(logMatch, [
  {
    when: 'day, client and kind fit',
    given: { 'reels/master': LOG, 'reels/white-box': COPY },
    then: 'fires',
    severity: 'note',
    says: ['the same day', 'same client', 'copied-from: [master]'],
    file: 'reels/white-box.md',
  },
  {
    when: 'the number fits, in another spelling, and the reel has no date',
    given: {
      'reels/master': 'copy-log: [{ on: "1978-02-09", number: QVX 101-A }]',
      'reels/white-box': 'numbers: { matrix: [QVX101A] }',
    },
    then: 'fires',
    says: 'the same number',
  },
  {
    when: 'the copy is linked already',
    given: { 'reels/master': LOG, 'reels/white-box': `${COPY}\ncopied-from: [master]` },
    then: 'silent',
  },
  {
    when: 'the reel is known to be a first tape',
    given: { 'reels/master': LOG, 'reels/white-box': `${COPY}\ncopied-from: none` },
    then: 'silent',
  },
  {
    when: 'the same client had another copy run a year later',
    given: {
      'reels/master': LOG,
      'reels/white-box': 'kind: copy master\nclient: Ostrel Overseas\nrecorded: { on: "1979-02-09" }',
    },
    then: 'silent',
  },
  {
    when: 'speed and kind are all that fits',
    given: {
      'reels/master': 'copy-log: [{ speed: 30 in/s, kind: copy master }]',
      'reels/white-box': 'kind: copy master\nformat: { speed: 30 in/s }',
    },
    then: 'silent',
  },
  { when: 'nobody copied the log', given: { 'reels/master': '', 'reels/white-box': COPY }, then: 'silent' },
]);
