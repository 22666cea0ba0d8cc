import { casesOf } from '../cases.ts';
import { stereoFromMono } from './stereo-from-mono.ts';

const STEREO = 'format: { tracks: two-track stereo }';
const MONO = 'format: { tracks: full-track mono }';

export const cases = casesOf(stereoFromMono, [
  {
    when: 'a two-track copy comes from a full-track tape',
    given: { 'reels/copy': `${STEREO}\ncopied-from: [master]`, 'reels/master': MONO },
    then: 'fires',
    severity: 'warning',
    says: ['two-track stereo', 'full-track mono'],
  },
  {
    when: 'a quarter-track copy comes from two half-track tapes',
    given: {
      'reels/copy': 'format: { tracks: quarter-track stereo }\ncopied-from: [one, two]',
      'reels/one': 'format: { tracks: half-track mono }',
      'reels/two': 'format: { tracks: half-track mono }',
    },
    then: 'fires',
  },
  {
    when: 'a mono copy was made of a stereo master',
    given: { 'reels/copy': `${MONO}\ncopied-from: [master]`, 'reels/master': STEREO },
    then: 'silent',
  },
  {
    when: 'a compilation joins mono and stereo titles',
    given: { 'reels/best-of': `${STEREO}\ncopied-from: [old, new]`, 'reels/old': MONO, 'reels/new': STEREO },
    then: 'silent',
  },
  {
    when: 'the copy’s tracks aren’t recorded',
    given: { 'reels/copy': 'copied-from: [master]', 'reels/master': MONO },
    then: 'silent',
  },
  {
    when: 'the parent’s tracks aren’t recorded',
    given: { 'reels/copy': `${STEREO}\ncopied-from: [master]`, 'reels/master': '' },
    then: 'silent',
  },
  { when: 'nothing is said of its parent', given: { 'reels/copy': STEREO, 'reels/master': MONO }, then: 'silent' },
]);
