import { idLike } from '#model/entry-id.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import type { Listed } from '../desk.ts';
import type { AwayShown } from '../entry-moves.ts';
import { ONE_OF } from '../fields/kinds.ts';
import * as ask from './ask.ts';
import { button, el, freshId } from './element.ts';
import { whenWords } from './history-part.ts';
import { takesFiles } from './photographs-part.ts';
import { sheetSection } from './sheet-section.ts';

const HEADINGS: Readonly<Record<EntryKind, string>> = {
  reels: 'Reels',
  editions: 'Editions',
  machines: 'Machines',
  stocks: 'Stocks',
  places: 'Places',
  people: 'People',
  shares: 'Shares',
  notes: 'Notes',
};

/** All entries by kind, with a search, two ways to begin a new one, and what was deleted. */
export function listView(all: readonly Listed[], away: readonly AwayShown[], again: () => void): HTMLElement {
  const lists = el('div', {});
  const search = el('input', { class: 'entry', type: 'search', id: freshId(), oninput: () => draw() });
  const draw = () => lists.replaceChildren(...grouped(all, search.value));
  draw();
  return el(
    'main',
    { id: 'main' },
    el(
      'div',
      { class: 'title' },
      el(
        'div',
        {},
        el('h1', {}, 'The desk'),
        el('p', { class: 'sub' }, 'Enter what the labels say. Nothing is written until you save.'),
      ),
    ),
    sheetSection('Begin', '', fromPhotographs(all), newEntry(all)),
    sheetSection(
      'Entries',
      '',
      el('div', {}, el('label', { class: 'cap', for: search.id }, 'Find an entry by its title or id'), search),
      lists,
    ),
    sheetSection(
      'The collection',
      '',
      el(
        'p',
        {},
        el('a', { href: '#/collection' }, 'Its title, owner, currency and units'),
        ', and what is private in every entry.',
      ),
    ),
    ...(away.length === 0
      ? []
      : [sheetSection('Deleted', 'Kept, and no part of the collection.', deleted(away, again))]),
  );
}

function deleted(away: readonly AwayShown[], again: () => void): HTMLElement {
  const said = el('p', { role: 'alert' });
  const items = away.map(({ kind, id, title, last }) => {
    const back = button('Bring it back', async () => {
      try {
        await ask.bringBack(kind, id);
        again();
      } catch (error) {
        said.textContent = error instanceof Error ? error.message : String(error);
      }
    });
    back.setAttribute('aria-label', `Bring it back: ${kind}/${id}`);
    return el(
      'li',
      {},
      `${title} `,
      el('span', { class: 'small soft' }, `${kind}/${id}, ${whenWords(last.at)} `),
      back,
    );
  });
  return el('div', {}, el('ul', { class: 'list-desk' }, ...items), said);
}

function grouped(all: readonly Listed[], typed: string): HTMLElement[] {
  const wanted = typed.trim().toLowerCase();
  const found = all.filter(({ id, title }) => `${title} ${id}`.toLowerCase().includes(wanted));
  if (found.length === 0) return [el('p', {}, all.length === 0 ? 'No entries yet.' : 'No entry of that name.')];
  return ENTRY_KINDS.filter((kind) => found.some((one) => one.kind === kind)).map((kind) => {
    const items = found
      .filter((one) => one.kind === kind)
      .map(({ id, title }) =>
        el('li', {}, el('a', { href: `#/${kind}/${id}` }, title), el('span', { class: 'small soft' }, ` ${id}`)),
      );
    return el(
      'div',
      {},
      el('h3', {}, `${HEADINGS[kind]} (${items.length})`),
      el('ul', { class: 'list-desk' }, ...items),
    );
  });
}

/** An id that no entry of the kind has yet. */
function freeId(all: readonly Listed[], kind: EntryKind, title: string): string {
  const stem = idLike(title) || ONE_OF[kind];
  const taken = new Set(all.filter((one) => one.kind === kind).map(({ id }) => id));
  for (let count = 1; ; count++) {
    const id = count === 1 ? stem : `${stem}-${count}`;
    if (!taken.has(id)) return id;
  }
}

