import type { CalculationAnswer } from '#model/calculation-form.ts';
import { mark } from '../marks.ts';
import { html, type Markup } from '../markup.ts';

/** What a calculation answers: figure and band, formula, source, what to mind; or what couldn't be read. */
export function calculationAnswer(answer: CalculationAnswer): Markup {
  if (answer.is === 'refused') {
    return html`<p class="ans">${mark('unread', 'can’t be read')}</p><dl class="fed">${answer.problems.map(
      ({ key, says }) => html`<dt>${keyWords(key)}</dt><dd>${says}</dd>`,
    )}</dl>`;
  }
  const { figures, also, formula, source, mind } = answer;
  return html`<p class="ans">${figures.map((figure) => html`<b>${figure}</b> `)}${also.map((line) => html`<span>${line}</span> `)}</p><dl class="fed"><dt>Formula</dt><dd><code>${formula}</code></dd><dt>Source</dt><dd>${source}</dd>${mind.map(
    (line, index) => html`<dt>${index === 0 ? 'Mind' : ''}</dt><dd>${line}</dd>`,
  )}</dl>`;
}

/** A key of the command line as a caption: `outside-diameter` → Outside diameter. */
export const keyWords = (key: string): string => (key.charAt(0).toUpperCase() + key.slice(1)).replaceAll('-', ' ');
