import { seededNoise } from './noise.ts';

/** Whoever wrote on the boxes, and with what. All faces under open licences, from the project's own packages. */
export const PENS = {
  rui: { family: 'Reenie', colour: '#1b2c68', size: 86 },
  ruiOld: { family: 'Reenie', colour: '#2c3550', size: 86 },
  edda: { family: 'Nothing', colour: '#22252b', size: 40 },
  felt: { family: 'Grace', colour: '#211e1c', size: 64 },
  red: { family: 'Grace', colour: '#a02a1f', size: 60 },
  pencil: { family: 'Reenie', colour: '#4f4d4a', size: 80 },
  white: { family: 'Grace', colour: '#eee4d2', size: 76 },
  typed: { family: 'Courier', colour: '#1d1c1e', size: 33 },
} as const;
export type Pen = keyof typeof PENS;

export const xml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

export interface Writing {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly pen: Pen;
  readonly size?: number;
  /** The widest it may be; what is longer is written smaller. */
  readonly max?: number;
  readonly turn?: number;
  /** Which character, from 0, could be a 7 or a 1: it is drawn by hand, between the two. */
  readonly sevenOrOne?: number;
}

/** A line of writing, no two letters quite level. */
export function written({ x, y, text, pen, size, max, turn, sevenOrOne }: Writing): string {
  const { family, colour, size: usual } = PENS[pen];
  const px = size ?? usual;
  const noise = seededNoise([...text].reduce((sum, c) => (sum * 31 + (c.codePointAt(0) ?? 0)) >>> 0, px + x));
  const loose = pen === 'typed' ? 0.022 : 0.02;
  let before = 0;
  const steps: string[] = [];
  const turns: string[] = [];
  for (const _ of text) {
    const level = noise.normal() * px * loose;
    steps.push((level - before).toFixed(1));
    before = level;
    turns.push((noise.normal() * (pen === 'typed' ? 0.5 : 2)).toFixed(1));
  }
  const angle =
    turn ?? (pen === 'typed' ? noise.normal() * 0.15 : noise.normal() * 0.6 * Math.min(1, 14 / text.length));
  const doubt = sevenOrOne === undefined ? '' : ` data-doubt="${sevenOrOne}"`;
  return (
    `<text xml:space="preserve" x="${x}" y="${y}" font-family="${family}" font-size="${px}" fill="${colour}"` +
    ` dy="${steps.join(' ')}" rotate="${turns.join(' ')}" transform="rotate(${angle.toFixed(2)} ${x} ${y})"` +
    `${max === undefined ? '' : ` data-max="${max}"`}${doubt} filter="url(#${pen === 'typed' ? 'type' : 'ink'})">${xml(text)}</text>`
  );
}

export interface Reading {
  /** The key that it is a reading of. */
  readonly of: string;
  /** Letter by letter, where that isn't simply the text. */
  readonly as?: string;
  readonly sure?: 'certain' | 'likely' | 'guess';
}

/** Writing that an entry reads: its place in the picture is measured once it is drawn. */
export const readFrom = (
  reading: Reading | undefined,
  text: string,
  drawn: string,
  cell?: readonly number[],
): string =>
  reading === undefined
    ? drawn
    : `<g data-of="${reading.of}" data-written="${xml(reading.as ?? text)}" data-sure="${reading.sure ?? 'certain'}"` +
      `${cell === undefined ? '' : ` data-cell="${cell.join(',')}"`}>${drawn}</g>`;

/** Printed with the form. */
export const printed = (x: number, y: number, text: string, size: number, colour: string, bold = false): string =>
  `<text x="${x}" y="${y}" font-family="Form" font-size="${size}" font-stretch="80%" fill="${colour}"` +
  ` font-weight="${bold ? 680 : 430}" filter="url(#print)">${xml(text)}</text>`;

/** A rubber stamp, badly inked. */
export const stamp = (x: number, y: number, text: string, colour: string, turn: number, size = 44): string => {
  const width = text.length * size * 0.6 + 34;
  return (
    `<g transform="rotate(${turn} ${x} ${y})" opacity=".8" filter="url(#stamp)" fill="none" stroke="${colour}">` +
    `<rect x="${x}" y="${y - size - 4}" width="${width}" height="${size * 1.45}" stroke-width="4.5"/>` +
    `<text x="${x + width / 2}" y="${y}" text-anchor="middle" font-family="Form" font-stretch="76%" font-weight="700"` +
    ` font-size="${size}" letter-spacing="2" fill="${colour}" stroke="none">${xml(text)}</text></g>`
  );
};
