import { SURENESSES } from '#model/words.ts';
import { isListWritten, isMapWritten, pathOf, type Written, type WrittenPath } from '#read/written-value.ts';
import { doubtsIn, factFrom } from './doubts.ts';
import { button, el, freshId } from './element.ts';
import { factChoices, factLabel, textFieldAt } from './fact-choices.ts';
import { type DrawnRegion, fitted, regionFrom, regionText } from './region.ts';
import type { SheetState } from './sheet-state.ts';

/** What a button puts into a reading at the cursor. */
const SIGNS: readonly (readonly [sign: string, means: string])[] = [
  ['?', 'a character that can’t be read'],
  ['{1|7}', 'one of these'],
  ['{1?}', 'read so, in doubt'],
  [' / ', 'a new line'],
  ['☑', 'a ticked box'],
  ['☐', 'an empty box'],
];

export const textOf = (value: Written | undefined) => (typeof value === 'string' ? value : '');

export const readingsOf = (state: SheetState): readonly Written[] => state.linesAt(['readings']);

/** Puts a region into its reading, and into the figures beside it. */
export function putRegion(state: SheetState, at: number, region: DrawnRegion): void {
  state.type(['readings', at, 'region'], regionText(region));
  for (const input of document.querySelectorAll<HTMLInputElement>(`[data-of-region="${at}"]`)) {
    input.value = String(region[input.dataset['side'] as keyof DrawnRegion]);
  }
}

interface Around {
  readonly redraw: (focus?: string) => void;
  readonly filledIn: () => void;
  /** After a region was changed by its figures. */
  readonly moved: () => void;
  /** Whether its fields are to be seen. */
  readonly open: boolean;
}

/** One reading: what it says, which fact that is, how sure, and where on the photograph. */
export function readingRow(state: SheetState, at: number, { redraw, filledIn, moved, open }: Around): HTMLElement {
  const value = (key: string) => textOf(state.at(['readings', at, key]));
  const put = (key: string, text: string) => state.type(['readings', at, key], text);
  const said = el('div', { class: 'small', role: 'status' });
  const summary = el('summary', {});
  const tell = () => {
    said.replaceChildren(...doubtLines(value('written')), ...fill(state, at, filledIn, tell));
    summary.replaceChildren(...inShort(state, at));
  };
  const written = el('input', {
    class: 'entry written',
    id: freshId(),
    value: value('written'),
    spellcheck: 'false',
    autocomplete: 'off',
    'data-written': at,
    oninput: () => {
      put('written', written.value);
      tell();
    },
  });
  const signs = SIGNS.map(([sign, means]) =>
    button(
      sign.trim() === '/' ? '/' : sign,
      () => {
        const [start, end] = [
          written.selectionStart ?? written.value.length,
          written.selectionEnd ?? written.value.length,
        ];
        written.setRangeText(sign, start, end, 'end');
        written.focus();
        put('written', written.value);
        tell();
      },
      true,
      { 'aria-label': `Put in ${sign.trim()}: ${means}` },
    ),
  );
  const of = factChoice(state, value('of'), (text) => {
    put('of', text);
    tell();
  });
  const sure = choice('How sure', SURENESSES, value('sure'), (text) => {
    put('sure', text);
    tell();
  });
  const by = el('input', {
    class: 'entry',
    id: freshId(),
    value: value('by'),
    list: 'ids-people',
    autocomplete: 'off',
    oninput: () => put('by', by.value),
  });
  const note = el('input', {
    class: 'entry',
    id: freshId(),
    value: value('note'),
    oninput: () => put('note', note.value),
  });
  const remove = button(`Take away reading ${at + 1}`, () => {
    state.takeLine(['readings'], at);
    redraw('summary, button');
  });
  tell();
  return el(
    'details',
    { class: 'reading', open, 'data-reading': at },
    summary,
    el(
      'div',
      { class: 'cells' },
      el(
        'div',
        { class: 'whole' },
        el('label', { class: 'cap', for: written.id }, 'What it says, letter by letter'),
        written,
        el('div', { class: 'signs' }, ...signs),
        said,
      ),
      of,
      sure,
      el('div', {}, el('label', { class: 'cap', for: by.id }, 'Read by'), by),
      el('div', {}, el('label', { class: 'cap', for: note.id }, 'Note'), note),
      figures(state, at, moved),
    ),
    remove,
  );
}

const doubtLines = (written: string) => doubtsIn(written).map((doubt) => el('p', {}, doubt));

