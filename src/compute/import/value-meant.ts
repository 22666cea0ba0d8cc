import { valueOfCell } from '#compute/interchange/cell-text.ts';
import type { Loose } from '#model/entry.ts';
import { isId } from '#model/entry-id.ts';
import type { CellForm } from '#model/reel-column.ts';
import { type ColumnSense, listsMeant, textsMeant } from './cell-forms.ts';

/** Whether a value can be read where a key stands. Handed in: what an entry may say is decided where entries are read. */
export type Accepts = (key: string, value: Loose) => boolean;

/** The first that can be read of what a cell may mean: in our own form in a sheet that is ours, else as sheets write it.
 *
 * @param form  How cells of the fact are read; undefined for what is no fact of the entry: then nothing is meant. */
export function valueMeant(
  plan: ColumnSense & { readonly as: string },
  cell: string,
  form: CellForm | undefined,
  ours: boolean,
  accepts: Accepts,
): Loose | undefined {
  const { as } = plan;
  if (form === undefined) return undefined;
  const own = valueOfCell(cell, form);
  if (as === 'id') return typeof own === 'string' && isId(own) ? own : undefined;
  if (as === 'title' || as === 'body' || as === 'also') return own;
  const others = form === 'text' ? textsMeant(as, cell, plan) : listsMeant(as, cell, plan);
  const inOurForm = own === undefined ? [] : [own];
  return (ours ? [...inOurForm, ...others] : [...others, ...inOurForm]).find((value) =>
    accepts(as, as === 'photos' ? namesOnly(value) : value),
  );
}

/** A photograph may be named with the way to it, which is followed when it is copied; the entry has the name alone. */
const namesOnly = (photos: Loose): Loose =>
  typeof photos === 'string' || !Array.isArray(photos)
    ? photos
    : photos.map((photo: Loose) =>
        typeof photo === 'object' && 'file' in photo && typeof photo.file === 'string'
          ? { ...photo, file: photo.file.split(/[\\/]/u).at(-1) ?? '' }
          : photo,
      );
