import { html, joined, type Markup } from '../markup.ts';

/** Days and numbers, such as `2026-10-17`, `4534-1` or `102-C`. */
const HYPHENED = /([\p{L}\d]*\d-[\p{L}\d][\p{L}\d-]*)/u;

/** A sentence in which no day and no number is broken at its hyphen. */
export const unbroken = (text: string): Markup =>
  joined(
    text.split(HYPHENED).map((part, at) => (at % 2 === 1 ? html`<span class="whole">${part}</span>` : part)),
    '',
  );
