import type { PlanFact } from '#model/plan.ts';
import { notRecorded } from '../marks.ts';
import { html, type Markup, type Printable } from '../markup.ts';

/** How a plan is laid out both at build and in the browser; what it may lead to depends on where it stands. */
export interface PlanPlace {
  /** The page of a reel; missing where there is none to go to. */
  readonly reelHref?: ((id: string) => string) | undefined;
}

export const told = ({ says, known }: PlanFact): Markup => (known ? html`${says}` : notRecorded(says));

export const list = (items: readonly Printable[], kind = ''): Markup =>
  html`<ul class="${kind}">${items.map((item) => html`<li>${item}</li>`)}</ul>`;

export const section = (id: string, number: number, title: string, stub: string, body: Printable): Markup =>
  html`<section class="sec" id="${id}"><div class="stub"><h2><span class="no">${number}</span>${title}</h2><p>${stub}</p></div><div class="body">${body}</div></section>`;

export const cell = (caption: string, content: Printable, kind = ''): Markup =>
  html`<td class="${kind}" data-c="${caption}"><div>${content}</div></td>`;

export const head = (words: readonly string[]): Markup =>
  html`<thead><tr>${words.map((word) => html`<th scope="col">${word}</th>`)}</tr></thead>`;

export const row = (title: Printable, cells: readonly Markup[]): Markup =>
  html`<tr><th scope="row" data-c=""><div>${title}</div></th>${cells}</tr>`;

/** Cautions stand before anything else, and are never folded away. The word before the colon is the hazard. */
export function cautionBox(cautions: readonly string[]): Markup {
  const items = cautions.map((text) => {
    const colon = text.indexOf(':');
    return html`<li><b>${text.slice(0, colon + 1)}</b>${text.slice(colon + 1)}</li>`;
  });
  return html`<div class="cautions" role="note" aria-label="Cautions before anything else"><h2 class="h3">Before anything else</h2><ul class="cols">${items}</ul></div>`;
}

export function reelName(id: string, title: string, { reelHref }: PlanPlace): Markup {
  return reelHref === undefined ? html`${title}` : html`<a href="${reelHref(id)}">${title}</a>`;
}