/** A reading in one line: its number on the photograph, the fact, what it says. */
function inShort(state: SheetState, at: number): (HTMLElement | string)[] {
  const value = (key: string) => textOf(state.at(['readings', at, key]));
  const fact = value('of') === '' ? 'no fact yet' : factLabel(state, value('of'));
  return [
    el('span', { class: 'reg' }, String(at + 1)),
    ` ${fact}: `,
    el('span', { class: 'as-written' }, value('written') || '…'),
    value('sure') === '' || value('sure') === 'certain' ? '' : ` (${value('sure')})`,
  ];
}

/** The facts of a reel by their names, a heading each part. */
function factChoice(state: SheetState, value: string, put: (text: string) => void): HTMLElement {
  const groups = factChoices(state);
  const known = groups.some(({ facts }) => facts.some(({ key }) => key === value));
  const select = el(
    'select',
    { class: 'entry', id: freshId(), onchange: () => put(select.value) },
    el('option', { value: '' }, 'choose'),
    known || value === '' ? undefined : el('option', { value, selected: true }, value),
    ...groups.map(({ heading, facts }) =>
      el(
        'optgroup',
        { label: heading },
        ...facts.map(({ key, label }) => el('option', { value: key, selected: key === value }, label)),
      ),
    ),
  );
  return el('div', {}, el('label', { class: 'cap', for: select.id }, 'Which fact it is'), select);
}

/** A choice among words, with what stands there now. */
function choice(label: string, words: readonly string[], value: string, put: (text: string) => void): HTMLElement {
  const offered = [...new Set(words)].filter((word) => word !== '');
  const options = offered.map((word) => el('option', { value: word, selected: word === value }, word));
  const select = el(
    'select',
    { class: 'entry', id: freshId(), onchange: () => put(select.value) },
    el('option', { value: '' }, 'choose'),
    ...options,
  );
  return el('div', {}, el('label', { class: 'cap', for: select.id }, label), select);
}

/** The four figures of a region, for those who would rather type them. */
function figures(state: SheetState, at: number, moved: () => void): HTMLElement | undefined {
  const region = regionFrom(textOf(state.at(['readings', at, 'region'])));
  if (region === undefined) return undefined;
  const names = { x: 'left', y: 'top', w: 'width', h: 'height' } as const;
  const inputs = (['x', 'y', 'w', 'h'] as const).map((side) => {
    const input = el('input', {
      class: 'entry',
      type: 'number',
      min: '0',
      max: '100',
      step: '0.1',
      value: region[side],
      'aria-label': `Region ${at + 1}, ${names[side]} in percent`,
      'data-of-region': at,
      'data-side': side,
    });
    input.addEventListener('change', () => {
      const now = regionFrom(textOf(state.at(['readings', at, 'region']))) ?? region;
      putRegion(state, at, fitted({ ...now, [side]: Number(input.value) }));
      moved();
    });
    return input;
  });
  return el(
    'div',
    { class: 'whole' },
    el('span', { class: 'cap' }, 'Region: left, top, width, height in percent'),
    el('div', { class: 'row' }, ...inputs.map((input) => el('div', {}, input))),
  );
}

/** Fills the fact in where there is none yet; where another stands, it is offered and nothing is written over. */
function fill(state: SheetState, at: number, filledIn: () => void, tell: () => void): (HTMLElement | string)[] {
  const key = textOf(state.at(['readings', at, 'of']));
  const text = factFrom(textOf(state.at(['readings', at, 'written'])));
  const field = textFieldAt(key);
  if (field === undefined || text === undefined) return [];
  const path = pathOf(key);
  const label = factLabel(state, key);
  const there = state.at(path);
  const all = isListWritten(there) ? there : there === undefined || there === '' ? [] : [there];
  if (all.includes(text)) return [el('p', {}, `${label} says the same.`)];
  const put = () => {
    makeLines(state, path);
    state.put(path, field.is === 'many' ? [...all, text] : text);
    filledIn();
    tell();
  };
  const words =
    all.length === 0
      ? `Fill in ${label}`
      : field.is === 'many'
        ? `Add it to ${label}`
        : `Put it in place of “${String(there)}”`;
  return [button(`${words}: ${text}`, put)];
}

/** A fact of a line needs a list: one line's facts, or `none`, may stand in place of it. */
function makeLines(state: SheetState, path: WrittenPath): void {
  const [key, index] = path;
  if (key === undefined || typeof index !== 'number') return;
  const there = state.at([key]);
  if (isMapWritten(there)) state.put([key], [there]);
  else if (typeof there === 'string' && there !== '') state.put([key], there === 'none' ? [] : [there]);
}
