import { carton, sheet } from './paper.ts';
import { type Pen, printed, type Reading, readFrom, type Writing, written } from './pens.ts';

export interface Line extends Omit<Writing, 'x' | 'y' | 'pen'> {
  readonly pen?: Pen;
  readonly x?: number;
  readonly reading?: Reading;
}

export const SPINE = { width: 1600, height: 300 } as const;

/** The narrow side of the box, as it stands on the shelf: a strip with two typed lines, and a number painted beside it. */
export function spine(
  card: string,
  paper: string,
  lines: readonly Line[],
  number: string | undefined,
  seed: number,
): string {
  const strip = lines
    .map((line, i) => {
      const y = 116 + i * 86;
      return readFrom(
        line.reading,
        line.text,
        written({ size: 44, max: 1130, ...line, pen: line.pen ?? 'typed', x: line.x ?? 96, y }),
        [76, y - 58, 1170, 84],
      );
    })
    .join('');
  return (
    carton(14, 34, SPINE.width - 40, SPINE.height - 76, card) +
    sheet(70, 52, 1190, 188, paper, seed) +
    strip +
    (number === undefined
      ? ''
      : readFrom(
          { of: 'numbers.other' },
          number,
          written({ x: 1296, y: 168, text: number, pen: 'white', max: 220 }),
          [1280, 74, 262, 140],
        ))
  );
}

export interface LegendRow {
  readonly number: string;
  readonly title: string;
  readonly time: string;
  readonly note?: string;
}

export interface Legend {
  readonly print: string;
  readonly paper: string;
  readonly head: readonly Line[];
  readonly rows: readonly LegendRow[];
  readonly total: Line;
  /** Notes in pen under the typing. */
  readonly foot: readonly Line[];
  readonly seed: number;
  readonly over?: string;
}

export const LEGEND = { width: 1120, height: 1400 } as const;

/** The typed sheet that lies in the box: titles, times, technical notes. */
export function legend(sheetOf: Legend): string {
  const { print } = sheetOf;
  const rule = (y: number, w = 1.6) => `<path d="M92 ${y}H1026" stroke="${print}" stroke-width="${w}"/>`;
  const typedLine = (line: Line, y: number, tall: number) =>
    readFrom(line.reading, line.text, written({ max: 900, ...line, pen: line.pen ?? 'typed', x: line.x ?? 98, y }), [
      88,
      y - tall * 0.72,
      940,
      tall,
    ]);
  const top = 392;
  const tall = 64;
  const rows = sheetOf.rows.map((row, i) => {
    const y = top + i * tall;
    return (
      written({ x: 100, y, text: row.number, pen: 'typed' }) +
      written({ x: 170, y, text: row.title, pen: 'typed', max: 540 }) +
      written({ x: 738, y, text: row.time, pen: 'typed' }) +
      (row.note === undefined ? '' : written({ x: 868, y: y + 4, text: row.note, pen: 'rui', size: 46, max: 160 })) +
      rule(y + 20, 1)
    );
  });
  const end = top + sheetOf.rows.length * tall;
  return (
    sheet(48, 40, 1024, 1316, sheetOf.paper, sheetOf.seed) +
    `<path d="M48 470H1072M48 908H1072" stroke="#6b5a3a" stroke-opacity=".25" stroke-width="3"/><path d="M48 474H1072M48 912H1072" stroke="#fffaf0" stroke-opacity=".5" stroke-width="3"/>` +
    printed(92, 112, 'ESTÚDIO ALCATRUZ', 46, print, true) +
    printed(92, 148, 'Folha de fita / Tape legend', 24, print) +
    rule(168, 3) +
    sheetOf.head.map((line, i) => typedLine(line, 222 + i * 54, 54)).join('') +
    rule(296) +
    rule(342) +
    ['Nº', 'Título / Title', 'Tempo / Time', 'Nota']
      .map((t, i) => printed([98, 170, 736, 868][i] ?? 98, 327, t, 22, print))
      .join('') +
    `<path d="M152 296V${end - 44}M720 296V${end - 44}M854 296V${end - 44}" stroke="${print}" stroke-width="1.4"/>` +
    rows.join('') +
    typedLine(sheetOf.total, end + 34, 74) +
    sheetOf.foot
      .map((line, i) => typedLine({ max: 920, ...line, pen: line.pen ?? 'rui' }, end + 138 + i * 96, 92))
      .join('') +
    (sheetOf.over ?? '')
  );
}

export interface LogRow {
  readonly cells: readonly [string, string, string, string, string];
  readonly pen: Pen;
  readonly reading?: Reading;
}

export const BACK = { width: 1400, height: 1240 } as const;

/** The back of a master's box, with the printed log of what was copied from it. */
export function copyLog(
  card: string,
  paper: string,
  print: string,
  title: string,
  rows: readonly LogRow[],
  seed: number,
): string {
  const columns = [96, 330, 700, 830, 1060, 1308];
  const tall = Math.min(66, 930 / rows.length);
  const top = 236;
  const lines = rows.map((row, i) => {
    const y = top + 52 + i * tall;
    const drawn = row.cells
      .map((text, c) =>
        text === ''
          ? ''
          : written({
              x: (columns[c] ?? 0) + 8,
              y: y - 8,
              text,
              pen: row.pen,
              size: row.pen === 'typed' ? 27 : Math.min(50, tall * 0.86) * (row.pen === 'felt' ? 0.74 : 1),
              max: (columns[c + 1] ?? 0) - (columns[c] ?? 0) - 18,
            }),
      )
      .join('');
    const strip =
      row.pen === 'typed'
        ? `<path d="M92 ${y - tall + 12} l1218 -4 1 ${tall - 8} -1218 5Z" fill="#efe9da" stroke="#0003" filter="url(#paper)"/>`
        : '';
    const ruled = `<path d="M92 ${y + 6}H1310" stroke="${print}" stroke-width="1.2"/>`;
    return (
      strip +
      readFrom(row.reading, row.cells.filter((c) => c !== '').join(' / '), drawn, [94, y - tall + 8, 1214, tall - 2]) +
      ruled
    );
  });
  return (
    carton(22, 18, BACK.width - 60, BACK.height - 58, card) +
    sheet(66, 56, 1270, 1126, paper, seed) +
    printed(96, 122, 'CÓPIAS TIRADAS / COPIES TAKEN', 42, print, true) +
    printed(96, 164, title, 24, print) +
    `<path d="M92 184H1310M92 ${top + 6}H1310" stroke="${print}" stroke-width="2.4"/>` +
    ['Data / Date', 'Para / For', 'Vel.', 'Tipo / Kind', 'Nº']
      .map((t, i) => printed((columns[i] ?? 0) + 8, 220, t, 22, print))
      .join('') +
    columns
      .map(
        (x) =>
          `<path d="M${x} 184V${top + 10 + Math.max(rows.length, 14) * tall}" stroke="${print}" stroke-width="1.2"/>`,
      )
      .join('') +
    Array.from(
      { length: Math.max(0, 14 - rows.length) },
      (_, i) => `<path d="M92 ${top + 58 + (rows.length + i) * tall}H1310" stroke="${print}" stroke-width="1.2"/>`,
    ).join('') +
    lines.join('')
  );
}
