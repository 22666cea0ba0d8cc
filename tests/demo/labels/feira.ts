import { boxFront, FRONT } from '../box-front.ts';
import { stamp } from '../pens.ts';
import type { Shot } from '../shot.ts';
import { BACK, copyLog, LEGEND, type LogRow, legend, SPINE, spine } from '../sides.ts';
import { reelSeen, THING } from '../things.ts';
import { FORMS, rowsOf } from './copy-room.ts';

const GREY = '#a39b8b';

const of1974 = {
  speeds: ['7½', '15 in/s', '30'],
  speed: 1,
  curves: ['NAB', 'IEC'],
  curve: 1,
  tracks: ['mono', '2 tr. stereo'],
  track: 1,
  level: '320',
  noise: 'none',
  artist: 'Trio Varadouro',
  catalogue: 'MZV 3097',
  title: 'Feira de Inverno',
} as const;

const line = (n: number, pen: LogRow['pen'], ...cells: LogRow['cells']): LogRow => ({
  cells,
  pen,
  reading: { of: `copy-log[${n - 1}]` },
});

const log: readonly LogRow[] = [
  line(1, 'rui', '12.9.74', 'corte / cutting', '15', 'Cutting', ''),
  line(2, 'rui', '3.10.74', 'Vanterly Overseas', '15', 'Copy', 'WQX 4188'),
  line(3, 'rui', '3.10.74', 'Vanterly Overseas', '15', 'Copy', 'WQX 4189'),
  line(4, 'rui', '4.10.74', 'Vanterly Overseas', '15', 'Safety', ''),
  line(5, 'rui', '18.11.74', 'Casa Brumal', '15', 'Copy', ''),
  line(6, 'rui', '22.1.75', 'Onda Quieta', '15', 'Copy', ''),
  line(7, 'pencil', '5.6.75', 'cassete', '7½', 'Running', 'MZC 97'),
  line(8, 'pencil', '11.2.76', 'arquivo', '15', 'Safety', ''),
  line(9, 'felt', '30.9.77', 'Casa Brumal', '15', 'Copy', ''),
  line(10, 'felt', '4.78', 'Correio do Ar', '15', '', ''),
  line(11, 'felt', '2.10.80', 'Onda Quieta', '15', 'Copy', ''),
  line(12, 'typed', '18.3.81', 'PORTAS DO CAIS', '15', 'PROD.', 'MZV 3152'),
  line(13, 'ruiOld', '7.2.84', 'Onda Quieta', '15', 'Copy', ''),
  line(14, 'ruiOld', '3.5.88', 'corte novo', '15', 'Cutting', 'MZV 6097'),
];

const master: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'cloth',
    held: [0.7, 1.2, 1.3],
    taken: '2026-03-02T11:02:12',
    body: boxFront({
      ...FORMS.of1974,
      carton: GREY,
      seed: 51,
      rows: rowsOf({
        ...of1974,
        matrix: 'MZV 3097-A  -B',
        matrixReading: { as: 'MZV 3097-A  -B', sure: 'likely' },
        length: '36\' 22"',
        to: 'ALCATRUZ',
        date: '5.9.74',
        by: 'R.S.',
        kind: 1,
        remarks: 'A + B.  tail out.  1k 10k 100 at head',
        remarksOf: 'format.tones',
        markerPen: 'red',
      }),
      over: stamp(860, 1176, 'NÃO EMPRESTAR', '#7a2a22', -5, 46),
    }),
  },
  {
    file: 'box-back.jpg',
    shows: 'box back',
    ...BACK,
    on: 'cloth',
    held: [-0.3, 1.2, 0.2],
    taken: '2026-03-02T11:05:50',
    camera: { captioned: true },
    body: copyLog(
      GREY,
      '#e7dfc6',
      '#2f5b41',
      'MZV 3097 · Feira de Inverno · fita de produção / production master',
      log,
      52,
    ),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [0.2, 0, -0.7],
    light: [0.4, 0],
    taken: '2026-03-02T11:08:27',
    body: spine(
      GREY,
      '#e4dbc0',
      [
        { text: 'VARADOURO  Feira de Inverno  A+B', reading: { of: 'title' } },
        { text: 'MZV 3097  PROD. MASTER  38 CM/S IEC', reading: { of: 'format.speed' } },
      ],
      'F 31',
      53,
    ),
  },
  {
    file: 'reel.jpg',
    shows: 'reel',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    taken: '2026-03-02T11:12:01',
    body: reelSeen('#c9c9c4', '#6a3f2b', 425, [
      { text: 'MZV 3097', reading: { of: 'numbers.catalogue' } },
      { text: 'A + B  tail' },
    ]),
  },
];

const side1: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [-1.4, 1.2, 0.9],
    taken: '2026-03-02T11:20:36',
    body: boxFront({
      ...FORMS.of1974,
      carton: '#b08d5c',
      seed: 61,
      rows: rowsOf({
        ...of1974,
        side: '1',
        matrix: 'WQX 4188',
        length: '17\' 52"',
        job: '1861',
        from: 'MZV 3097 master, A',
        to: 'VANTERLY  OVERSEAS',
        date: '3.10.74',
        by: 'R.S.',
        kind: 2,
        remarks: '2 s gaps.  tail out.  tones at head',
        remarksOf: 'gaps',
      }),
      over: stamp(980, 1186, 'VNY 181', '#34467c', -9, 48),
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [-0.3, 0, 0.8],
    light: [0.6, 0],
    taken: '2026-03-02T11:22:15',
    body: spine(
      '#b08d5c',
      '#e8dfc7',
      [
        { text: 'VARADOURO  Feira de Inverno', reading: { of: 'title' } },
        { text: 'WQX 4188  COPY MASTER SIDE 1  15IPS IEC', reading: { of: 'numbers.matrix' } },
      ],
      undefined,
      62,
    ),
  },
  {
    file: 'legend.jpg',
    shows: 'legend',
    ...LEGEND,
    on: 'wood',
    held: [-1, 1.6, -1],
    taken: '2026-03-02T11:24:48',
    body: legend({
      paper: '#ece6d0',
      print: '#2f5b41',
      seed: 63,
      head: [
        { text: 'TRIO VARADOURO - FEIRA DE INVERNO' },
        { text: 'MZV 3097    SIDE 1    WQX 4188', reading: { of: 'numbers.matrix' } },
      ],
      rows: [
        { number: '1', title: 'FEIRA DE INVERNO', time: '4.21' },
        { number: '2', title: 'PREGAO', time: '2.37' },
        { number: '3', title: 'O VENDEDOR DE LENHA', time: '3.48' },
        { number: '4', title: 'BAILE DOS CALDEIREIROS', time: '3.05' },
        { number: '5', title: 'CASTANHAS', time: '3.53' },
      ],
      total: { text: 'TOTAL  4 GAPS OF 2S INCL.  17.52', reading: { of: 'length' } },
      foot: [
        { text: '1k 10k 100 at head, 320 nWb/m', reading: { of: 'format.tones' } },
        { text: 'WQX 4188-1  14.1.75 E.A.  OK', pen: 'edda', reading: { of: 'cuts' } },
      ],
    }),
  },
];

export const FEIRA: readonly Shot[] = [
  ...master.map((shot) => ({ reel: 'feira-master', ...shot })),
  ...side1.map((shot) => ({ reel: 'feira-side-1', ...shot })),
];
