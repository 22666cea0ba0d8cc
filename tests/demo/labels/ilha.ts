import { boxFront, FRONT } from '../box-front.ts';
import { stamp } from '../pens.ts';
import type { Shot } from '../shot.ts';
import { LEGEND, legend, SPINE, spine } from '../sides.ts';
import { FORMS, rowsOf } from './copy-room.ts';

const BLUE = '#3f6790';

const ilha: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [0.5, 1.8, -1.4],
    taken: '2026-03-02T11:31:09',
    body: boxFront({
      ...FORMS.of1977,
      carton: BLUE,
      seed: 71,
      rows: rowsOf({
        speeds: ['7½', '15', '30 in/s'],
        speed: 2,
        curves: ['NAB', 'IEC', 'AES'],
        curve: 2,
        tracks: ['mono', '2 tr. stereo'],
        track: 1,
        level: '320',
        noise: 'none',
        artist: 'Teodoro Vaz-Lume',
        title: 'Ilha Quase',
        catalogue: 'VNY 231',
        side: '1',
        matrix: 'WQX 4533',
        matrixReading: { as: 'WQX 4{5?}33', sure: 'likely' },
        length: '20\' 31"',
        job: '2240',
        to: 'VANTERLY  OVERSEAS',
        date: '14.3.78',
        by: 'R.S.',
        kind: 2,
        remarks: 'no gaps.  tail out.',
        remarksOf: 'gaps',
      }),
      over:
        stamp(900, 1180, 'EXPORT 4', '#7a2a22', -6) +
        '<path d="M1000 392 q26 -16 74 -4" stroke="#6a4a20" stroke-opacity=".72" stroke-width="40" stroke-linecap="round" fill="none" filter="url(#near-line)"/>',
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [0.5, 0, -0.8],
    light: [0.45, 0],
    taken: '2026-03-02T11:33:44',
    body: spine(
      BLUE,
      '#e6ddc4',
      [
        { text: 'VAZ-LUME  Ilha Quase  SIDE 1', reading: { of: 'title' } },
        { text: 'WQX 4533  COPY MASTER  30IPS AES', reading: { of: 'numbers.matrix' } },
      ],
      'box 4',
      72,
    ),
  },
  {
    file: 'legend.jpg',
    shows: 'legend',
    ...LEGEND,
    on: 'cloth',
    held: [0.8, 1.2, 1.2],
    taken: '2026-03-02T11:36:02',
    body: legend({
      paper: '#efe8d6',
      print: '#23415e',
      seed: 73,
      head: [
        { text: 'T. VAZ-LUME - ILHA QUASE' },
        { text: 'VNY 231    SIDE 1    WQX 4533', reading: { of: 'numbers.matrix' } },
      ],
      rows: [
        { number: '1', title: 'ILHA QUASE', time: '5.44' },
        { number: '2', title: 'FAROIS GEMEOS', time: '4.17' },
        { number: '3', title: 'AGUA PARADA', time: '3.52' },
        { number: '4', title: 'ISTMO', time: '6.38' },
      ],
      total: { text: 'TOTAL  20.31', reading: { of: 'length' } },
      foot: [
        { text: 'other side: WQX 4534, 19.47' },
        { text: 'WQX 4533-1 1/2 speed 20.7.78 E.A.', pen: 'edda', reading: { of: 'cuts' } },
      ],
    }),
  },
];

export const ILHA: readonly Shot[] = ilha.map((shot) => ({ reel: 'ilha-side-1', ...shot }));