function fromPhotographs(all: readonly Listed[]): HTMLElement {
  const files = el('input', {
    type: 'file',
    multiple: true,
    accept: 'image/*',
    id: freshId(),
    onchange: () => chosen([...(files.files ?? [])]),
  });
  const next = el('div', {});
  const drop = el(
    'div',
    { class: 'drop' },
    el('label', { for: files.id }, 'A new reel from photographs of its box: drop them here, or choose them'),
    files,
    next,
  );
  const chosen = (photographs: readonly File[]) => {
    if (photographs.length === 0) return;
    const [first] = photographs;
    const named = (first?.name ?? '')
      .replace(/\.[^.]*$/u, '')
      .replaceAll(/[-_]+/gu, ' ')
      .trim();
    const title = /^(?:img|dsc|dscn|pxl|photo|image)?[\s\d]*$/iu.test(named)
      ? 'White box'
      : named.charAt(0).toUpperCase() + named.slice(1);
    next.replaceChildren(
      nameForm(all, 'reels', title, `Make the reel with ${photographs.length} photographs`, (kind, id, name) =>
        makeReel(kind, id, name, photographs),
      ),
    );
    next.querySelector<HTMLElement>('.entry')?.focus();
  };
  takesFiles(drop, chosen);
  return drop;
}

async function makeReel(kind: EntryKind, id: string, title: string, photographs: readonly File[]): Promise<void> {
  const opened = await ask.create(kind, id, title);
  const names: string[] = [];
  const refused: string[] = [];
  for (const photograph of photographs) {
    try {
      names.push((await ask.addPhotograph(kind, id, photograph)).file);
    } catch (error) {
      refused.push(`${photograph.name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  if (names.length > 0) {
    const changes = [{ path: ['photos'], to: names.map((file) => ({ file })) }];
    const saved = await ask.save({ kind, id, hash: opened.hash, changes });
    if (saved.is === 'changed') refused.push('its photographs are copied and not named: somebody else has changed it.');
  }
  if (refused.length > 0) throw new ask.Refusal(`The reel ${id} is made, without: ${refused.join(' ')}`);
}

function newEntry(all: readonly Listed[]): HTMLElement {
  const select = el(
    'select',
    { class: 'entry', id: freshId() },
    ...ENTRY_KINDS.map((kind) => el('option', { value: kind }, ONE_OF[kind])),
  );
  const form = el('div', {});
  const draw = () =>
    form.replaceChildren(
      nameForm(
        all,
        select.value as EntryKind,
        '',
        'Make the entry',
        async (kind, id, title) => void (await ask.create(kind, id, title)),
      ),
    );
  select.addEventListener('change', draw);
  draw();
  return el('div', { class: 'drop' }, el('label', { for: select.id }, 'Or an empty entry for one'), select, form);
}

function nameForm(
  all: readonly Listed[],
  kind: EntryKind,
  proposed: string,
  label: string,
  make: (kind: EntryKind, id: string, title: string) => Promise<void>,
): HTMLElement {
  const title = el('input', { class: 'entry', id: freshId(), value: proposed, required: true });
  const id = el('input', {
    class: 'entry written',
    id: freshId(),
    value: proposed === '' ? '' : freeId(all, kind, proposed),
    required: true,
    spellcheck: 'false',
  });
  const said = el('p', { role: 'alert' });
  let own = false;
  title.addEventListener('input', () => {
    if (!own) id.value = freeId(all, kind, title.value);
  });
  id.addEventListener('input', () => {
    own = true;
  });
  const go = button(
    label,
    async () => {
      said.textContent = '';
      try {
        await make(kind, id.value, title.value);
        location.hash = `#/${kind}/${id.value}`;
      } catch (error) {
        said.textContent = error instanceof Error ? error.message : String(error);
      }
    },
    false,
  );
  return el(
    'div',
    { class: 'cells' },
    el('div', {}, el('label', { class: 'cap', for: title.id }, 'Title'), title),
    el('div', {}, el('label', { class: 'cap', for: id.id }, 'Id, for other entries to use'), id),
    el('div', { class: 'whole' }, go, said),
  );
}
