import { countList, type ListRow, searchLine } from '#compute/identifiers/number-list.ts';
import type { OpenIndex } from '#compute/identifiers/open-index.ts';
import { element, markElement } from './element.ts';
import { numberIndex } from './fetched-index.ts';
import { asWritten, leadAddress } from './lead-element.ts';

/** The page answers to its reader between so many lines. */
const LINES_AT_ONCE = 20;

const form = document.querySelector<HTMLFormElement>('form.paste');
const lines = form?.querySelector('textarea');
form?.addEventListener('submit', (event) => {
  event.preventDefault();
  void compare(lines?.value ?? '');
});

const part = (id: string) => document.getElementById(id);

/** Looks every line of the list up, in the page: nothing is sent anywhere. */
async function compare(text: string): Promise<void> {
  const index = await numberIndex().catch(() => undefined);
  if (index === undefined) {
    part('answer')?.replaceChildren('The numbers can’t be loaded here, so the list can’t be compared.');
    return;
  }
  const rows = await rowsOf(index, text);
  part('answer')?.replaceChildren(countSentence(rows));
  part('answer-table')?.toggleAttribute('hidden', rows.length === 0);
  part('answer-rows')?.replaceChildren(...rows.map(rowElement));
}

async function rowsOf(index: OpenIndex, text: string): Promise<readonly ListRow[]> {
  const rows: ListRow[] = [];
  const all = text.split(/\r\n|\r|\n/);
  for (const [at, line] of all.entries()) {
    if (line.trim() !== '') rows.push(searchLine(index, line, at + 1));
    if (at % LINES_AT_ONCE !== LINES_AT_ONCE - 1) continue;
    part('answer')?.replaceChildren(`Line ${at + 1} of ${all.length}…`);
    await new Promise((go) => setTimeout(go, 0));
  }
  return rows;
}

function countSentence(rows: readonly ListRow[]): string {
  const counts = countList(rows);
  const words = [
    [counts.held, 'held'],
    [counts.known, 'known of'],
    [counts.doubtful, 'perhaps'],
    [counts.new, 'new'],
    [counts['no number'], 'with no number'],
  ] as const;
  const said = words.filter(([many]) => many > 0).map(([many, word]) => `${many} ${word}`);
  return rows.length === 0
    ? 'No lines.'
    : `${rows.length} ${rows.length === 1 ? 'line' : 'lines'}: ${said.join(', ')}.`;
}

function rowElement(row: ListRow): HTMLElement {
  const cell = (content: Node) => element('td', { 'data-c': '' }, element('div', {}, content));
  const line = element('th', { scope: 'row', 'data-c': '' }, element('div', {}, asWritten(row.text)));
  return element('tr', {}, line, cell(stateMark(row)), cell(whyElement(row)));
}

function stateMark({ state, doubtful, number }: ListRow): HTMLElement {
  if (number === null) return markElement('not-recorded', 'no number', 'quiet');
  if (state === 'new') return markElement('new', 'new');
  const words = state === 'held' ? 'held' : 'known, not held';
  if (doubtful) return markElement('unread', `perhaps ${words}`);
  return state === 'held' ? markElement('held', words, 'ok') : markElement('missing', words);
}

function whyElement({ number, hits, near, doubtful, state }: ListRow): HTMLElement {
  if (number === null) return element('span', {}, 'nothing in it looks like a number');
  const lead = hits[0] ?? near[0];
  if (lead === undefined) return element('span', {}, 'no entry has it, nor one near it');
  const link = element('a', { href: leadAddress(lead) }, lead.title);
  const more = hits.length > 1 ? ` and ${hits.length - 1} more` : '';
  if (state === 'new') return element('span', {}, 'no entry has it; near is ', asWritten(lead.number), ', ', link);
  return element('span', {}, link, `${more}: `, asWritten(lead.number), doubtful ? `. ${lead.because}` : '');
}
