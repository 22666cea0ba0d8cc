import { isListWritten, isMapWritten, type Written, type WrittenPath } from '#read/written-value.ts';
import type { FreeField } from '../fields/field.ts';
import { button, el } from './element.ts';
import { oneCell } from './one-cell.ts';
import type { SheetState } from './sheet-state.ts';

type Redraw = (focus?: string) => void;

/** Keys of the owner's own: texts, several texts, or facts under further keys, as deep as they are. */
export function freeGroup(state: SheetState, field: FreeField, path: WrittenPath, redraw: Redraw): HTMLElement {
  const value = state.at(path);
  if (typeof value === 'string' && value !== '') return oneText(state, field.label, path, redraw);
  return keyed(state, field, path, redraw);
}

function oneText(state: SheetState, label: string, path: WrittenPath, redraw: Redraw): HTMLElement {
  return el(
    'fieldset',
    { class: 'group', 'data-group': path.join('.') },
    el('legend', {}, label),
    oneCell(state, { is: 'one', key: '', label }, path),
    takeAway(state, label, path, redraw),
  );
}

function keyed(state: SheetState, field: FreeField, path: WrittenPath, redraw: Redraw): HTMLElement {
  const { label, keys = [], texts = false } = field;
  const value = state.at(path);
  const pairs = isMapWritten(value) ? Object.entries(value) : [];
  const own = pairs.filter(([key]) => !keys.includes(key));
  const offered = keys.map((key) => oneCell(state, { is: 'one', key, label: key }, [...path, key]));
  const parts = own.map(([key, inner]) => part(state, key, inner as Written, [...path, key], redraw));
  const name = el('input', { class: 'entry', 'aria-label': `A new key: ${label}`, placeholder: 'a new key' });
  const begin = (words: string, start: Written) => {
    const add = button(words, () => {
      const key = name.value.trim();
      const taken = isMapWritten(state.at(path)) && pairs.some(([other]) => other === key);
      if (key === '' || key === '__proto__' || taken) return name.focus();
      state.put([...path, key], start);
      redraw(
        `[data-path="${CSS.escape([...path, key, ...(isListWritten(start) ? [0] : [])].join('.'))}"], [aria-label="A new key: ${CSS.escape(key)}"]`,
      );
    });
    add.setAttribute('aria-label', `${words}: ${label}`);
    return add;
  };
  return el(
    'fieldset',
    { class: 'group', 'data-group': path.join('.') },
    el('legend', {}, label),
    el('div', { class: 'cells' }, ...offered, ...parts),
    el(
      'div',
      { class: 'row' },
      el('div', {}, name),
      begin('Add a text', ''),
      ...(texts ? [] : [begin('Add several texts', ['']), begin('Add facts under it', {})]),
    ),
  );
}

/** What stands under one key, or as one item. */
function part(state: SheetState, label: string, value: Written, path: WrittenPath, redraw: Redraw): HTMLElement {
  if (isMapWritten(value))
    return el(
      'div',
      { class: 'whole' },
      keyed(state, { is: 'free', key: '', label }, path, redraw),
      takeAway(state, label, path, redraw),
    );
  if (isListWritten(value)) {
    const add = button('Add another', () => {
      const now = state.linesAt(path);
      state.put(path, [...now, '']);
      redraw(`[data-path="${CSS.escape([...path, now.length].join('.'))}"]`);
    });
    add.setAttribute('aria-label', `Add another: ${label}`);
    return el(
      'fieldset',
      { class: 'group whole' },
      el('legend', {}, label),
      el(
        'div',
        { class: 'cells' },
        ...value.map((item, at) => part(state, `${label}, ${at + 1}`, item, [...path, at], redraw)),
      ),
      el('div', { class: 'row' }, add, takeAway(state, label, path, redraw)),
    );
  }
  return el(
    'div',
    { class: 'cell' },
    oneCell(state, { is: 'one', key: '', label }, path),
    takeAway(state, label, path, redraw),
  );
}

function takeAway(state: SheetState, label: string, path: WrittenPath, redraw: Redraw): HTMLElement {
  const last = path.at(-1);
  const take = button('Take away', () => {
    if (typeof last === 'number') state.takeLine(path.slice(0, -1), last);
    else state.takeKey(path);
    redraw('.entry, button');
  });
  take.setAttribute('aria-label', `Take away ${label}`);
  return take;
}
