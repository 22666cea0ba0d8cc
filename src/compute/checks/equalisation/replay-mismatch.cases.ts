import { casesOf } from '../cases.ts';
import { replayMismatch } from './replay-mismatch.ts';

const TAPE = 'format: { speed: 15 in/s, equalisation: NAB, direction: one }';
const machine = (curves: string, more = '') =>
  `speeds: [7.5 in/s, 15 in/s]\nstate: working\nequalisations: [${curves}]${more}`;

export const cases = casesOf(replayMismatch, [
  {
    // C-052, C-056: +2.3 dB at 63 Hz, −2.7 dB at 16 kHz.
    when: 'the only machine has IEC for a NAB tape',
    given: { 'machines/desk': machine('{ speed: 15 in/s, curve: IEC }'), 'reels/a': TAPE },
    then: 'fires',
    says: ['+2.3 dB at 63 Hz', '−2.7 dB at 16 kHz', 'only machine'],
    severity: 'note',
    file: 'reels/a.md',
  },
  {
    when: 'two machines run at the speed, and both have the other curve',
    given: {
      'machines/attic': machine('{ speed: 15 in/s, curve: IEC }'),
      'machines/desk': machine('{ speed: 15 in/s, curve: CCIR }'),
      'reels/a': TAPE,
    },
    then: 'fires',
    says: ['machines that play it all have'],
  },
  {
    when: 'one of two machines has the curve',
    given: {
      'machines/attic': machine('{ speed: 15 in/s, curve: IEC }'),
      'machines/desk': machine('{ speed: 15 in/s, curve: NAB }'),
      'reels/a': TAPE,
    },
    then: 'silent',
  },
  {
    when: 'the machine has both positions at the speed',
    given: {
      'machines/desk': machine('{ speed: 15 in/s, curve: IEC }, { speed: 15 in/s, curve: NAB }'),
      'reels/a': TAPE,
    },
    then: 'silent',
  },
  {
    when: 'another name stands for the same time constants',
    given: {
      'machines/desk': machine('{ speed: 15 in/s, curve: CCIR }'),
      'reels/a': 'format: { speed: 15 in/s, equalisation: IEC }',
    },
    then: 'silent',
  },
  {
    when: 'the only machine with another curve doesn’t run at the tape’s speed',
    given: {
      'machines/desk': 'speeds: [7.5 in/s]\nstate: working\nequalisations: [{ speed: 7.5 in/s, curve: IEC }]',
      'reels/a': TAPE,
    },
    then: 'silent',
  },
  {
    when: 'nobody recorded the machine’s curves',
    given: { 'machines/desk': 'speeds: [15 in/s]', 'reels/a': TAPE },
    then: 'silent',
  },
]);
