import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { FILTERS, type Table, table } from './paper.ts';

const require = createRequire(import.meta.url);
const FACES: readonly (readonly [string, string, string])[] = [
  ['Reenie', require.resolve('@fontsource/reenie-beanie/files/reenie-beanie-latin-400-normal.woff2'), ''],
  [
    'Grace',
    require.resolve('@fontsource/covered-by-your-grace/files/covered-by-your-grace-latin-400-normal.woff2'),
    '',
  ],
  [
    'Nothing',
    require.resolve('@fontsource/nothing-you-could-do/files/nothing-you-could-do-latin-400-normal.woff2'),
    '',
  ],
  ['Courier', require.resolve('@fontsource/courier-prime/files/courier-prime-latin-400-normal.woff2'), ''],
  [
    'Form',
    require.resolve('@fontsource-variable/archivo/files/archivo-latin-wdth-normal.woff2'),
    'font-stretch:62% 125%;font-weight:100 900;',
  ],
  ['Old', require.resolve('@fontsource-variable/besley/files/besley-latin-wght-normal.woff2'), 'font-weight:400 900;'],
];

const faces = FACES.map(([family, file, more]) => {
  const data = readFileSync(file).toString('base64');
  return `@font-face{font-family:${family};${more}src:url(data:font/woff2;base64,${data})}`;
}).join('');

export type Subject = 'box front' | 'box back' | 'spine' | 'legend' | 'reel' | 'pack' | 'tape end' | 'other';

/** One photograph: what lies there, and how the camera was held. */
export interface Shot {
  readonly reel: string;
  readonly file: string;
  readonly shows: Subject;
  readonly width: number;
  readonly height: number;
  readonly body: string;
  readonly on: Table;
  /** Degrees: turned in the hand; leant back; leant aside. */
  readonly held: readonly [turn: number, back: number, aside: number];
  /** Where the window is, in parts of the picture. */
  readonly light?: readonly [number, number];
  /** The picture's pixels a pixel of the drawing; 1 unless said. */
  readonly scale?: number;
  readonly taken: string;
  readonly note?: string;
  readonly camera?: { readonly orientation?: number; readonly profile?: 'p3'; readonly captioned?: boolean };
}

/** The page that the browser draws: the table, the thing on it leant a little, the light over both. */
export function pageOf(shot: Shot): string {
  const { width, height } = shot;
  const [turn, back, aside] = shot.held;
  const [lx, ly] = shot.light ?? [0.36, 0.26];
  const svg = (inner: string, more = '') =>
    `<svg xmlns="http://www.w3.org/2000/svg" ${more} viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${inner}</svg>`;
  const light =
    `<defs><radialGradient id="light" cx="${lx}" cy="${ly}" r="1.05"><stop offset="0" stop-color="#fff4dc" stop-opacity=".2"/><stop offset=".38" stop-color="#fff" stop-opacity="0"/><stop offset="1" stop-color="#140d05" stop-opacity=".5"/></radialGradient></defs>` +
    `<rect width="${width}" height="${height}" fill="url(#light)"/>`;
  return (
    `<!doctype html><style>${faces}body{margin:0;width:${width}px;height:${height}px;overflow:hidden;position:relative}svg{display:block;position:absolute;inset:0;overflow:visible}` +
    `.held{position:absolute;inset:0;transform:perspective(${Math.round(width * 2.2)}px) rotateX(${back}deg) rotateY(${aside}deg) rotateZ(${turn}deg)}</style>` +
    `${svg(`<defs>${FILTERS}</defs>${table(shot.on, width, height)}`)}<div class="held">${svg(shot.body)}</div>${svg(light)}`
  );
}
