import { FRONT } from '../box-front.ts';
import { carton, sheet } from '../paper.ts';
import { type Reading, readFrom, stamp, written, xml } from '../pens.ts';

const BROWN = '#5a3d22';
const old = (x: number, y: number, text: string, size: number, weight = 500) =>
  `<text x="${x}" y="${y}" font-family="Old" font-size="${size}" font-weight="${weight}" fill="${BROWN}" filter="url(#print)">${xml(text)}</text>`;

/** The label of 1962: ruled lines, a serif, everything typed. */
export function oldFront(): string {
  const field = (
    y: number,
    caption: string,
    text: string,
    reading: Reading | undefined,
    x = 130,
    width = 1130,
  ): string =>
    old(x, y - 46, caption, 21) +
    `<path d="M${x} ${y + 22}H${x + width}" stroke="${BROWN}" stroke-width="2"/>` +
    readFrom(reading, text, written({ x: x + 24, y: y + 6, text, pen: 'typed', size: 46, max: width - 40 }), [
      x + 4,
      y - 44,
      width - 8,
      62,
    ]);
  return (
    carton(22, 18, FRONT.width - 60, FRONT.height - 58, '#6e5a42') +
    sheet(84, 76, 1230, 1080, '#e0d2ad', 101) +
    `<rect x="106" y="98" width="1186" height="1034" fill="none" stroke="${BROWN}" stroke-width="4" filter="url(#print)"/><rect x="116" y="108" width="1166" height="1014" fill="none" stroke="${BROWN}" stroke-width="1.5"/>` +
    `<text x="700" y="196" text-anchor="middle" font-family="Old" font-weight="800" font-size="66" letter-spacing="3" fill="${BROWN}" filter="url(#print)">Estúdio Alcatruz</text>` +
    `<text x="700" y="240" text-anchor="middle" font-family="Old" font-size="27" fill="${BROWN}" filter="url(#print)">fita magnética original — guardar ao alto, longe do calor</text>` +
    `<path d="M130 262H1270" stroke="${BROWN}" stroke-width="3"/>` +
    field(366, 'Obra', 'CAFE DO FAROL NOVO', { of: 'title' }) +
    field(490, 'Intérprete', 'ZULMIRA PONTAL', undefined) +
    field(614, 'Nº', 'MZV 1040', { of: 'numbers.catalogue' }, 130, 520) +
    field(614, 'Caixa', 'F 3', { of: 'numbers.other' }, 690, 570) +
    field(738, 'Velocidade', '38 CM/S', { of: 'format.speed' }, 130, 520) +
    field(738, 'Correcção', 'CCIR', { of: 'format.equalisation' }, 690, 570) +
    field(862, 'Duração', "24'50", { of: 'length' }, 130, 520) +
    field(862, 'Pistas', 'PISTA INTEIRA', { of: 'format.tracks' }, 690, 570) +
    field(986, 'Data', 'JUNHO 1962', { of: 'recorded.on' }, 130, 520) +
    field(986, 'Fita', 'OURELA FINA', { of: 'stock' }, 690, 570) +
    written({ x: 150, y: 1096, text: 'ORIGINAL  -  princípio por fora', pen: 'red', size: 56, max: 640 }) +
    stamp(900, 1098, 'ARQUIVO', '#34467c', -6, 50)
  );
}
