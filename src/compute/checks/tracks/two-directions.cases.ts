import { casesOf } from '../cases.ts';
import { twoDirections } from './two-directions.ts';

export const cases = casesOf(twoDirections, [
  {
    // C-132, C-289
    when: 'a half-track mono tape of both directions meets a full-track head',
    given: {
      'machines/desk': 'tracks: [full-track mono]',
      'reels/a': 'format: { tracks: half-track mono, direction: both }',
    },
    then: 'fires',
    says: ['full-track mono', 'backwards'],
    severity: 'warning',
    file: 'reels/a.md',
  },
  {
    // C-291
    when: 'a quarter-track stereo tape of both directions meets a two-track head',
    given: {
      'machines/desk': 'tracks: [two-track stereo]',
      'reels/a': 'format: { tracks: quarter-track stereo, direction: both }',
    },
    then: 'fires',
    says: ['two-track stereo'],
  },
  {
    when: 'another machine has the right head',
    given: {
      'machines/attic': 'tracks: [quarter-track stereo]',
      'machines/desk': 'tracks: [two-track stereo]',
      'reels/a': 'format: { tracks: quarter-track stereo, direction: both }',
    },
    then: 'silent',
  },
  {
    when: 'the tape is recorded in one direction only',
    given: {
      'machines/desk': 'tracks: [full-track mono]',
      'reels/a': 'format: { tracks: half-track mono, direction: one }',
    },
    then: 'silent',
  },
  {
    when: 'the left channel of a two-track head reads one direction by itself',
    given: {
      'machines/desk': 'tracks: [two-track stereo]',
      'reels/a': 'format: { tracks: half-track mono, direction: both }',
    },
    then: 'silent',
  },
  {
    when: 'nobody recorded whether there is a second direction',
    given: { 'machines/desk': 'tracks: [full-track mono]', 'reels/a': 'format: { tracks: half-track mono }' },
    then: 'silent',
  },
]);
