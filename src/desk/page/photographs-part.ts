import { isMapWritten } from '#read/written-value.ts';
import * as ask from './ask.ts';
import { el, freshId } from './element.ts';
import { textAt } from './one-cell.ts';
import { readingsPart } from './readings.ts';
import { sheetSection } from './sheet-section.ts';
import type { SheetState } from './sheet-state.ts';

/** What a part needs of the view that it stands in. */
export interface AroundPart {
  /** Called when everything is drawn anew, after an undo say. */
  readonly redraws: (() => void)[];
  readonly drawForm: () => void;
  readonly say: (error: unknown) => void;
}

/** An entry's photographs, with a reel's readings beside them, and a way to add more: chosen, or dropped. */
export function photographsPart(state: SheetState, { redraws, drawForm, say }: AroundPart): HTMLElement {
  const files = el('input', { type: 'file', multiple: true, accept: 'image/*', id: freshId() });
  const holder = el('div', { class: 'many' });
  const reel = state.kind === 'reels';
  const draw = () => holder.replaceChildren(...(reel ? [readingsPart(state, drawForm)] : pictures(state)));
  const add = async (photographs: Iterable<File>) => {
    for (const file of photographs) {
      try {
        const { file: name } = await ask.addPhotograph(state.kind, state.opened.id, file);
        state.put(['photos'], [...state.linesAt(['photos']), { file: name }]);
      } catch (error) {
        say(`${file.name}: ${error instanceof Error ? error.message : String(error)}`);
      }
    }
    drawForm();
    draw();
  };
  files.addEventListener('change', () => void add(files.files ?? []));
  redraws.push(draw);
  draw();
  const drop = el(
    'div',
    { class: 'drop' },
    el('label', { for: files.id }, 'Add photographs: drop them here, or choose them'),
    files,
  );
  takesFiles(drop, add);
  return reel
    ? sheetSection('Photographs and readings', 'Letter by letter, as the label has it, faults included.', holder, drop)
    : sheetSection('Photographs', '', holder, drop);
}

/** Lets files be dropped on a part of the page. */
export function takesFiles(part: HTMLElement, take: (files: File[]) => unknown): void {
  part.addEventListener('dragover', (event) => {
    event.preventDefault();
    part.classList.add('over');
  });
  part.addEventListener('dragleave', () => part.classList.remove('over'));
  part.addEventListener('drop', (event) => {
    event.preventDefault();
    part.classList.remove('over');
    take([...(event.dataTransfer?.files ?? [])]);
  });
}

function pictures(state: SheetState): HTMLElement[] {
  const named = state.linesAt(['photos']).map((photo) => textAt(isMapWritten(photo) ? photo['file'] : photo));
  const all = [...new Set([...named.filter((name) => name !== ''), ...state.opened.images])];
  return all.map((name) =>
    el(
      'figure',
      { class: 'beside-entry' },
      el('img', { src: ask.photographUrl(state.kind, state.opened.id, name), alt: `The photograph ${name}` }),
      el('figcaption', { class: 'as-written small' }, name),
    ),
  );
}
