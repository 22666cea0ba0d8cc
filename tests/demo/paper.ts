import { seededNoise } from './noise.ts';

/** Filters that make flat shapes look like card, paper, ink and light. `unit` is one pixel of the drawing. */
export const FILTERS = `
<filter id="card" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency=".75 .5" numOctaves="4" seed="4"/><feColorMatrix values="0 0 0 0 .2  0 0 0 0 .16  0 0 0 0 .1  0 0 0 .5 -.08"/><feComposite in2="SourceGraphic" operator="in"/><feBlend in2="SourceGraphic" mode="multiply"/></filter>
<filter id="paper" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency=".012 .017" numOctaves="5" seed="11"/><feColorMatrix values="0 0 0 0 .5  0 0 0 0 .4  0 0 0 0 .22  0 0 0 .5 -.12" result="tone"/><feTurbulence type="fractalNoise" baseFrequency=".5 .7" numOctaves="2" seed="3"/><feColorMatrix values="0 0 0 0 .3  0 0 0 0 .26  0 0 0 0 .2  0 0 0 .22 -.05" result="fibre"/><feMerge><feMergeNode in="tone"/><feMergeNode in="fibre"/></feMerge><feComposite in2="SourceGraphic" operator="in"/><feBlend in2="SourceGraphic" mode="multiply"/></filter>
<filter id="wood" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency=".0035 .11" numOctaves="5" seed="8"/><feColorMatrix values="0 0 0 0 .16  0 0 0 0 .09  0 0 0 0 .04  0 0 0 1.5 -.45"/><feComposite in2="SourceGraphic" operator="in"/><feBlend in2="SourceGraphic" mode="multiply"/></filter>
<filter id="cloth" x="0" y="0" width="100%" height="100%"><feTurbulence type="fractalNoise" baseFrequency=".22 .24" numOctaves="3" seed="21"/><feColorMatrix values="0 0 0 0 .05  0 0 0 0 .05  0 0 0 0 .06  0 0 0 .9 -.2"/><feComposite in2="SourceGraphic" operator="in"/><feBlend in2="SourceGraphic" mode="multiply"/></filter>
<filter id="ink" x="-3%" y="-10%" width="106%" height="120%"><feTurbulence type="fractalNoise" baseFrequency=".7" numOctaves="2" seed="2" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="1.8" result="d"/><feTurbulence type="fractalNoise" baseFrequency=".05 .3" numOctaves="2" seed="9"/><feColorMatrix values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -1.6 1.65"/><feComposite in="d" operator="in"/></filter>
<filter id="type" x="-3%" y="-10%" width="106%" height="120%"><feTurbulence type="fractalNoise" baseFrequency=".55" numOctaves="2" seed="5" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="1.7" result="d"/><feTurbulence type="fractalNoise" baseFrequency=".09 .2" numOctaves="3" seed="6"/><feColorMatrix values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -1.9 1.95"/><feComposite in="d" operator="in"/></filter>
<filter id="print" x="-3%" y="-10%" width="106%" height="120%"><feTurbulence type="fractalNoise" baseFrequency=".9" numOctaves="1" seed="7" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale=".9"/></filter>
<filter id="stamp" x="-5%" y="-20%" width="110%" height="140%"><feTurbulence type="fractalNoise" baseFrequency=".08 .11" numOctaves="4" seed="13" result="n"/><feColorMatrix in="n" values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -4.6 3.2"/><feComposite in="SourceGraphic" operator="in" result="k"/><feTurbulence type="fractalNoise" baseFrequency=".6" numOctaves="1" seed="1" result="m"/><feDisplacementMap in="k" in2="m" scale="2"/></filter>
<filter id="wear" x="-4%" y="-4%" width="108%" height="108%"><feTurbulence type="fractalNoise" baseFrequency=".045 .06" numOctaves="4" seed="17" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="6" result="d"/><feColorMatrix in="n" values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -8 3.5"/><feComposite in="d" operator="in"/><feGaussianBlur stdDeviation=".7"/></filter>
<filter id="card-line" filterUnits="userSpaceOnUse" x="-60" y="-60" width="1720" height="1560"><feTurbulence type="fractalNoise" baseFrequency=".75 .5" numOctaves="4" seed="4"/><feColorMatrix values="0 0 0 0 .2  0 0 0 0 .16  0 0 0 0 .1  0 0 0 .5 -.08"/><feComposite in2="SourceGraphic" operator="in"/><feBlend in2="SourceGraphic" mode="multiply"/></filter>
<filter id="near-line" filterUnits="userSpaceOnUse" x="-60" y="-60" width="1720" height="1560"><feGaussianBlur stdDeviation="4"/></filter>
<filter id="wear-line" filterUnits="userSpaceOnUse" x="-60" y="-60" width="1720" height="1560"><feTurbulence type="fractalNoise" baseFrequency=".045 .06" numOctaves="4" seed="17" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="6" result="d"/><feColorMatrix in="n" values="0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 0 0 -8 3.5"/><feComposite in="d" operator="in"/><feGaussianBlur stdDeviation=".7"/></filter>
<filter id="rough-line" filterUnits="userSpaceOnUse" x="-60" y="-60" width="1720" height="1560"><feTurbulence type="fractalNoise" baseFrequency=".03" numOctaves="3" seed="23" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="5"/></filter>
<filter id="soft" x="-30%" y="-30%" width="160%" height="160%"><feGaussianBlur stdDeviation="14"/></filter>
<filter id="near" x="-10%" y="-10%" width="120%" height="120%"><feGaussianBlur stdDeviation="4"/></filter>
<filter id="rough" x="-5%" y="-5%" width="110%" height="110%"><feTurbulence type="fractalNoise" baseFrequency=".03" numOctaves="3" seed="23" result="n"/><feDisplacementMap in="SourceGraphic" in2="n" scale="5"/></filter>`;

