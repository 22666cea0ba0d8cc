import { el } from './element.ts';

/** A section of the sheet: its name and a few words in the stub, and what belongs to it beside that. */
export const sheetSection = (heading: string, words: string, ...parts: HTMLElement[]): HTMLElement =>
  el(
    'section',
    { class: 'sec' },
    el('div', { class: 'stub' }, el('h2', {}, heading), words === '' ? undefined : el('p', {}, words)),
    el('div', { class: 'body' }, ...parts),
  );
