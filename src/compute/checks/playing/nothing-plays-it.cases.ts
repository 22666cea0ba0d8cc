import { casesOf } from '../cases.ts';
import { nothingPlaysIt } from './nothing-plays-it.ts';

const QUARTER = {
  'machines/desk':
    'width: 1/4 in\nspeeds: [7.5 in/s, 15 in/s]\nequalisations: [{ speed: 15 in/s, curve: IEC }]\ntracks: [two-track stereo]\nlargest-reel: 10.5 in\ntakes: [reel]\nnoise-reduction: none\nstate: working',
};
const TAPE =
  'pack: { wound-on: reel, reel-size: 10.5 in }\nformat: { width: 1/4 in, tracks: two-track stereo, speed: 15 in/s, equalisation: IEC, direction: one, noise-reduction: none }';

export const cases = casesOf(nothingPlaysIt, [
  {
    when: 'a half-inch tape meets a quarter-inch machine',
    given: { ...QUARTER, 'reels/wide': TAPE.replace('1/4 in', '1/2 in') },
    then: 'fires',
    severity: 'warning',
    says: ['width 1/2 in', 'desk'],
  },
  {
    when: 'a 30 in/s pancake meets a machine for reels at 15',
    given: {
      ...QUARTER,
      'reels/pancake':
        'pack: { wound-on: bare hub, outside-diameter: 260 mm }\nformat: { width: 1/4 in, tracks: two-track stereo, speed: 30 in/s, equalisation: AES, direction: one }',
    },
    then: 'fires',
    says: ['speed', 'half speed on IEC', 'noise reduction'],
  },
  {
    when: 'the only machine needs work',
    given: { 'machines/desk': QUARTER['machines/desk'].replace('working', 'needs work'), 'reels/a': TAPE },
    then: 'fires',
    says: ['state', /Have desk seen to/],
  },
  { when: 'the machine plays it', given: { ...QUARTER, 'reels/a': TAPE }, then: 'silent' },
  {
    when: 'one of two machines isn’t known well enough to say no',
    given: { ...QUARTER, 'machines/attic': 'title: Attic machine', 'reels/wide': TAPE.replace('1/4 in', '1/2 in') },
    then: 'silent',
  },
  {
    when: 'another curve makes it play with care',
    given: { ...QUARTER, 'reels/a': TAPE.replace('equalisation: IEC', 'equalisation: NAB') },
    then: 'silent',
  },
  { when: 'no machine is recorded', given: { 'reels/wide': TAPE.replace('1/4 in', '1/2 in') }, then: 'silent' },
  {
    when: 'the tape is somebody else’s',
    given: { ...QUARTER, 'reels/wide': `status: elsewhere\n${TAPE.replace('1/4 in', '1/2 in')}` },
    then: 'silent',
  },
  {
    when: 'nothing is recorded of its format',
    given: { ...QUARTER, 'reels/white-box': 'recorded: { on: "1978" }' },
    then: 'silent',
  },
]);
