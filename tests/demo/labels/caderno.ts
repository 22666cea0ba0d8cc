import { boxFront, FRONT } from '../box-front.ts';
import { stamp, written } from '../pens.ts';
import type { Shot } from '../shot.ts';
import { BACK, copyLog, LEGEND, legend, SPINE, spine } from '../sides.ts';
import { pancake, THING, tapeEnd } from '../things.ts';
import { exportBack } from './backs.ts';
import { FORMS, rowsOf } from './copy-room.ts';

const GREEN = '#5d6a58';

const overseas = {
  speeds: ['7½', '15', '30 in/s'],
  speed: 2,
  curves: ['NAB', 'IEC', 'AES'],
  curve: 2,
  tracks: ['mono', '2 tr. stereo'],
  track: 1,
  level: '320',
  noise: 'none',
  to: 'VANTERLY  OVERSEAS',
  date: '18.2.77',
  by: 'R.S.',
  kind: 2,
  job: '2093',
  catalogue: 'MZV 3114',
  artist: 'Celina Brandalho',
  title: 'Caderno de Nevoeiro',
} as const;

const side1: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [-0.9, 1.6, -1.1],
    scale: 2.86,
    taken: '2026-03-02T10:14:08',
    camera: { profile: 'p3', captioned: true },
    body: boxFront({
      ...FORMS.of1977,
      carton: GREEN,
      seed: 12,
      rows: rowsOf({
        ...overseas,
        side: '1',
        matrix: 'WQX 4471',
        length: '19\' 26"',
        from: 'Prod. Mstr  MZV 3114 A',
        remarks: 'NO GAPS   tail out. sea bell in run-out',
        remarksOf: 'gaps',
      }),
      over:
        stamp(930, 1196, 'EXPORT 12', '#7a2a22', -7) +
        `<path d="M110 1128 q70 -8 152 2" stroke="#1d2f6b" stroke-width="4" fill="none" filter="url(#ink)"/>`,
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [0.4, 0, 1],
    light: [0.5, 0],
    taken: '2026-03-02T10:16:40',
    body: spine(
      GREEN,
      '#e8dfc7',
      [
        { text: 'BRANDALHO  Caderno de Nevoeiro', reading: { of: 'title' } },
        { text: 'MZV 3114  COPY MSTR SIDE 1  30IPS AES', reading: { of: 'numbers.catalogue' } },
      ],
      'box 12',
      31,
    ),
  },
  {
    file: 'legend.jpg',
    shows: 'legend',
    ...LEGEND,
    on: 'cloth',
    held: [1.1, 2, 0.8],
    taken: '2026-03-02T10:19:22',
    camera: { captioned: true },
    body: legend({
      paper: '#f0ead9',
      print: '#23415e',
      seed: 7,
      head: [
        { text: 'C. BRANDALHO - CADERNO DE NEVOEIRO' },
        { text: 'MZV 3114    SIDE 1    WQX 4471', reading: { of: 'numbers.matrix' } },
      ],
      rows: [
        { number: '1', title: 'NEVOEIRO (ABERTURA)', time: '2.48' },
        { number: '2', title: 'CASA DE NINGUEM', time: '4.05', note: 'hot vox' },
        { number: '3', title: 'CARTAS POR ABRIR', time: '3.37' },
        { number: '4', title: 'O FAROLEIRO', time: '5.12' },
        { number: '5', title: 'MARCHA DO SARGACO', time: '3.26', note: 'xfade in' },
        { number: '', title: 'RUN-OUT  SINO DO MAR', time: '  06' },
      ],
      total: { text: 'TOTAL INCL. RUN-OUT   19.26', reading: { of: 'length' } },
      foot: [
        { text: 'level 320 - tones NOT copied', reading: { of: 'format.tones' } },
        { text: 'WQX 4471-1 cut 1/2 speed  9.5.77 E.A.', pen: 'edda', reading: { of: 'cuts' } },
        {
          text: '-3 recut 2.6.77 E.A.  (-1 too hot)',
          pen: 'edda',
          reading: { of: 'cuts' },
        },
        { text: 'VNY 208', pen: 'red', x: 690, reading: { of: 'numbers.catalogue' } },
      ],
      over: '<circle cx="930" cy="1262" r="74" fill="none" stroke="#7b5a35" stroke-opacity=".3" stroke-width="10" filter="url(#rough)"/>',
    }),
  },
  {
    file: 'box-back.jpg',
    shows: 'box back',
    ...BACK,
    on: 'wood',
    held: [0.6, 1, 0.8],
    taken: '2026-03-02T10:21:03',
    body: exportBack(GREEN),
  },
  {
    file: 'pack.jpg',
    shows: 'pack',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    taken: '2026-03-02T10:30:45',
    body: pancake('#3b2f28', '12'),
  },
  {
    file: 'tape-end.jpg',
    shows: 'tape end',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    taken: '2026-03-02T10:33:10',
    body: tapeEnd({ leader: '#c43d2d', oxide: '#5b4030', back: '#2a2a2b', gum: false }),
    camera: { orientation: 3 },
  },
];

