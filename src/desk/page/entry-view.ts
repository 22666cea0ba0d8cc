import { isMapWritten } from '#read/written-value.ts';
import type { Checked, Listed, Opened } from '../desk.ts';
import type { Field } from '../fields/field.ts';
import { FIELDS, ONE_OF } from '../fields/kinds.ts';
import * as ask from './ask.ts';
import { bothTexts } from './both-texts.ts';
import { button, el, freshId } from './element.ts';
import { fieldOf } from './form-fields.ts';
import { historyPart } from './history-part.ts';
import { logsPart } from './logs-part.ts';
import { movesPart } from './moves-part.ts';
import { offeredChoices } from './offered-choices.ts';
import { photographsPart } from './photographs-part.ts';
import { problemsPart } from './problems-part.ts';
import { sheetSection } from './sheet-section.ts';
import { SheetState } from './sheet-state.ts';

/** How long nobody types before the checks are asked. */
const QUIET_MS = 350;

/** One entry: its photographs and readings, every fact, the owner's account, and what the checks say as one types. */
export class EntryView {
  readonly element: HTMLElement;
  readonly state: SheetState;
  readonly #form = el('div', {});
  readonly #problems = el('div', {});
  readonly #lines = el('div', {});
  readonly #said = el('p', { role: 'status' });
  readonly #conflict = el('div', {});
  readonly #save: HTMLButtonElement;
  readonly #undo: HTMLButtonElement;
  #asked = 0;
  #saying = '';
  readonly #again: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param again  Opens the entry anew, as it is on disk. */
  constructor(opened: Opened, all: readonly Listed[], again: () => void) {
    this.#again = again;
    this.state = new SheetState(opened, all);
    this.#save = button('Save', () => this.save(), false);
    this.#undo = button('Undo', () => this.undo());
    this.state.onChange = () => this.#changed();
    const sections = opened.facts === undefined ? [] : this.#sections(opened);
    const facts = button('To the facts', () => this.element.querySelector<HTMLElement>('#facts .entry')?.focus());
    const says = button('To the checks', () => this.element.querySelector<HTMLElement>('#says')?.focus());
    this.element = el(
      'main',
      { id: 'main' },
      el(
        'div',
        { class: 'title' },
        el(
          'div',
          {},
          el('h1', {}, titleOf(opened)),
          el('p', { class: 'sub' }, [ONE_OF[opened.kind], opened.id].filter((word) => word !== '').join(' · ')),
        ),
      ),
      ...offeredChoices(all, opened),
      el(
        'div',
        { class: 'bar-desk' },
        this.#save,
        this.#undo,
        facts,
        says,
        el('a', { href: '#/' }, 'All entries'),
        this.#said,
      ),
      this.#conflict,
      el(
        'div',
        { class: 'desk-cols' },
        el('div', {}, ...sections),
        el(
          'aside',
          {
            class: 'desk-says',
            id: 'says',
            tabindex: '0',
            'aria-label': 'What the checks say, and what saving changes',
          },
          el('h2', {}, 'What the checks say'),
          this.#problems,
          el('h2', {}, 'What saving changes'),
          this.#lines,
        ),
      ),
    );
    this.#drawForm();
    this.#drawProblems(opened);
    this.#lines.append(el('p', {}, 'Nothing.'));
    this.#tell();
  }

