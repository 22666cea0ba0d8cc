import { html, type Markup } from '../markup.ts';

const BOXES = /(☑|☐|\[x\] ?|\[ \] ?)/iu;

/** A label's wording letter by letter, its ticked and empty boxes drawn, each with its sign as real text. */
export function readingWords(written: string): Markup {
  const parts = written.split(BOXES).map((part) => {
    if (part === '☑' || /^\[x\]/iu.test(part)) return html`<span class="bx on"><span class="vh">☑</span></span>`;
    if (part === '☐' || part.startsWith('[ ]')) return html`<span class="bx"><span class="vh">☐</span></span>`;
    return part;
  });
  return html`${parts}`;
}