const side2: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [1.2, 1.4, 1],
    taken: '2026-03-02T10:41:55',
    body: boxFront({
      ...FORMS.of1977,
      carton: GREEN,
      seed: 26,
      rows: rowsOf({
        ...overseas,
        side: '2',
        matrix: 'WQX 4412',
        sevenOrOne: 6,
        matrixReading: { as: 'WQX 44{1|7}2', sure: 'likely' },
        length: '18\' 38"',
        from: 'Prod. Mstr  MZV 3114 B',
        remarks: 'NO GAPS   tail out',
        remarksOf: 'gaps',
      }),
      over: stamp(900, 1190, 'EXPORT 13', '#7a2a22', -4),
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [-0.5, 0, -1],
    light: [0.5, 0],
    taken: '2026-03-02T10:43:31',
    body: spine(
      GREEN,
      '#e8dfc7',
      [
        { text: 'BRANDALHO  Caderno de Nevoeiro', reading: { of: 'title' } },
        { text: 'MZV 3114  COPY MSTR SIDE 2  30IPS AES', reading: { of: 'numbers.catalogue' } },
      ],
      'box 13',
      32,
    ),
  },
];

const masterA: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'copy-log.jpg',
    shows: 'box back',
    ...BACK,
    on: 'cloth',
    held: [0.5, 3.5, -0.5],
    light: [0.7, 0.2],
    taken: '2020-08-14T16:02:19',
    note: "sent by Celina Brandalho's niece",
    body:
      copyLog(
        '#8a7a5f',
        '#e6dcc0',
        '#23415e',
        'MZV 3114 A · Caderno de Nevoeiro · fita de produção / production master',
        [
          { cells: ['30.11.76', 'arquivo', '15', 'Safety', ''], pen: 'rui', reading: { of: 'copy-log[0]' } },
          {
            cells: ['18.2.77', 'Vanterly Overseas', '30', 'Copy', 'WQX 4471'],
            pen: 'rui',
            reading: { of: 'copy-log[1]' },
          },
          { cells: ['4.10.78', 'Casa Brumal', '15', 'Copy', ''], pen: 'ruiOld', reading: { of: 'copy-log[2]' } },
          {
            cells: ['17.3.81', 'Portas do Cais', '15', 'Prod.', 'MZV 3152'],
            pen: 'felt',
            reading: { of: 'copy-log[3]' },
          },
        ],
        41,
      ) + written({ x: 120, y: 1140, text: 'devolver à Família Brandalho  6/89', pen: 'pencil', size: 64 }),
  },
];

export const CADERNO: readonly Shot[] = [
  ...side1.map((shot) => ({ reel: 'caderno-side-1', ...shot })),
  ...side2.map((shot) => ({ reel: 'caderno-side-2', ...shot })),
  ...masterA.map((shot) => ({ reel: 'caderno-master-a', ...shot })),
];
