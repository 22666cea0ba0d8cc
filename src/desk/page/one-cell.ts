import { isId } from '#model/entry-id.ts';
import type { EntryKind } from '#model/words.ts';
import type { Written, WrittenPath } from '#read/written-value.ts';
import type { ManyField, OneField } from '../fields/field.ts';
import { ONE_OF } from '../fields/kinds.ts';
import { create } from './ask.ts';
import { button, el, freshId } from './element.ts';
import type { SheetState } from './sheet-state.ts';

/** One fact under its name. */
export function oneCell(state: SheetState, field: OneField, path: WrittenPath): HTMLElement {
  const id = freshId();
  const input = entryInput(field, textAt(state.at(path)), (text) => state.type(path, text));
  input.id = id;
  input.dataset['path'] = path.join('.');
  const offer =
    field.refers === undefined || input instanceof HTMLTextAreaElement
      ? undefined
      : newEntryOffer(state, field.refers, input);
  return el('div', { class: 'cell' }, el('label', { class: 'cap', for: id }, field.label), input, offer);
}

/** Beside a reference to an entry that isn't there: a way to begin it. */
function newEntryOffer(state: SheetState, kind: EntryKind, input: HTMLInputElement | HTMLSelectElement): HTMLElement {
  const holder = el('div', { role: 'status', class: 'small' });
  const draw = () => {
    const id = input.value;
    // A person may be named in free words; only what looks like an id is looked up.
    const there = !isId(id) || state.all.some((one) => one.kind === kind && one.id === id);
    const make = button(`Begin the ${ONE_OF[kind]} ${id}`, async () => {
      try {
        const { id: made } = await create(kind, id, id.replaceAll('-', ' '));
        state.all = [...state.all, { kind, id: made, title: made }];
        holder.replaceChildren(`${kind}/${made} is begun: fill it in later.`);
        state.onChange();
      } catch (error) {
        holder.replaceChildren(error instanceof Error ? error.message : String(error));
      }
    });
    holder.replaceChildren(...(there ? [] : [`There is no ${ONE_OF[kind]} ${id} yet. `, make]));
  };
  input.addEventListener('change', draw);
  draw();
  return holder;
}

export const textAt = (value: Written | undefined) =>
  typeof value === 'string' ? value : value === undefined ? '' : JSON.stringify(value);

/** A longer text doesn't fit on the line of a form. */
const LONG = 28;

type Entry = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** A choice, or a line with the entries that it may name; a new one may be typed too. A text of several lines keeps them. */
export function entryInput(field: OneField | ManyField, value: string, put: (text: string) => void): Entry {
  const { words, refers, facts } = field;
  if (words !== undefined) {
    const choices = [...words, ...(field.none === true && !words.includes('none') ? ['none'] : [])];
    const offered = value === '' || choices.includes(value) ? choices : [...choices, value];
    const options = offered.map((word) =>
      el('option', { value: word, selected: word === value }, word === 'none' ? 'none: known to be none' : word),
    );
    const select = el('select', { class: 'entry' }, el('option', { value: '' }, 'not recorded'), ...options);
    select.addEventListener('change', () => put(select.value));
    return select;
  }
  if (value.includes('\n') || (value.length > LONG && refers === undefined)) {
    const area = el('textarea', { class: 'entry short', spellcheck: 'false' });
    area.value = value;
    area.addEventListener('input', () => put(area.value));
    return area;
  }
  const input = el('input', {
    class: 'entry',
    value,
    placeholder: hintOf(field),
    autocomplete: 'off',
    spellcheck: 'false',
  });
  if (refers !== undefined) input.setAttribute('list', `ids-${refers}`);
  if (facts === true) input.setAttribute('list', 'fact-keys');
  input.addEventListener('input', () => put(input.value));
  return input;
}

function hintOf({ refers, example }: OneField | ManyField): string {
  if (refers !== undefined) return 'choose, or type a new one';
  return example === undefined ? 'not recorded' : `such as ${example}`;
}
