import { html, joined, type Markup } from '../markup.ts';

const RUN = /([\p{L}\d-]+)/u;
/** In days and numbers, such as `2026-10-17`, `4534-1` or `102-C`. */
const HYPHENED = /\d-[\p{L}\d]/u;

/** A sentence in which no day and no number is broken at its hyphen. */
export const unbroken = (text: string): Markup =>
  joined(
    text
      .split(RUN)
      .map((part, at) => (at % 2 === 1 && HYPHENED.test(part) ? html`<span class="whole">${part}</span>` : part)),
    '',
  );
