import { html, type Markup } from '../markup.ts';

/** A wound pack to scale; every measure in mm, and missing when nobody recorded it. */
export interface PackShape {
  readonly hubMm: number;
  readonly measuredMm?: number | undefined;
  readonly workedMm?: number | undefined;
  /** The flange: the reel it is on, or the outline of the largest that a machine here takes, for scale. */
  readonly flange?: { readonly mm: number; readonly there: boolean } | undefined;
  readonly words: { readonly hub: string; readonly outside: string; readonly title: string };
}

const TURNS = 13;
const NOTCHES_AT = [180, 300, 60];

/** The pack on its hub: measured diameter solid, worked one dotted, both at true radius. Undefined when neither is known. */
export function drawPack(pack: PackShape): Markup | undefined {
  const outsideMm = pack.measuredMm ?? pack.workedMm;
  if (outsideMm === undefined || outsideMm <= pack.hubMm) return undefined;
  const hub = pack.hubMm / 2;
  const outside = outsideMm / 2;
  const edge = Math.max(outside, (pack.workedMm ?? 0) / 2, (pack.flange?.mm ?? 0) / 2) + 6;
  const box = `${r(-edge)} ${r(-edge)} ${r(edge * 2)} ${r(edge * 2 + 54)}`;
  return html`<svg class="packd" viewBox="${box}" role="img" aria-label="${pack.words.title}">
${pack.flange && html`<circle r="${r(pack.flange.mm / 2)}" class="${pack.flange.there ? 'there' : 'thin'}"/>`}
<circle r="${r((hub + outside) / 2)}" class="wound" stroke-width="${r(outside - hub)}"/>
${turns(hub, outside)}
${pack.measuredMm !== undefined && html`<circle r="${r(outside)}" class="meas"/>`}
${pack.measuredMm === undefined && html`<circle r="${r(outside)}" class="lost"/>`}
${pack.measuredMm !== undefined && pack.workedMm !== undefined && html`<circle r="${r(pack.workedMm / 2)}" class="work"/>`}
${hubDrawing(hub)}${dimension(hub, edge + 12, pack.words.hub)}${dimension(outside, edge + 38, pack.words.outside)}</svg>`;
}

function turns(hub: number, outside: number): readonly Markup[] {
  const step = (outside - hub) / (TURNS + 1);
  return Array.from({ length: TURNS }, (_, turn) => html`<circle r="${r(hub + step * (turn + 1))}" class="turn"/>`);
}

function hubDrawing(hub: number): Markup {
  const notch = hub * 0.22;
  return html`<circle r="${r(hub)}" class="hub"/><circle r="${r(hub * 0.76)}" class="thin"/>${NOTCHES_AT.map(
    (degrees) =>
      html`<rect x="-4" y="${r(-hub)}" width="8" height="${r(notch)}" class="hub" transform="rotate(${degrees})"/>`,
  )}<path d="M-6 0H6M0-6V6" class="thin"/>`;
}

/** A measure below the drawing, with arrows and the figure on the line. */
function dimension(radius: number, y: number, words: string): Markup {
  const x = r(radius);
  const line = `M${-x} ${r(y)}H${x}M${r(-radius + 4)} ${r(y - 4)}l-4 4 4 4M${r(radius - 4)} ${r(y - 4)}l4 4-4 4`;
  const half = Math.min(words.length * 4.4, radius - 8);
  return html`<path d="M${-x} 0V${r(y + 6)}M${x} 0V${r(y + 6)}" class="ext"/><path d="${line}" class="dim"/><rect x="${r(-half)}" y="${r(y - 8)}" width="${r(half * 2)}" height="16" class="bg"/><text y="${r(y + 5)}">${words}</text>`;
}

/** Two decimals are a hundredth of a millimetre: finer than any screen or printer. */
const r = (mm: number) => Math.round(mm * 100) / 100;
