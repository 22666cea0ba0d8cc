import { isListWritten, isMapWritten } from '#read/written-value.ts';
import { photographUrl } from './ask.ts';
import { button, el, freshId } from './element.ts';
import { Plate } from './plate.ts';
import { putRegion, readingRow, readingsOf, textOf } from './reading-row.ts';
import { type DrawnRegion, regionFrom, regionText } from './region.ts';
import type { SheetState } from './sheet-state.ts';

/** The photographs of a reel with their regions, and beneath each what is read in them. */
export function readingsPart(state: SheetState, filledIn: () => void): HTMLElement {
  const holder = el('div', {});
  const redraw: Redraw = (focus, open) => {
    holder.replaceChildren(
      ...photographs(state).map((name) => onePhotograph(state, name, { redraw, filledIn, open })),
      without(state, { redraw, filledIn, open }),
    );
    if (focus !== undefined) holder.querySelector<HTMLElement>(focus)?.focus();
  };
  redraw();
  return holder;
}

/** Draws the readings again.
 *
 * @param focus  What gets the focus.
 * @param open   The reading whose fields are to be seen. */
type Redraw = (focus?: string, open?: number) => void;

interface Around {
  readonly redraw: Redraw;
  readonly filledIn: () => void;
  readonly open: number | undefined;
}

function photographs(state: SheetState): readonly string[] {
  const photos = state.at(['photos']);
  const listed = (isListWritten(photos) ? photos : photos === undefined ? [] : [photos]).map((photo) =>
    typeof photo === 'string' ? photo : isMapWritten(photo) ? textOf(photo['file']) : '',
  );
  return [...new Set([...listed.filter((name) => name !== '' && name !== 'none'), ...state.opened.images])];
}

function onePhotograph(state: SheetState, name: string, { redraw, filledIn, open }: Around): HTMLElement {
  const readings = readingsOf(state);
  const own = readings
    .map((reading, at) => ({ reading, at }))
    .filter(({ reading }) => isMapWritten(reading) && reading['photo'] === name);
  const begin = (region: DrawnRegion) => {
    state.put(
      ['readings'],
      [...readingsOf(state), { of: '', photo: name, region: regionText(region), written: '', sure: 'certain' }],
    );
    redraw(`[data-written="${readings.length}"]`, readings.length);
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
    redraw(`[data-region="${readings.length + 1}"]`, readings.length);
  });
  add.setAttribute('aria-label', `New region by keys on ${name}`);
  const rows = own.map(({ at }) => readingRow(state, at, { redraw, filledIn, moved: show, open: at === open }));
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

function without(state: SheetState, { redraw, filledIn, open }: Around): HTMLElement {
  const shown = photographs(state);
  const rows = readingsOf(state).flatMap((reading, at) =>
    isMapWritten(reading) && shown.includes(textOf(reading['photo']))
      ? []
      : [readingRow(state, at, { redraw, filledIn, moved: () => undefined, open: at === open })],
  );
  const add = button('A reading with no photograph', () => {
    const count = readingsOf(state).length;
    state.put(['readings'], [...readingsOf(state), { of: '', written: '', sure: 'certain' }]);
    redraw(`[data-written="${count}"]`, count);
  });
  return el('div', { class: 'many' }, ...rows, el('div', { class: 'row' }, add));
}
