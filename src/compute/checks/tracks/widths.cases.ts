import { casesOf } from '../cases.ts';
import { widths } from './widths.ts';

export const cases = casesOf(widths, [
  {
    // C-290
    when: 'a half-track mono tape of one direction meets a full-track head',
    given: {
      'machines/desk': 'tracks: [full-track mono]',
      'reels/a': 'format: { tracks: half-track mono, direction: one }',
    },
    then: 'fires',
    says: ['never recorded', 'noise'],
    severity: 'note',
    file: 'reels/a.md',
  },
  {
    // C-292, C-287: a head narrower than the track raises the bass by fringing.
    when: 'a full-track mono tape meets a two-track head',
    given: { 'machines/desk': 'tracks: [two-track stereo]', 'reels/a': 'format: { tracks: full-track mono }' },
    then: 'fires',
    says: ['below about 100 Hz raised by fringing'],
  },
  {
    when: 'a two-track tape meets a mono head that reads one of its channels',
    given: { 'machines/desk': 'tracks: [half-track mono]', 'reels/a': 'format: { tracks: two-track stereo }' },
    then: 'fires',
    says: ['the other is lost'],
  },
  {
    when: 'the head is the tape’s own',
    given: { 'machines/desk': 'tracks: [two-track stereo]', 'reels/a': 'format: { tracks: two-track stereo }' },
    then: 'silent',
  },
  {
    when: 'one machine of several has the head',
    given: {
      'machines/attic': 'tracks: [quarter-track stereo]',
      'machines/desk': 'tracks: [two-track stereo, full-track mono]',
      'reels/a': 'format: { tracks: full-track mono }',
    },
    then: 'silent',
  },
  {
    when: 'the left channel of a two-track head is just the half track',
    given: {
      'machines/desk': 'tracks: [two-track stereo]',
      'reels/a': 'format: { tracks: half-track mono, direction: one }',
    },
    then: 'silent',
  },
  {
    when: 'the only machine can’t run at the tape’s speed anyway',
    given: {
      'machines/desk': 'tracks: [quarter-track stereo]\nspeeds: [7.5 in/s]',
      'reels/a': 'format: { tracks: full-track mono, speed: 30 in/s }',
    },
    then: 'silent',
  },
]);
