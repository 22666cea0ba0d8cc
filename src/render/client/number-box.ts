import { type Answer, type Lead, searchNumbers } from '#compute/identifiers/number-search.ts';
import { numbersSentence, wordsSentence } from './announcement.ts';
import { element } from './element.ts';
import { numberIndex } from './fetched-index.ts';
import { asWritten, leadAddress, useWords, whereaboutsMark } from './lead-element.ts';
import { OptionsList } from './options-list.ts';
import { siteAddress } from './site-root.ts';
import { searchText, type TextAnswer } from './text-search.ts';

const MOST_HITS = 8;
const MOST_NEAR = 4;
const MOST_TEXTS = 5;
/** Words are asked for when the typing rests, numbers at once. */
const REST_MS = 200;
const FEWEST_FOR_WORDS = 3;

/** Makes the number box of a page answer while one types: numbers first, the words of entries below. Without this the
 *  form still leads to the page for looking up. */
export function enliven(form: HTMLFormElement): void {
  const box = form.querySelector<HTMLInputElement>('input[name=n]');
  const list = form.querySelector<HTMLElement>('[role=listbox]');
  const status = form.querySelector<HTMLElement>('[role=status]');
  if (box === null || list === null || status === null) return;
  const options = new OptionsList(box, list);
  let resting: ReturnType<typeof setTimeout> | undefined;
  let asked = '';

  const show = (numbers: Answer | undefined, texts: TextAnswer | undefined) => {
    options.show([...numberGroup(numbers), ...textGroup(texts), ...allOption(box.value)]);
  };
  const fail = (what: string) => {
    options.show([
      element('p', { class: 'small' }, `${what} can’t be loaded here. Every number stands on the Numbers page.`),
    ]);
  };

  const ask = async () => {
    const typed = box.value.trim();
    asked = typed;
    clearTimeout(resting);
    if (typed === '') {
      options.close();
      status.textContent = '';
      return;
    }
    const numbers = await numberIndex().then(
      (index) => searchNumbers(index, typed, MOST_HITS),
      () => undefined,
    );
    if (asked !== typed) return;
    if (numbers === undefined) fail('The numbers');
    else show(numbers, undefined);
    resting = setTimeout(() => void askWords(typed, numbers), REST_MS);
  };

  const askWords = async (typed: string, numbers: Answer | undefined) => {
    const said = numbers === undefined ? '' : numbersSentence(numbers);
    const texts =
      typed.length < FEWEST_FOR_WORDS ? undefined : await searchText(typed, MOST_TEXTS).catch(() => undefined);
    if (asked !== typed || box.value.trim() !== typed) return;
    status.textContent = texts === undefined ? said : `${said} ${wordsSentence(texts.total)}`;
    // Whoever is already among the options keeps their place.
    if (texts !== undefined && numbers !== undefined && options.open && options.active === undefined)
      show(numbers, texts);
  };

  box.addEventListener('focus', () => void numberIndex().catch(() => undefined));
  box.addEventListener('input', () => void ask());
  box.addEventListener('keydown', (event) => onKey(event, options, box));
  form.addEventListener('focusout', ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && form.contains(relatedTarget))) options.close();
  });
  document.addEventListener('keydown', (event) => {
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
    event.preventDefault();
    box.focus();
    box.select();
  });
}

function onKey(event: KeyboardEvent, options: OptionsList, box: HTMLInputElement): void {
  if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    if (!options.open) box.dispatchEvent(new Event('input'));
    options.move(event.key === 'ArrowDown' ? 1 : -1);
  } else if (event.key === 'Enter' && options.active !== undefined) {
    options.active.click();
  } else if (event.key === 'Escape' && options.open) {
    options.close();
  } else {
    return;
  }
  event.preventDefault();
}

const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement && (target.isContentEditable || /^(?:INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

/** The heading is the group's name; ears get it from there. */
function group(words: string, options: readonly Node[]): HTMLElement {
  const heading = element('p', { class: 'cap', 'aria-hidden': 'true' }, words);
  return element('div', { role: 'group', 'aria-label': words }, heading, ...options);
}

const option = (address: string, ...content: readonly (Node | string)[]): HTMLElement =>
  element('a', { role: 'option', 'aria-selected': 'false', tabindex: '-1', href: address }, ...content);

function numberGroup(answer: Answer | undefined): readonly Node[] {
  if (answer === undefined) return [];
  const { hits, near, total } = answer;
  const fitting = hits.map((hit) => leadOption(hit, `${hit.how}${hit.tied ? ', another fits as well' : ''}`));
  const close = near.slice(0, hits.length === 0 ? MOST_HITS : MOST_NEAR).map((one) => leadOption(one, 'only near'));
  return [
    group(total === 0 ? 'By number: none fits' : `By number: ${total}`, fitting),
    ...(close.length === 0 ? [] : [group('Not what you typed, only near', close)]),
  ];
}

function leadOption(lead: Lead, how: string): HTMLElement {
  return option(
    leadAddress(lead),
    element('span', { class: 'found' }, asWritten(lead.number), ' ', element('b', {}, lead.title)),
    element('span', { class: 'small' }, `${useWords(lead)}. ${how}: ${lead.because} `, whereaboutsMark(lead.state)),
  );
}

function textGroup(answer: TextAnswer | undefined): readonly Node[] {
  if (answer === undefined) return [];
  const texts = answer.hits.map(({ address, title, what, excerpt }) =>
    option(
      address,
      element('span', { class: 'found' }, element('b', {}, title)),
      element('span', { class: 'small' }, `${what}. ${excerpt}`),
    ),
  );
  return [group(answer.total === 0 ? 'By words: none' : `By words: ${answer.total}`, texts)];
}

const allOption = (typed: string): readonly Node[] => [
  option(siteAddress(`look-up/?n=${encodeURIComponent(typed)}`), 'All answers, character by character'),
];

for (const form of document.querySelectorAll<HTMLFormElement>('form.numbox')) enliven(form);
