import { casesOf } from '../cases.ts';
import { halfSpeedCut } from './half-speed-cut.ts';

const LP = { 'editions/lp': 'made-as: LP\nspeed: 33⅓ rpm' };
const reel = (format: string) => `edition: lp\nformat: { ${format} }\ncuts:\n  - { number: "1", half-speed: yes }`;

export const cases = casesOf(halfSpeedCut, [
  {
    // C-345: 30 in/s AES at half speed is 15 in/s IEC.
    when: 'a standard position is just right at half speed',
    given: { ...LP, 'reels/a': reel('speed: 30 in/s, equalisation: AES') },
    then: 'fires',
    says: ['15 in/s', '16⅔ rpm', '∞/35 µs', 'IEC', 'exact'],
    severity: 'note',
  },
  {
    // C-346: 15 in/s NAB at half speed wants 6360/100 µs, which no standard defines.
    when: 'no standard defines the position at half speed',
    given: { ...LP, 'reels/a': reel('speed: 15 in/s, equalisation: NAB') },
    then: 'fires',
    says: ['7.5 in/s', '6360/100 µs', 'no standard'],
  },
  {
    when: 'the tape’s curve isn’t recorded',
    given: { 'reels/a': 'format: { speed: 15 in/s }\ncuts:\n  - { number: "1", half-speed: yes }' },
    then: 'fires',
    says: ['half the record’s speed', /Record the tape’s equalisation/],
  },
  {
    when: 'the cut was made in real time',
    given: {
      ...LP,
      'reels/a':
        'edition: lp\nformat: { speed: 30 in/s, equalisation: AES }\ncuts:\n  - { number: "1", half-speed: no }',
    },
    then: 'silent',
  },
  {
    when: 'nobody recorded how the cut was made',
    given: {
      ...LP,
      'reels/a': 'edition: lp\nformat: { speed: 30 in/s, equalisation: AES }\ncuts:\n  - { number: "1", used: yes }',
    },
    then: 'silent',
  },
  {
    when: 'a copy was run at half speed and nothing was cut',
    given: { 'reels/a': 'format: { speed: 30 in/s }\ncopy-log:\n  - { on: "1978", speed: 15 in/s }' },
    then: 'silent',
  },
]);
