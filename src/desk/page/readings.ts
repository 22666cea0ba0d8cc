import { SURENESSES } from '#model/words.ts';
import { isListWritten, isMapWritten, type Written } from '#read/written-value.ts';
import { type Field, keysOf } from '../fields/field.ts';
import { FIELDS } from '../fields/kinds.ts';
import { photographUrl } from './ask.ts';
import { doubtsIn, factFrom } from './doubts.ts';
import { button, el, freshId } from './element.ts';
import { Plate } from './plate.ts';
import { type DrawnRegion, fitted, regionFrom, regionText } from './region.ts';
import type { SheetState } from './sheet-state.ts';

/** What stands between a reading and the sign that is put into it at the cursor. */
const SIGNS: readonly (readonly [sign: string, means: string])[] = [
  ['?', 'a character that can’t be read'],
  ['{1|7}', 'one of these'],
  ['{1?}', 'read so, in doubt'],
  [' / ', 'a new line'],
  ['☑', 'a ticked box'],
  ['☐', 'an empty box'],
];

const NOT_READ = ['photos', 'readings', 'private', 'accepted', 'also', 'title', 'status'];
const READABLE = keysOf(FIELDS.reels.filter(({ key }) => !NOT_READ.includes(key)));

/** The photographs of a reel with their regions, and beneath each what is read in them. Drawn again by `redraw`. */
export function readingsPart(state: SheetState, filledIn: () => void): HTMLElement {
  const holder = el('div', {});
  const redraw = (focus?: string) => {
    holder.replaceChildren(
      ...photographs(state).map((name) => onePhotograph(state, name, redraw, filledIn)),
      without(state, redraw, filledIn),
    );
    if (focus !== undefined) holder.querySelector<HTMLElement>(focus)?.focus();
  };
  redraw();
  return holder;
}

function photographs(state: SheetState): readonly string[] {
  const photos = state.at(['photos']);
  const listed = (isListWritten(photos) ? photos : photos === undefined ? [] : [photos]).map((photo) =>
    typeof photo === 'string' ? photo : isMapWritten(photo) ? textOf(photo['file']) : '',
  );
  return [...new Set([...listed.filter((name) => name !== '' && name !== 'none'), ...state.opened.images])];
}

const textOf = (value: Written | undefined) => (typeof value === 'string' ? value : '');
const readingsOf = (state: SheetState): readonly Written[] => {
  const readings = state.at(['readings']);
  return isListWritten(readings) ? readings : [];
};

function onePhotograph(
  state: SheetState,
  name: string,
  redraw: (focus?: string) => void,
  filledIn: () => void,
): HTMLElement {
  const readings = readingsOf(state);
  const own = readings
    .map((reading, at) => ({ reading, at }))
    .filter(({ reading }) => isMapWritten(reading) && reading['photo'] === name);
  const begin = (region: DrawnRegion) => {
    state.put(
      ['readings'],
      [...readingsOf(state), { of: '', photo: name, region: regionText(region), written: '', sure: 'certain' }],
    );
    redraw(`[data-written="${readings.length}"]`);
  };
  const plate = new Plate(photographUrl(state.kind, state.opened.id, name), name, begin);
  const draw = el('input', {
    type: 'checkbox',
    id: freshId(),
    onchange: () => {
      plate.drawing = draw.checked;
    },
  });
  const show = () =>
    plate.show(
      own.flatMap(({ at }) => {
        const region = regionFrom(textOf(state.at(['readings', at, 'region'])));
        return region === undefined
          ? []
          : [{ name: String(at + 1), region, put: (next: DrawnRegion) => putRegion(state, at, next) }];
      }),
    );
  show();
  const add = button('New region by keys', () => {
    state.put(
      ['readings'],
      [
        ...readingsOf(state),
        { of: '', photo: name, region: regionText({ x: 30, y: 40, w: 40, h: 10 }), written: '', sure: 'certain' },
      ],
    );
    redraw(`[data-region="${readings.length + 1}"]`);
  });
  add.setAttribute('aria-label', `New region by keys on ${name}`);
  const rows = own.map(({ at }) => row(state, at, { redraw, filledIn, moved: show }));
  return el(
    'section',
    { class: 'beside', 'aria-label': `The photograph ${name}` },
    el(
      'div',
      { class: 'stick' },
      el('h3', { class: 'as-written' }, name),
      plate.element,
      el('div', { class: 'row' }, add, draw, el('label', { for: draw.id, class: 'small' }, 'Draw with a finger')),
      el(
        'p',
        { class: 'small soft' },
        'Draw with the mouse on the photograph, or take “New region by keys”: arrows move it, with Shift they size it.',
      ),
    ),
    el(
      'div',
      { class: 'many' },
      ...(rows.length === 0 ? [el('p', { class: 'soft' }, 'Nothing read in it yet.')] : rows),
    ),
  );
}

