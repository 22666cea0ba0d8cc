import { isListWritten, type Written, type WrittenPath } from '#read/written-value.ts';
import type { Field, GroupField, ManyField } from '../fields/field.ts';
import { button, el } from './element.ts';
import { freeGroup } from './free-group.ts';
import { entryInput, oneCell, textAt } from './one-cell.ts';
import type { SheetState } from './sheet-state.ts';

/** A field of the form, which puts what is typed into the sheet as it is typed. */
export function fieldOf(state: SheetState, field: Field, path: WrittenPath): HTMLElement {
  switch (field.is) {
    case 'one':
      return oneCell(state, field, path);
    case 'many':
      return redrawn((redraw) => manyCell(state, field, path, redraw));
    case 'map':
      return redrawn((redraw) => mapGroup(state, field, path, redraw));
    case 'list':
      return redrawn((redraw) => listGroup(state, field, path, redraw));
    case 'free':
      return redrawn((redraw) => freeGroup(state, field, path, redraw));
  }
}

/** Draws a part again in its own place, and sets the focus on what is marked for it. */
function redrawn(draw: (redraw: (focus?: string) => void) => HTMLElement): HTMLElement {
  const holder = el('div', { class: 'whole' });
  const redraw = (focus?: string) => {
    holder.replaceChildren(draw(redraw));
    if (focus !== undefined) holder.querySelector<HTMLElement>(focus)?.focus();
  };
  redraw();
  return holder;
}

function manyCell(state: SheetState, field: ManyField, path: WrittenPath, redraw: (focus?: string) => void) {
  const value = state.at(path);
  const items = isListWritten(value) ? value.map(textAt) : value === undefined || value === '' ? [] : [textAt(value)];
  const put = (next: readonly string[]) => {
    // One text that stood by itself stays so.
    const [only = ''] = next;
    if (next.length === 1 && !isListWritten(state.at(path))) state.type(path, only);
    else state.put(path, next.length === 0 ? undefined : next);
  };
  const rows = items.map((item, index) => {
    const input = entryInput(field, item, (text) => {
      items[index] = text;
      if (isListWritten(state.at(path))) state.type([...path, index], text);
      else put(items);
    });
    input.setAttribute('aria-label', `${field.label}, ${index + 1}`);
    input.dataset['path'] = `${path.join('.')}.${index}`;
    const remove = button('Take away', () => {
      put(items.filter((text, other) => other !== index && text !== ''));
      redraw('button');
    });
    remove.setAttribute('aria-label', `Take away ${field.label} ${item}`);
    return el('div', { class: 'row' }, input, remove);
  });
  const add = button(items.length === 0 ? 'Add' : 'Add another', () => {
    state.put(path, [...items, '']);
    redraw('.row:last-of-type .entry');
  });
  add.setAttribute('aria-label', `${items.length === 0 ? 'Add' : 'Add another'}: ${field.label}`);
  add.dataset['add'] = path.join('.');
  const none = items.length === 0 ? noneButton(state, field, path, redraw) : undefined;
  return el(
    'div',
    { class: 'many', role: 'group', 'aria-label': field.label },
    el('span', { class: 'cap' }, field.label),
    ...rows,
    el('div', { class: 'row' }, add, none),
  );
}

/** Where nothing is recorded yet, a way to say that there is known to be none. */
function noneButton(state: SheetState, field: Field, path: WrittenPath, redraw: (focus?: string) => void) {
  if (field.none !== true) return undefined;
  const none = button('Known to be none', () => {
    state.put(path, 'none');
    redraw('.entry, button');
  });
  none.setAttribute('aria-label', `${field.label}: known to be none`);
  return none;
}

function mapGroup(state: SheetState, field: GroupField, path: WrittenPath, redraw: (focus?: string) => void) {
  const value = state.at(path);
  if (typeof value === 'string' && value !== '') return noneGroup(state, field, path, value, redraw);
  return el(
    'fieldset',
    { class: 'group', 'data-group': path.join('.') },
    el('legend', {}, field.label),
    el('div', { class: 'cells' }, ...field.fields.map((inner) => fieldOf(state, inner, [...path, inner.key]))),
    value === undefined || value === '' ? noneButton(state, field, path, redraw) : undefined,
  );
}

/** One text in place of facts: `none`, or the short form. */
function noneGroup(
  state: SheetState,
  field: GroupField,
  path: WrittenPath,
  value: string,
  redraw: (focus?: string) => void,
) {
  const open = button('Enter its facts', () => {
    const inner = field.short === undefined || value === 'none' ? undefined : { [field.short]: value };
    state.put(path, field.is === 'list' ? (inner === undefined ? undefined : [inner]) : inner);
    redraw('.entry, button');
  });
  const words = value === 'none' ? 'Known to be none.' : value;
  return el(
    'fieldset',
    { class: 'group' },
    el('legend', {}, field.label),
    el('div', { class: 'row' }, el('span', {}, words), open),
  );
}

function listGroup(state: SheetState, field: GroupField, path: WrittenPath, redraw: (focus?: string) => void) {
  const value = state.at(path);
  if (typeof value === 'string' && value !== '') return noneGroup(state, field, path, value, redraw);
  const items: readonly Written[] = isListWritten(value) ? value : value === undefined || value === '' ? [] : [value];
  const rows = items.map((item, index) => {
    // A single map in place of a list keeps its form.
    const at = isListWritten(value) ? [...path, index] : path;
    const inner = field.fields.map((one) => fieldOf(state, one, [...at, one.key]));
    const remove = button(`Take away line ${index + 1}`, () => {
      state.takeLine(path, index);
      redraw('button');
    });
    // A text in place of a line's facts is what its short key would hold.
    const short =
      typeof item === 'string' && item !== ''
        ? el(
            'p',
            {},
            el('span', { class: 'as-written' }, item),
            ' ',
            button('Enter its facts', () => {
              state.put(at, { [field.short ?? '']: item });
              redraw('.entry');
            }),
          )
        : undefined;
    return el(
      'fieldset',
      { class: 'group' },
      el('legend', {}, `${field.label}, line ${index + 1}`),
      short ?? el('div', { class: 'cells' }, ...inner),
      remove,
    );
  });
  const add = button('Add a line', () => {
    state.put(path, [...state.linesAt(path), {}]);
    redraw('fieldset fieldset:last-of-type .entry');
  });
  add.setAttribute('aria-label', `Add a line: ${field.label}`);
  add.dataset['add'] = path.join('.');
  const none = items.length === 0 ? noneButton(state, field, path, redraw) : undefined;
  return el(
    'fieldset',
    { class: 'group', 'data-group': path.join('.') },
    el('legend', {}, field.label),
    ...rows,
    el('div', { class: 'row' }, add, none),
  );
}