  #sections(opened: Opened): HTMLElement[] {
    const body = el('textarea', { class: 'entry owner', id: freshId() });
    body.value = this.state.body;
    body.addEventListener('input', () => this.state.typeBody(body.value));
    this.#redraws.push(() => {
      body.value = this.state.body;
    });
    const account = el('div', {}, el('label', { class: 'cap', for: body.id }, 'Your own account, in Markdown'), body);
    const { kind } = opened;
    const around = {
      redraws: this.#redraws,
      drawForm: () => this.#drawForm(),
      say: (error: unknown) => this.#say(error),
    };
    return [
      ...(kind === 'collection' ? [] : [photographsPart(this.state, around)]),
      ...(kind === 'places' ? [logsPart(this.state, around)] : []),
      sheetSection(
        'The facts',
        'What is left empty is not recorded. The word none means known to be none.',
        el('div', { id: 'facts' }, this.#form),
      ),
      sheetSection('In your own words', '', account),
      sheetSection(
        'The entry itself',
        'What it was before each change is kept.',
        historyPart(this.state, this.#again),
        ...(kind === 'collection' ? [] : [movesPart(this.state, kind)]),
      ),
    ];
  }

  readonly #redraws: (() => void)[] = [];

  #drawForm(): void {
    const fields = FIELDS[this.state.kind].filter(({ key }) => key !== 'readings');
    const flat = fields.filter(isFlat);
    const groups = fields.filter((field) => !isFlat(field));
    this.#form.replaceChildren(
      el('div', { class: 'cells' }, ...flat.map((field) => fieldOf(this.state, field, [field.key]))),
      ...groups.map((field) => fieldOf(this.state, field, [field.key])),
    );
  }

  undo(): void {
    this.state.undo();
    this.#drawForm();
    for (const redraw of this.#redraws) redraw();
  }

  /** What is said already stays as it stands, with the reason that someone may be typing in it. */
  #drawProblems({ problems, accepted }: Checked): void {
    const says = JSON.stringify([problems, accepted]);
    if (says === this.#saying) return;
    this.#saying = says;
    this.#problems.replaceChildren(problemsPart({ problems, accepted }, this.state, () => this.#drawForm()));
  }

  #changed(): void {
    this.#tell();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#look(), QUIET_MS);
  }

  #tell(): void {
    const changed = this.state.isChanged();
    this.#save.disabled = !changed;
    this.#undo.disabled = !this.state.canUndo();
    this.#said.textContent = changed ? 'Not saved yet.' : 'As saved.';
  }

  async #look(): Promise<void> {
    const asked = ++this.#asked;
    try {
      const { lines, ...checked } = await ask.look(this.state.wish());
      // An answer to what was typed before is overtaken.
      if (asked !== this.#asked) return;
      this.#drawProblems(checked);
      this.#lines.replaceChildren(
        lines.length === 0 ? el('p', {}, 'Nothing.') : el('pre', { class: 'lines', tabindex: '0' }, lines.join('\n')),
      );
      if (this.state.isChanged()) this.#said.textContent = `Not saved yet. ${counted(checked.problems.length)}`;
    } catch (error) {
      this.#say(error);
    }
  }

  async save(): Promise<void> {
    if (!this.state.isChanged()) return;
    try {
      const saved = await ask.save(this.state.wish());
      if (saved.is === 'changed') return this.#tellBoth(saved.theirs, saved.yours);
      this.state.saved(saved.entry);
      this.#conflict.replaceChildren();
      this.#drawProblems(saved.entry);
      for (const redraw of this.#redraws) redraw();
      this.#lines.replaceChildren(el('p', {}, 'Nothing.'));
      this.#tell();
      this.#said.textContent = `Saved. ${counted(saved.entry.problems.length)}`;
    } catch (error) {
      this.#say(error);
    }
  }

  /** Another window, or an editor, has changed the entry meanwhile. */
  #tellBoth(theirs: string, yours: string): void {
    const { kind, opened } = this.state;
    const onTop = button('Put mine on top of it', async () => {
      const now = await ask.open(kind, opened.id);
      const wish = { ...this.state.wish(), hash: now.hash };
      const saved = await ask.save(wish);
      if (saved.is === 'changed') return this.#tellBoth(saved.theirs, saved.yours);
      this.#again();
    });
    const drop = button('Leave mine, and take it as it is now', () => {
      this.#again();
    });
    this.#said.textContent = 'Not saved: somebody else has changed this entry.';
    this.#conflict.replaceChildren(bothTexts(theirs, yours, el('div', { class: 'row' }, onTop, drop)));
    this.#conflict.querySelector<HTMLElement>('section')?.focus();
  }

  #say(error: unknown): void {
    this.#said.textContent = error instanceof Error ? error.message : String(error);
  }
}

const isFlat = (field: Field) => field.is === 'one' || field.is === 'many';
const counted = (count: number) =>
  count === 0
    ? 'The checks find nothing that disagrees.'
    : count === 1
      ? 'The checks say one thing.'
      : `The checks say ${count} things.`;

function titleOf({ facts, id, kind }: Opened): string {
  const title = isMapWritten(facts) ? facts['title'] : undefined;
  return typeof title === 'string' ? title : kind === 'collection' ? 'The collection' : id;
}
