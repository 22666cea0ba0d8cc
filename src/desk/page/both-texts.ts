import { el } from './element.ts';

/** Said to the later of two who change one entry: what it is now, and what they would change.
 *
 * @param ways  What they can do about it. */
export function bothTexts(theirs: string, yours: string, ways: HTMLElement): HTMLElement {
  const text = (heading: string, words: string) =>
    el('div', {}, el('h3', {}, heading), el('pre', { tabindex: '0' }, words));
  return el(
    'section',
    { class: 'cautions', role: 'alert', tabindex: '-1' },
    el(
      'p',
      {},
      el('b', {}, 'This entry was changed in another window, or in an editor, after you opened it.'),
      ' Nothing of yours is written. Both are below.',
    ),
    el('div', { class: 'both' }, text('As it is now', theirs), text('What you would change', yours)),
    ways,
  );
}
