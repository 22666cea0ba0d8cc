import type { Cell, Front } from '../box-front.ts';
import type { Pen, Reading } from '../pens.ts';

/** What somebody in the copy room put on the printed label. */
export interface Filled {
  readonly title: string;
  readonly catalogue: string;
  readonly artist: string;
  readonly side?: string;
  readonly matrix: string;
  /** What the matrix reading says, where the writing leaves a doubt. */
  readonly matrixReading?: { readonly as: string; readonly sure: 'likely' | 'guess' };
  readonly sevenOrOne?: number;
  readonly speeds: readonly string[];
  readonly speed: number;
  readonly curves: readonly string[];
  readonly curve: number;
  readonly tracks: readonly string[];
  readonly track: number;
  readonly length: string;
  readonly level?: string;
  readonly noise?: string;
  readonly job?: string;
  readonly from?: string;
  readonly to: string;
  readonly date: string;
  readonly by: string;
  readonly kind: number;
  /** Remarks: the first line says how the titles are joined and how it is wound. */
  readonly remarks: string;
  readonly remarksOf: string;
  readonly remarksPen?: Pen;
  readonly pen?: Pen;
  readonly markerPen?: Pen;
}

const reading = (of: string, text: string | undefined, more: Partial<Reading> = {}): { reading?: Reading } =>
  text === undefined ? {} : { reading: { of, ...more } };

/** The rows of the copy room's form. */
export function rowsOf(filled: Filled): readonly (readonly Cell[])[] {
  const pen = filled.pen ?? 'rui';
  const marker = filled.markerPen ?? 'felt';
  const cell = (
    caption: string,
    part: number,
    of: string,
    text: string | undefined,
    more: Partial<Cell> = {},
  ): Cell => ({
    caption,
    part,
    pen,
    ...(text === undefined ? {} : { text }),
    ...reading(of, text),
    ...more,
  });
  const boxes = (caption: string, part: number, of: string, names: readonly string[], ticked: number): Cell => ({
    caption,
    part,
    boxes: names,
    ticked,
    // Nothing ticked says nothing.
    ...(ticked < 0 ? {} : { reading: { of } }),
  });
  const matrix: Partial<Cell> = {
    ...(filled.sevenOrOne === undefined ? {} : { sevenOrOne: filled.sevenOrOne }),
    ...(filled.matrixReading === undefined ? {} : { reading: { of: 'numbers.matrix', ...filled.matrixReading } }),
  };
  return [
    [
      cell('Título / Title', 0.68, 'title', filled.title),
      cell('Catálogo / Catalogue', 0.32, 'numbers.catalogue', filled.catalogue, { pen: marker }),
    ],
    [
      cell('Artista / Artist', 0.44, 'artist', filled.artist, { reading: undefined } as Partial<Cell>),
      cell('Lado / Side', 0.14, 'side', filled.side, { pen: marker }),
      cell('Matriz / Matrix', 0.42, 'numbers.matrix', filled.matrix, { size: 96, ...matrix }),
    ],
    [
      boxes('Velocidade / Speed', 0.36, 'format.speed', filled.speeds, filled.speed),
      boxes('Curva / Curve', 0.32, 'format.equalisation', filled.curves, filled.curve),
      boxes('Pistas / Tracks', 0.32, 'format.tracks', filled.tracks, filled.track),
    ],
    [
      cell('Duração / Duration', 0.26, 'length', filled.length),
      cell('Nível / Level', 0.26, 'format.level', filled.level),
      cell('Red. ruído / N.R.', 0.24, 'format.noise-reduction', filled.noise),
      cell('Serviço / Job', 0.24, 'numbers.job', filled.job),
    ],
    [cell('Copiado de / Copied from', 0.5, 'copied-from', filled.from), cell('Para / For', 0.5, 'client', filled.to)],
    [
      cell('Data / Date', 0.26, 'recorded.on', filled.date),
      cell('Por / By', 0.2, 'recorded.by', filled.by),
      boxes('Tipo / Kind', 0.54, 'kind', ['Original', 'Prod.', 'Copy', 'Cutting', 'Safety'], filled.kind),
    ],
    [cell('Observações / Remarks', 1, filled.remarksOf, filled.remarks, { pen: filled.remarksPen ?? pen })],
  ];
}

/** The label of each time: the same form, reprinted in another ink. */
export const FORMS = {
  of1977: {
    paper: '#ece4ce',
    print: '#23415e',
    house: 'ESTÚDIO ALCATRUZ',
    room: 'Sala de Cópias · Copy Room · Porto Quedo',
    form: 'Form. 17-B · 3.76 · conservar longe de ímanes',
  },
  of1974: {
    paper: '#e9e3cc',
    print: '#2f5b41',
    house: 'ESTÚDIO ALCATRUZ',
    room: 'Sala de Cópias · Porto Quedo',
    form: 'Form. 12 · 1.73',
  },
  of1979: {
    paper: '#efebdd',
    print: '#6a2b3a',
    house: 'ESTÚDIO ALCATRUZ',
    room: 'Sala de Cópias · Copy Room · Porto Quedo',
    form: 'Form. 17-D · 6.79 · conservar longe de ímanes',
  },
} as const satisfies Record<string, Omit<Front, 'rows' | 'carton' | 'seed'>>;