function without(state: SheetState, redraw: (focus?: string) => void, filledIn: () => void): HTMLElement {
  const shown = photographs(state);
  const rows = readingsOf(state).flatMap((reading, at) =>
    isMapWritten(reading) && shown.includes(textOf(reading['photo']))
      ? []
      : [row(state, at, { redraw, filledIn, moved: () => undefined })],
  );
  const add = button('A reading with no photograph', () => {
    const count = readingsOf(state).length;
    state.put(['readings'], [...readingsOf(state), { of: '', written: '', sure: 'certain' }]);
    redraw(`[data-written="${count}"]`);
  });
  return el('div', { class: 'many' }, ...rows, el('div', { class: 'row' }, add));
}

function putRegion(state: SheetState, at: number, region: DrawnRegion): void {
  state.put(['readings', at, 'region'], regionText(region));
  for (const input of document.querySelectorAll<HTMLInputElement>(`[data-of-region="${at}"]`)) {
    input.value = String(region[input.dataset['side'] as keyof DrawnRegion]);
  }
}

interface Around {
  readonly redraw: (focus?: string) => void;
  readonly filledIn: () => void;
  /** After a region was changed by its figures. */
  readonly moved: () => void;
}

function row(state: SheetState, at: number, { redraw, filledIn, moved }: Around): HTMLElement {
  const value = (key: string) => textOf(state.at(['readings', at, key]));
  const put = (key: string, text: string) => state.put(['readings', at, key], text);
  const said = el('div', { class: 'small', role: 'status' });
  const tell = () => said.replaceChildren(...doubtLines(value('written')), ...fill(state, at, filledIn, tell));
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
  const of = choice('Which fact it is', [value('of'), ...READABLE], value('of'), (text) => {
    put('of', text);
    tell();
  });
  const sure = choice('How sure', SURENESSES, value('sure'), (text) => put('sure', text));
  const note = el('input', {
    class: 'entry',
    id: freshId(),
    value: value('note'),
    oninput: () => put('note', note.value),
  });
  const remove = button(`Take away reading ${at + 1}`, () => {
    state.put(
      ['readings'],
      readingsOf(state).filter((_, other) => other !== at),
    );
    redraw('button');
  });
  tell();
  return el(
    'fieldset',
    { class: 'group' },
    el('legend', {}, `Reading ${at + 1}`),
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
      el('div', {}, el('label', { class: 'cap', for: note.id }, 'Note'), note),
      figures(state, at, moved),
    ),
    remove,
  );
}

const doubtLines = (written: string) => doubtsIn(written).map((doubt) => el('p', {}, doubt));

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
  const field = fieldAt(key);
  if (field === undefined || text === undefined || (field.is !== 'one' && field.is !== 'many')) return [];
  const path = key.split('.');
  const there = state.at(path);
  const all = isListWritten(there) ? there : there === undefined || there === '' ? [] : [there];
  if (all.includes(text)) return [el('p', {}, `${key} says the same.`)];
  const put = () => {
    state.put(path, field.is === 'many' ? [...all, text] : text);
    filledIn();
    tell();
  };
  const words =
    all.length === 0
      ? `Fill in ${key}`
      : field.is === 'many'
        ? `Add it to ${key}`
        : `Put it in place of “${String(there)}”`;
  return [button(`${words}: ${text}`, put)];
}

function fieldAt(key: string): Field | undefined {
  let fields: readonly Field[] = FIELDS.reels;
  let found: Field | undefined;
  for (const part of key.split('.')) {
    found = fields.find((field) => field.key === part);
    if (found?.is === 'list') return undefined;
    fields = found !== undefined && 'fields' in found ? found.fields : [];
  }
  return found;
}
