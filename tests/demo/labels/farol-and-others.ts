import { boxFront, FRONT } from '../box-front.ts';
import { carton, sheet } from '../paper.ts';
import { written } from '../pens.ts';
import type { Shot } from '../shot.ts';
import { LEGEND, legend, SPINE, spine } from '../sides.ts';
import { reelSeen, THING } from '../things.ts';
import { FORMS, rowsOf } from './copy-room.ts';
import { oldFront } from './old-front.ts';

const farol: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'wood',
    held: [0.9, 1.4, 1.2],
    light: [0.7, 0.2],
    taken: '2026-03-02T12:01:30',
    body: oldFront(),
  },
  {
    file: 'reel.jpg',
    shows: 'reel',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    light: [0.5, 0.5],
    taken: '2026-03-02T12:06:44',
    note: 'against the window: the pack lets light through',
    body: reelSeen(
      '#d8d4c8',
      '#a9713f',
      330,
      [{ text: 'F 3', reading: { of: 'numbers.other' } }, { text: 'head out' }],
      true,
    ),
  },
  {
    file: 'legend.jpg',
    shows: 'legend',
    ...LEGEND,
    on: 'wood',
    held: [-0.8, 1.4, 0.9],
    taken: '2026-03-02T12:09:15',
    body: legend({
      paper: '#e2d5b4',
      print: '#6b4a2a',
      seed: 103,
      head: [
        { text: 'ZULMIRA PONTAL - CAFE DO FAROL NOVO' },
        { text: 'MZV 1040   ORIGINAL   JUNHO 1962', reading: { of: 'recorded.on' } },
      ],
      rows: [
        ['1', 'CAFE DO FAROL NOVO', '2.51'],
        ['2', 'SOMBRA NO MOLHE', '3.12'],
        ['3', 'DUAS COLHERES', '2.24'],
        ['4', 'O ULTIMO ELETRICO', '3.35'],
        ['5', 'MARE BAIXA', '2.58'],
        ['6', 'RUA DO SEBO', '2.40'],
        ['7', 'QUEM BATE', '3.06'],
        ['8', 'APAGAR A LUZ', '3.29'],
      ].map(([number = '', title = '', time = '']) => ({ number, title, time })),
      total: { text: 'TOTAL C/ INTERVALOS  24.50', reading: { of: 'length' } },
      foot: [{ text: 'colagens secas, cuidado!', pen: 'red' }],
    }),
  },
];

const moradas: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'cloth',
    held: [-0.5, 1.8, 0.4],
    light: [0.3, 0.6],
    taken: '2026-03-02T12:20:48',
    body: boxFront({
      ...FORMS.of1974,
      carton: '#8b7a63',
      seed: 111,
      rows: rowsOf({
        speeds: ['3¾', '7½ in/s', '15'],
        speed: 1,
        curves: ['NAB', 'IEC'],
        curve: 0,
        tracks: ['2 tr.', '½ in 4 tr.'],
        track: 1,
        artist: 'Quinteto Moagem',
        title: 'Seis Moradas',
        catalogue: 'MZC 102',
        side: 'A',
        matrix: 'MZC 102-A',
        length: '22\' 40"',
        to: 'ALCATRUZ',
        date: '19.8.75',
        by: 'T.L.',
        kind: -1,
        remarks: 'RUNNING MASTER - programa 1 de 4',
        remarksOf: 'kind',
        remarksPen: 'red',
        pen: 'pencil',
      }),
    }),
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [-0.4, 0, 0.9],
    light: [0.6, 0],
    taken: '2026-03-02T12:22:30',
    body: spine(
      '#8b7a63',
      '#e1d7ba',
      [
        { text: 'MOAGEM  Seis Moradas  PROG. 1', reading: { of: 'title' } },
        { text: 'MZC 102-A  RUNNING MASTER  19 CM/S', reading: { of: 'numbers.matrix' } },
      ],
      undefined,
      112,
    ),
  },
];

const white: readonly Omit<Shot, 'reel'>[] = [
  {
    file: 'box-front.jpg',
    shows: 'box front',
    ...FRONT,
    on: 'cloth',
    held: [1.6, 1.2, -1.8],
    light: [0.25, 0.3],
    taken: '2026-03-02T12:40:10',
    body:
      carton(22, 18, FRONT.width - 60, FRONT.height - 58, '#dcd7c9') +
      '<path d="M250 360 q300 -70 560 40 t380 120" stroke="#6d5d45" stroke-opacity=".26" stroke-width="120" fill="none" filter="url(#soft)"/><path d="M180 900 q260 50 420 -20" stroke="#4d4232" stroke-opacity=".3" stroke-width="60" fill="none" filter="url(#wear-line)"/>' +
      '<path d="M890 180 h300 l-8 84 -288 6Z" fill="#cfc29d" opacity=".8" filter="url(#rough)"/><path d="M900 196 h270" stroke="#a8966a" stroke-opacity=".6" stroke-width="5"/>',
  },
  {
    file: 'spine.jpg',
    shows: 'spine',
    ...SPINE,
    on: 'shelf',
    held: [0.8, 0, 0.9],
    light: [0.5, 0],
    taken: '2026-03-02T12:41:37',
    body:
      carton(14, 34, SPINE.width - 40, SPINE.height - 76, '#dcd7c9') +
      sheet(240, 78, 620, 130, '#e6dcc0', 121) +
      `<g opacity=".55">${written({ x: 280, y: 166, text: 'Nov 71  cop a  38', pen: 'pencil', size: 80, max: 540 })}</g>` +
      '<rect x="500" y="88" width="52" height="110" fill="#e6dcc0" filter="url(#rough)"/>',
  },
  {
    file: 'reel.jpg',
    shows: 'reel',
    ...THING,
    on: 'cloth',
    held: [0, 0, 0],
    light: [0.4, 0.3],
    taken: '2026-03-02T12:44:25',
    body: reelSeen('#b9b7ae', '#4a3227', 300, []),
  },
];

export const FAROL_AND_OTHERS: readonly Shot[] = [
  ...farol.map((shot) => ({ reel: 'farol-original', ...shot })),
  ...moradas.map((shot) => ({ reel: 'moradas-programme-1', ...shot })),
  ...white.map((shot) => ({ reel: 'white-box', ...shot })),
];
