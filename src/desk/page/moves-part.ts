import type { EntryKind } from '#model/words.ts';
import * as ask from './ask.ts';
import { button, el, freshId } from './element.ts';
import { linesPart } from './history-part.ts';
import type { SheetState } from './sheet-state.ts';

/** Another id for an entry, or its end: what either does is shown first, and done when it is asked for. */
export function movesPart(state: SheetState, kind: EntryKind): HTMLElement {
  const to = el('input', { class: 'entry written', id: freshId(), value: state.opened.id, spellcheck: 'false' });
  const shown = el('div', { role: 'status' });
  const say = (error: unknown) =>
    shown.replaceChildren(el('p', {}, error instanceof Error ? error.message : String(error)));
  const tried = (work: () => Promise<void>) => async () => {
    if (state.isChanged()) return say('Save or undo what you typed first.');
    try {
      await work();
    } catch (error) {
      say(error);
    }
  };
  const leave = button('Leave it as it is', () => shown.replaceChildren());
  const rename = button(
    'Give it this id …',
    tried(async () => {
      if (to.value === state.opened.id) return say('That is its id already.');
      shown.replaceChildren(await renamingShown(kind, state.opened.id, to.value, tried, leave));
    }),
  );
  const remove = button(
    'Delete the entry …',
    tried(async () => {
      shown.replaceChildren(await deletingShown(kind, state.opened.id, tried, leave));
    }),
  );
  return el(
    'div',
    { class: 'many moves' },
    el('label', { class: 'cap', for: to.id }, 'Its id, which other entries name it by'),
    to,
    el('div', { class: 'row' }, rename, remove),
    shown,
  );
}

type Tried = (work: () => Promise<void>) => () => Promise<void>;

async function renamingShown(kind: EntryKind, id: string, to: string, tried: Tried, leave: HTMLElement) {
  const plan = await ask.showRenaming(kind, id, to);
  const go = button(
    `Rename it to ${to}`,
    tried(async () => {
      await ask.rename(kind, id, to, plan.hash);
      location.hash = `#/${kind}/${to}`;
    }),
    false,
  );
  const others = plan.files.length;
  const cannot = plan.cannot.map(({ file, why }) => el('p', { class: 'query' }, `${file}: ${why}`));
  return el(
    'section',
    { 'aria-label': `What renaming to ${to} changes` },
    el('p', {}, `${plan.path.from} becomes ${plan.path.to}.`),
    el(
      'p',
      {},
      others === 0 ? 'Nothing refers to it.' : `${others === 1 ? 'One file changes' : `${others} files change`}:`,
    ),
    ...plan.files.flatMap(({ file, lines }) => [el('h3', { class: 'as-written' }, file), linesPart(lines)]),
    ...(plan.inWords.length === 0
      ? []
      : [el('p', {}, `Named in plain words too, which stay as they are: ${plan.inWords.join(', ')}.`)]),
    ...(cannot.length === 0 ? [] : [el('p', {}, 'It can’t be renamed before these are mended:'), ...cannot]),
    el('div', { class: 'row' }, ...(cannot.length === 0 ? [go] : []), leave),
  );
}

async function deletingShown(kind: EntryKind, id: string, tried: Tried, leave: HTMLElement) {
  const plan = await ask.showDeleting(kind, id);
  const go = button(
    `Delete ${id}`,
    tried(async () => {
      await ask.remove(kind, id, plan.hash);
      location.hash = '#/';
    }),
    false,
  );
  return el(
    'section',
    { 'aria-label': `What deleting ${id} does` },
    el('p', {}, `It moves ${plan.files.join(' and ')} out of the collection. It is kept, and can be brought back.`),
    ...(plan.referring.length === 0
      ? [el('p', {}, 'Nothing refers to it.')]
      : [
          el('p', {}, 'These refer to it, and the checks will ask for it:'),
          el('ul', {}, ...plan.referring.map((line) => el('li', { class: 'as-written small' }, line))),
        ]),
    el('div', { class: 'row' }, go, leave),
  );
}
