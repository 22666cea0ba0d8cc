import type { AddedLog } from '../files-beside.ts';
import * as ask from './ask.ts';
import { el, freshId } from './element.ts';
import { type AroundPart, takesFiles } from './photographs-part.ts';
import { sheetSection } from './sheet-section.ts';
import type { SheetState } from './sheet-state.ts';

/** A way to put a climate log beside a place: chosen, or dropped. What its columns might mean is filled in to be looked
 * over, where its heading doesn't say it. */
export function logsPart(state: SheetState, { drawForm, say }: AroundPart): HTMLElement {
  const files = el('input', { type: 'file', multiple: true, accept: '.csv,text/csv,.txt,text/plain', id: freshId() });
  const said = el('div', { role: 'status' });
  const add = async (logs: Iterable<File>) => {
    for (const file of logs) {
      try {
        const log = await ask.addLog(state.opened.id, file);
        state.put(['climate'], [...state.linesAt(['climate']), factsOf(log)]);
        said.append(el('p', {}, sentenceOf(log)));
      } catch (error) {
        say(`${file.name}: ${error instanceof Error ? error.message : String(error)}`);
      }
    }
    drawForm();
  };
  files.addEventListener('change', () => void add(files.files ?? []));
  const drop = el(
    'div',
    { class: 'drop' },
    el(
      'label',
      { for: files.id },
      'Add a climate log, as the logger’s program saves it (CSV): drop it here, or choose it',
    ),
    files,
    said,
  );
  takesFiles(drop, add);
  return sheetSection('Climate logs', '', drop);
}

const factsOf = ({ file, columns, zone }: AddedLog) => ({
  file,
  ...(columns === undefined ? {} : { columns }),
  ...(columns === undefined || zone === undefined ? {} : { zone }),
});

function sentenceOf({ file, header, columns }: AddedLog): string {
  if (columns === undefined) return `${file} lies beside the place. Its heading says what its columns are.`;
  const guesses = Object.entries(columns).map(([ours, theirs]) => `${ours} is taken to be “${theirs}”`);
  return `${file} lies beside the place. Its heading has ${header.map((name) => `“${name}”`).join(', ')}, which doesn’t say enough: ${guesses.join('; ')}. Look at that under The facts, Climate logs, before you save.`;
}
