import { carton, sheet } from './paper.ts';
import { type Pen, printed, type Reading, readFrom, written } from './pens.ts';

/** One cell of the printed form, and what somebody put into it. */
export interface Cell {
  readonly caption: string;
  /** Part of the row's width. */
  readonly part: number;
  readonly text?: string;
  readonly pen?: Pen;
  readonly size?: number;
  /** Printed boxes, the ticked ones by their place. */
  readonly boxes?: readonly string[];
  readonly ticked?: number;
  readonly reading?: Reading;
  readonly sevenOrOne?: number;
}

export interface Front {
  readonly carton: string;
  readonly paper: string;
  readonly print: string;
  readonly house: string;
  readonly room: string;
  readonly form: string;
  readonly seed: number;
  readonly rows: readonly (readonly Cell[])[];
  /** Drawn over it all: stamps, crosses, rings. */
  readonly over?: string;
}

export const FRONT = { width: 1400, height: 1240 } as const;
const LABEL = { x: 60, y: 54, width: 1280, height: 1130 } as const;
const HEAD = 118;
const FOOT = 44;

const tickInk = '#1d2f6b';

function boxesOf(cell: Cell, x: number, y: number, width: number, print: string): string {
  const boxes = cell.boxes ?? [];
  const step = (width - 20) / boxes.length;
  return boxes
    .map((name, i) => {
      const bx = x + 16 + i * step;
      const by = y + 56;
      const tick =
        cell.ticked === i
          ? `<path d="M${bx + 3} ${by + 13} q6 10 9 14 q9 -24 25 -40" fill="none" stroke="${tickInk}" stroke-width="4" stroke-linecap="round" filter="url(#ink)"/>`
          : '';
      return `<rect x="${bx}" y="${by}" width="28" height="28" fill="none" stroke="${print}" stroke-width="2"/>${printed(bx + 37, by + 23, name, 25, print)}${tick}`;
    })
    .join('');
}

/** As a reading gives it: ☐7½ ☐15 ☑30 in/s. */
const boxesWritten = (cell: Cell) =>
  (cell.boxes ?? []).map((name, i) => `${cell.ticked === i ? '☑' : '☐'}${name}`).join(' ');

function drawCell(cell: Cell, x: number, y: number, width: number, height: number, print: string): string {
  const frame =
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="none" stroke="${print}" stroke-width="1.8" filter="url(#print)"/>` +
    printed(x + 10, y + 23, cell.caption, 18, print);
  const box = [x + 2, y + 2, width - 4, height - 4];
  if (cell.boxes) return frame + readFrom(cell.reading, boxesWritten(cell), boxesOf(cell, x, y, width, print), box);
  if (cell.text === undefined) return frame;
  const lines = cell.text.split('\n');
  const pen = cell.pen ?? 'rui';
  const step = height / lines.length;
  const ink = lines
    .map((text, i) =>
      written({
        x: x + 24 + ((text.length * 7) % 26),
        y: y + step * i + step * (pen === 'typed' ? 0.66 : 0.75),
        text,
        pen,
        max: width - 60,
        ...(cell.size === undefined ? {} : { size: cell.size }),
        ...(cell.sevenOrOne === undefined ? {} : { sevenOrOne: cell.sevenOrOne }),
      }),
    )
    .join('');
  return frame + readFrom(cell.reading, lines.join(' / '), ink, box);
}

/** A box's lid with the studio's printed label on it, filled in. */
export function boxFront(front: Front): string {
  const { x, y, width, height } = LABEL;
  const inner = width - 52;
  const left = x + 26;
  const tall = (height - HEAD - FOOT) / front.rows.length;
  const cells = front.rows.flatMap((row, r) => {
    let at = left;
    return row.map((cell) => {
      const w = inner * cell.part;
      const drawn = drawCell(cell, at, y + HEAD + r * tall, w, tall, front.print);
      at += w;
      return drawn;
    });
  });
  const wheel = `<g transform="translate(${x + width - 92} ${y + 60})" fill="none" stroke="${front.print}" filter="url(#print)"><circle r="38" stroke-width="3.5"/><path d="M-38 0h76M0 -38v76M-27 -27l54 54M-27 27l54 -54" stroke-width="2"/><circle r="13" fill="${front.paper}" stroke-width="3"/></g>`;
  return (
    carton(22, 18, FRONT.width - 60, FRONT.height - 58, front.carton) +
    sheet(x, y, width, height, front.paper, front.seed) +
    printed(left, y + 62, front.house, 50, front.print, true) +
    printed(left + 2, y + 96, front.room, 23, front.print) +
    wheel +
    cells.join('') +
    printed(left + 2, y + height - 16, front.form, 17, front.print) +
    (front.over ?? '')
  );
}
