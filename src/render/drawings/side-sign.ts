import type { Status } from '#model/words.ts';
import { html, type Markup } from '../markup.ts';

/** All signs are drawn to one scale: 30 px is 320 mm. */
const PX_PER_MM = 30 / 320;
const USUAL_PACK_MM = 262;
const USUAL_HUB_MM = 100;

/** A small pack for the shelf: filled when it is here, rings when elsewhere, broken when missing, struck when gone. */
export function drawSideSign(status: Status, outsideMm = USUAL_PACK_MM, hubMm = USUAL_HUB_MM): Markup {
  const outside = radius(outsideMm);
  const hub = radius(hubMm);
  return html`<svg viewBox="0 0 30 30" aria-hidden="true">${shapes(status, outside, hub)}</svg>`;
}

function shapes(status: Status, outside: number, hub: number): Markup {
  const ring = (radiusPx: number, className: string) =>
    html`<circle cx="15" cy="15" r="${radiusPx}" class="${className}"/>`;
  switch (status) {
    case 'held':
      return html`<circle cx="15" cy="15" r="${round((outside + hub) / 2)}" class="wound" stroke-width="${round(outside - hub)}"/>${ring(outside, 'ln')}${ring(hub, 'ln')}`;
    case 'lent':
    case 'elsewhere':
      return html`${ring(outside, 'ln')}${ring(hub, 'ln')}`;
    case 'missing':
      return ring(outside, 'lost');
    case 'gone':
    case 'destroyed':
      return html`${ring(outside, 'thin')}<path d="M4 26L26 4" class="gone"/>`;
  }
}

const radius = (mm: number) => Math.min(14.4, round((mm / 2) * PX_PER_MM));
const round = (px: number) => Math.round(px * 100) / 100;
