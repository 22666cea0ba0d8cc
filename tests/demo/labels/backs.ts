import { carton, sheet } from '../paper.ts';
import { printed, stamp, written } from '../pens.ts';
import { BACK } from '../sides.ts';

/** A box back with the export stamp and a routing slip, and nothing else. */
export const exportBack = (card: string): string =>
  carton(22, 18, BACK.width - 60, BACK.height - 58, card) +
  sheet(170, 180, 620, 380, '#e3d3ae', 44) +
  printed(206, 250, 'VANTERLY OVERSEAS', 42, '#4a3a24', true) +
  printed(206, 290, 'Tape Room · Incoming', 26, '#4a3a24') +
  '<path d="M200 312H760M200 392H760M200 472H760" stroke="#4a3a24" stroke-width="2"/>' +
  printed(206, 336, 'Received', 19, '#4a3a24') +
  printed(206, 416, 'To', 19, '#4a3a24') +
  printed(206, 496, 'Return', 19, '#4a3a24') +
  stamp(330, 384, '11 MAR 1977', '#34467c', -2, 38) +
  written({ x: 330, y: 462, text: 'Cutting, E. Ashgrove', pen: 'edda', size: 42 }) +
  written({ x: 330, y: 540, text: 'keep', pen: 'edda', size: 42 }) +
  stamp(700, 860, 'ALFÂNDEGA', '#4b2f63', 9, 58) +
  '<path d="M240 900 q240 -60 520 30" stroke="#d8c9a0" stroke-opacity=".55" stroke-width="62" fill="none" filter="url(#rough-line)"/>';

/** The inside of a lid, with what somebody noted there in pencil. */
export const insideLid = (card: string, text: string): string =>
  carton(22, 18, BACK.width - 60, BACK.height - 58, card) +
  `<rect x="60" y="54" width="1262" height="1110" fill="#d8cdb4" filter="url(#paper)"/><path d="M60 54h1262v1110H60Z" fill="none" stroke="#0c0804" stroke-opacity=".35" stroke-width="16" filter="url(#near)"/>` +
  printed(190, 260, 'SIRGA AZUL 90', 84, '#2b5c8d', true) +
  printed(194, 316, 'poliéster · dorso cinzento · espessura total 51 µm', 32, '#2b5c8d') +
  written({ x: 260, y: 760, text, pen: 'pencil', size: 92, turn: -5 });
