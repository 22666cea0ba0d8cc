import { type Answer, type Hit, type Near, searchNumbers } from '#compute/identifiers/number-search.ts';
import { numbersSentence, wordsSentence } from './announcement.ts';
import { collationElement } from './collation-element.ts';
import { element } from './element.ts';
import { numberIndex } from './fetched-index.ts';
import { asWritten, leadAddress, useWords, whereaboutsMark } from './lead-element.ts';
import { type Chosen, searchText, type TextAnswer } from './text-search.ts';

const MOST_HITS = 100;
const MOST_TEXTS = 50;

const part = (id: string) => document.getElementById(id);
const typed = (new URL(location.href).searchParams.get('n') ?? '').trim();

if (typed !== '') void lookUp();

/** Fills the page with all answers to what its address asks. */
async function lookUp(): Promise<void> {
  const box = document.querySelector<HTMLInputElement>('form.numbox input[name=n]');
  if (box !== null) box.value = typed;
  document.title = `${typed} · ${document.title}`;
  part('asked')?.replaceChildren('What could ', asWritten(typed), ' be?');
  part('how')?.setAttribute('hidden', '');
  await Promise.all([showNumbers(), showTexts({})]);
  const isAnswered = ['fit', 'near', 'text'].some((id) => part(id)?.hasAttribute('hidden') === false);
  part('how')?.toggleAttribute('hidden', isAnswered);
}

async function showNumbers(): Promise<void> {
  const index = await numberIndex().catch(() => undefined);
  if (index === undefined) {
    part('count')?.replaceChildren('The numbers can’t be loaded here. Every number stands on the Numbers page.');
    return;
  }
  const answer = searchNumbers(index, typed, MOST_HITS);
  part('count')?.replaceChildren(numbersSentence(answer));
  fill('fit', answer.hits.map(hitElement), moreWords(answer));
  fill('near', answer.near.map(nearElement), '');
}

const moreWords = ({ total, hits }: Answer) =>
  total > hits.length ? `And ${total - hits.length} more. Type more of the number to see fewer.` : '';

/** Shows a section with its answers, or leaves it hidden when there are none. */
function fill(id: string, answers: readonly HTMLElement[], note: string): void {
  part(id)?.toggleAttribute('hidden', answers.length === 0);
  part(`${id}-list`)?.replaceChildren(...answers);
  part(`${id}-note`)?.replaceChildren(note);
}

function hitElement(hit: Hit): HTMLElement {
  const tied = hit.tied ? ' Another fits just as well.' : '';
  return leadElement(hit, `${hit.how[0]?.toUpperCase()}${hit.how.slice(1)}. ${hit.because}${tied}`, false);
}

const nearElement = (near: Near) => leadElement(near, near.because, true);

function leadElement(lead: Hit | Near, why: string, near: boolean): HTMLElement {
  const sure = lead.sure === '' ? '' : ` The reading is ${lead.sure}.`;
  return element(
    'li',
    { class: 'hit' },
    element(
      'div',
      {},
      collationElement(typed, lead.number, near),
      element('p', { class: 'cap' }, `${useWords(lead)}.${sure}`),
    ),
    element('div', {}, element('h3', {}, element('a', { href: leadAddress(lead) }, lead.title)), element('p', {}, why)),
    element('p', { class: 'small' }, whereaboutsMark(lead.state)),
  );
}

async function showTexts(chosen: Chosen): Promise<void> {
  const answer = await searchText(typed, MOST_TEXTS, chosen).catch(() => undefined);
  part('text')?.toggleAttribute(
    'hidden',
    answer === undefined || (answer.total === 0 && Object.keys(chosen).length === 0),
  );
  if (answer === undefined) return;
  part('text-note')?.replaceChildren(wordsSentence(answer.total));
  part('text-filters')?.replaceChildren(...filterElements(answer, chosen));
  part('text-list')?.replaceChildren(
    ...answer.hits.map(({ address, title, what, excerpt }) =>
      element(
        'li',
        {},
        element('h3', {}, element('a', { href: address }, title)),
        element('p', { class: 'small' }, `${what}. ${excerpt}`),
      ),
    ),
  );
}

/** What a reel is sorted by on a shelf; the words of the filters as the text index has them. */
const FILTERS: Readonly<Record<string, string>> = {
  what: 'Of',
  status: 'Here?',
  kind: 'Kind',
  set: 'Set',
  edition: 'Edition',
  made: 'Made as',
  speed: 'Speed',
  tracks: 'Tracks',
  stock: 'Stock',
  place: 'Place',
  year: 'Year',
};

/** One choice for each thing that the answers differ in; a filter that is on stays, so that it can be taken off. */
function filterElements({ filters }: TextAnswer, chosen: Chosen): readonly HTMLElement[] {
  return Object.entries(FILTERS).flatMap(([name, words]) => {
    const values = Object.entries(filters[name] ?? {}).filter(([value, many]) => many > 0 || chosen[name] === value);
    if (values.length < 2 && chosen[name] === undefined) return [];
    const any = element('option', { value: '' }, 'any');
    const choices = values.toSorted().map(([value, many]) => element('option', { value }, `${value} (${many})`));
    const select = element('select', { id: `filter-${name}` }, any, ...choices);
    select.value = chosen[name] ?? '';
    select.addEventListener('change', () => {
      const { [name]: _, ...others } = chosen;
      void showTexts(select.value === '' ? others : { ...others, [name]: select.value }).then(() =>
        part(select.id)?.focus(),
      );
    });
    return [element('div', {}, element('label', { class: 'cap', for: select.id }, words), select)];
  });
}
