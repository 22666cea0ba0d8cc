import { encode } from 'uqr';
import { html, type Markup } from '../markup.ts';

/** Modules of paper round the square, without which a reader doesn't find it. Source: ISO/IEC 18004, 5.3.8 (from memory). */
const QUIET = 4;

/** A QR symbol that holds a text, with a quarter of it repairable, for a label that gets worn.
 * @param words  what it is called for who can't see it. */
export function idSquare(text: string, words: string): Markup {
  const { data, size } = encode(text, { ecc: 'Q', border: 0 });
  const rows = data.map((row, y) =>
    runsOf(row)
      .map(([from, to]) => `M${from + QUIET} ${y + QUIET}h${to - from}v1h-${to - from}z`)
      .join(''),
  );
  const side = size + 2 * QUIET;
  return html`<svg class="qr" viewBox="0 0 ${side} ${side}" role="img" aria-label="${words}"><path d="${rows.join('')}"/></svg>`;
}

/** Stretches of dark modules, each from and up to. */
function runsOf(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  const runs: [number, number][] = [];
  for (const [x, dark] of row.entries()) {
    const last = runs.at(-1);
    if (!dark) continue;
    if (last?.[1] === x) last[1] = x + 1;
    else runs.push([x, x + 1]);
  }
  return runs;
}
