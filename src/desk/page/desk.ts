import { isId } from '#model/entry-id.ts';
import { ENTRY_KINDS } from '#model/words.ts';
import * as ask from './ask.ts';
import { el } from './element.ts';
import { EntryView } from './entry-view.ts';
import { listView } from './list-view.ts';

const sheet = document.querySelector<HTMLElement>('#desk') ?? document.body;
let view: EntryView | undefined;

async function show(): Promise<void> {
  const [, kindWord, id = ''] = location.hash.split('/');
  const kind = ENTRY_KINDS.find((one) => one === kindWord);
  try {
    const all = await ask.entries();
    const one = kindWord === 'collection' ? 'collection' : isId(id) ? kind : undefined;
    view = one === undefined ? undefined : new EntryView(await ask.open(one, id), all, show);
    sheet.replaceChildren(head(), view?.element ?? listView(all, await ask.away(), show));
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    sheet.replaceChildren(
      head(),
      el('main', { id: 'main' }, el('h1', {}, 'The desk'), el('p', { role: 'alert' }, sentence)),
    );
  }
  document.title = `${sheet.querySelector('h1')?.textContent ?? ''} · The desk`;
  scrollTo(0, 0);
}

const head = () => el('header', { class: 'top' }, el('p', { class: 'name' }, el('a', { href: '#/' }, 'The desk')));

let leaving = '';
addEventListener('hashchange', (event) => {
  if (event.newURL === leaving) return;
  if (view?.state.isChanged() === true && !confirm('What you typed here isn’t saved. Leave it?')) {
    leaving = event.oldURL;
    location.replace(event.oldURL);
    return;
  }
  leaving = '';
  show();
});
addEventListener('beforeunload', (event) => {
  if (view?.state.isChanged() === true) event.preventDefault();
});
addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
  if (event.key === 's') {
    event.preventDefault();
    view?.save();
  } else if (event.key === 'z' && !typing && view !== undefined) {
    event.preventDefault();
    view.undo();
  }
});
show();
