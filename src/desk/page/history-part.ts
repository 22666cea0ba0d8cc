import type { KeptVersion } from '../kept-before.ts';
import * as ask from './ask.ts';
import { button, el } from './element.ts';
import type { SheetState } from './sheet-state.ts';

/** What an entry was before each change: when, what would change, and a way back.
 *
 * @param again  Opens the entry anew. */
export function historyPart(state: SheetState, again: () => void): HTMLElement {
  const list = el('div', { role: 'status' });
  const show = button('Earlier versions', async () => {
    try {
      const versions = await ask.versions(state.kind, state.opened.id);
      list.replaceChildren(
        versions.length === 0
          ? el('p', {}, 'None yet: nothing was changed at the desk.')
          : el('ol', { class: 'list-desk' }, ...versions.map((version) => oneVersion(state, version, again))),
      );
    } catch (error) {
      list.replaceChildren(el('p', {}, error instanceof Error ? error.message : String(error)));
    }
  });
  return el('div', { class: 'many' }, el('div', { class: 'row' }, show), list);
}

function oneVersion(state: SheetState, { version, at, deleted }: KeptVersion, again: () => void): HTMLElement {
  const { kind, id } = state.opened;
  const when = whenWords(at);
  const shown = el('div', {});
  const look = button(`As it was until ${when}`, async () => {
    try {
      const lines = await ask.versionLines(kind, id, version);
      const restore = button('Make it so again', async () => {
        if (state.isChanged()) return say('Save or undo what you typed first.');
        try {
          await ask.restore(kind, id, version, state.opened.hash);
          again();
        } catch (error) {
          say(error instanceof Error ? error.message : String(error));
        }
      });
      const said = el('p', { role: 'alert' });
      const say = (words: string) => {
        said.textContent = words;
      };
      shown.replaceChildren(
        ...(lines.length === 0
          ? [el('p', {}, 'It says the same as now.')]
          : [el('p', {}, 'What would change:'), linesPart(lines), el('div', { class: 'row' }, restore), said]),
      );
    } catch (error) {
      shown.replaceChildren(el('p', { role: 'alert' }, error instanceof Error ? error.message : String(error)));
    }
  });
  return el('li', {}, look, deleted ? ' (it was deleted then)' : '', shown);
}

export const linesPart = (lines: readonly string[]): HTMLElement =>
  el('pre', { class: 'lines', tabindex: '0' }, lines.join('\n'));

/** By the clock of who sits at the desk, to the second. */
export function whenWords(at: string): string {
  const when = new Date(at);
  const two = (figure: number) => String(figure).padStart(2, '0');
  const day = `${when.getFullYear()}-${two(when.getMonth() + 1)}-${two(when.getDate())}`;
  return `${day} ${two(when.getHours())}:${two(when.getMinutes())}:${two(when.getSeconds())}`;
}
