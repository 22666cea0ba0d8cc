import { boxFront, FRONT } from '../box-front.ts';
import { stamp } from '../pens.ts';
import type { Shot } from '../shot.ts';
import { BACK, SPINE, spine } from '../sides.ts';
import { guide, THING, tapeEnd } from '../things.ts';
import { insideLid } from './backs.ts';
import { FORMS, rowsOf } from './copy-room.ts';

const BLUE = '#3a6591';

const of1979 = {
  speeds: ['7½', '15 in/s', '30'],
  speed: 1,
  curves: ['NAB', 'IEC', 'AES'],
  curve: 0,
  tracks: ['mono', '2 tr. stereo'],
  track: 1,
  level: '320',
  noise: 'none',
  artist: 'Os Remendados',
  catalogue: 'MZV 3140',
  title: 'Lanterna e Cal',
  job: '2511',
  to: 'ALCATRUZ',
  date: '24.9.79',
  by: 'R.S.',
  kind: 3,
} as const;

const lanternaA: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [-1.1, 1, 1.4],
    taken: '2026-09-28T18:40:17',
    camera: { orientation: 6 },
    body: boxFront({
      ...FORMS.of1979,
      carton: BLUE,
      seed: 81,
      rows: rowsOf({
        ...of1979,
        side: 'A',
        matrix: 'MZV 3140-A',
        length: '18\' 34"',
        remarks: '3 s gaps.  tail out.  cut 11.10',
        remarksOf: 'gaps',
      }),
      over: stamp(840, 1180, 'CORTADA', '#34467c', -8, 48),
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [0.3, 0, 0.6],
    light: [0.5, 0],
    taken: '2026-09-28T18:42:03',
    body: spine(
      BLUE,
      '#efe9d8',
      [
        { text: 'REMENDADOS  Lanterna e Cal', reading: { of: 'title' } },
        { text: 'MZV 3140-A  CUTTING MASTER  15IPS NAB', reading: { of: 'numbers.matrix' } },
      ],
      undefined,
      82,
    ),
  },
  {
    file: 'tape-end.jpg',
    shows: 'tape end',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    taken: '2026-09-30T15:11:40',
    note: 'after the squeal; taken off by hand',
    body: tapeEnd({ leader: '#e8e2d2', oxide: '#5d3a24', back: '#77797c', gum: true }),
  },
  {
    file: 'guide.jpg',
    shows: 'other',
    ...THING,
    on: 'cloth',
    held: [0.5, 0, 0],
    taken: '2026-09-28T19:02:55',
    note: 'what fifty seconds left on the first guide',
    body: guide(),
  },
];

const lanternaB: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [1, 1.5, -0.8],
    taken: '2026-09-28T18:45:21',
    body: boxFront({
      ...FORMS.of1979,
      carton: BLUE,
      seed: 91,
      rows: rowsOf({
        ...of1979,
        side: 'B',
        matrix: 'MZV 3140-B',
        length: '17\' 24"',
        remarks: '3 s gaps.  tail out.',
        remarksOf: 'gaps',
      }),
    }),
  },
  {
    file: 'lid.jpg',
    shows: 'other',
    ...BACK,
    on: 'wood',
    held: [-0.6, 1, 0.5],
    taken: '2026-09-28T18:47:00',
    note: 'inside of the lid',
    body: insideLid(BLUE, 'aquecida 5/12, 8 h'),
  },
];

export const LANTERNA: readonly Shot[] = [
  ...lanternaA.map((shot) => ({ reel: 'lanterna-side-a', ...shot })),
  ...lanternaB.map((shot) => ({ reel: 'lanterna-side-b', ...shot })),
];