/** Stains, fox marks and a crease or two on a sheet. */
export function aged(x: number, y: number, width: number, height: number, seed: number): string {
  const noise = seededNoise(seed);
  const marks: string[] = [];
  for (let i = 0; i < 9; i += 1) {
    const r = 6 + noise.unit() ** 3 * 60;
    marks.push(
      `<ellipse cx="${(x + noise.unit() * width).toFixed(0)}" cy="${(y + noise.unit() * height).toFixed(0)}" rx="${r.toFixed(0)}" ry="${(r * (0.6 + noise.unit() * 0.5)).toFixed(0)}" fill="#7a5a2c" opacity="${(0.04 + noise.unit() * 0.07).toFixed(2)}" filter="url(#near)"/>`,
    );
  }
  const across = y + height * (0.25 + noise.unit() * 0.5);
  marks.push(
    `<path d="M${x} ${across} q${width / 2} ${(noise.normal() * 9).toFixed(0)} ${width} ${(noise.normal() * 12).toFixed(0)}" stroke="#6b5a3a" stroke-opacity=".22" stroke-width="2.5" fill="none"/>`,
    `<path d="M${x} ${across + 3} q${width / 2} ${(noise.normal() * 9).toFixed(0)} ${width} ${(noise.normal() * 12).toFixed(0)}" stroke="#fff8e4" stroke-opacity=".4" stroke-width="2" fill="none"/>`,
  );
  return marks.join('');
}

export type Table = 'wood' | 'cloth' | 'shelf';
const TABLES: Record<Table, string> = { wood: '#8a6544', cloth: '#77808a', shelf: '#b9b2a4' };

/** What the box stands on. */
export const table = (kind: Table, width: number, height: number): string =>
  `<rect width="${width}" height="${height}" fill="${TABLES[kind]}" filter="url(#${kind === 'wood' ? 'wood' : 'cloth'})"/>`;

/** A lid or a side of a carton: card, worn edges, its own thickness, its shadow. */
export function carton(x: number, y: number, width: number, height: number, colour: string): string {
  return (
    `<rect x="${x + 14}" y="${y + 18}" width="${width}" height="${height}" fill="#0c0804" opacity=".62" filter="url(#soft)"/>` +
    `<path d="M${x + 4} ${y + height - 4} l10 15 h${width - 4} l-6 -15Z" fill="#1c150d" opacity=".75"/>` +
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="5" fill="${colour}" filter="url(#card)"/>` +
    `<rect x="${x + 3}" y="${y + 3}" width="${width - 6}" height="${height - 6}" rx="5" fill="none" stroke="#e9dfc8" stroke-opacity=".5" stroke-width="5" filter="url(#wear)"/>` +
    `<path d="M${x} ${y + 10} h${width} M${x + 11} ${y} v${height}" stroke="#000" stroke-opacity=".13" stroke-width="2"/>`
  );
}

/** A sheet pasted on: paper with a shadow under the edge that has come loose. */
export function sheet(x: number, y: number, width: number, height: number, colour: string, seed: number): string {
  const noise = seededNoise(seed);
  const j = () => (noise.normal() * 2.2).toFixed(1);
  const corner = 5 + noise.unit() * 16;
  const edge = `M${x} ${y} L${x + width * 0.4} ${y + Number(j())} L${x + width} ${y + Number(j())} L${x + width + Number(j())} ${y + height - corner} L${x + width - corner * 1.2} ${y + height + Number(j())} L${x + width * 0.5} ${y + height + Number(j())} L${x} ${y + height + Number(j())}Z`;
  return (
    `<path d="${edge}" transform="translate(4 6)" fill="#0c0804" opacity=".4" filter="url(#near)"/>` +
    `<path d="${edge}" fill="${colour}" filter="url(#paper)"/>${aged(x, y, width, height, seed)}`
  );
}
