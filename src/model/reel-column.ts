/** How the cell of a column is read: one text; a text a line; a line of facts a line (`title: Low Water; length: 4:10`);
 * or anything, as JSON. */
export type CellForm = 'text' | 'list' | 'lines' | 'free';

/** One column of a sheet of entries. */
export interface SheetColumn {
  /** The fact's key in an entry, dotted; `id` and `body` beside them. */
  readonly key: string;
  readonly form: CellForm;
}

export const column = (form: CellForm, ...keys: readonly string[]): readonly SheetColumn[] =>
  keys.map((key) => ({ key, form }));

/** Every fact of a reel, one column each, in the order of the file. A cell may say `none` for known to be none; an empty
 * cell is not recorded. Where facts stand under one key, that key has a column of its own for `none`. */
export const REEL_COLUMNS: readonly SheetColumn[] = [
  ...column('text', 'id', 'title', 'status', 'lent.to', 'lent.until', 'left.how', 'left.on', 'kind', 'set'),
  ...column('list', 'side', 'edition', 'numbers.catalogue', 'numbers.matrix', 'numbers.job', 'numbers.other'),
  ...column('text', 'client', 'length'),
  ...column('lines', 'contents'),
  ...column('text', 'gaps', 'run-out-sound', 'run-out-sound.holds', 'run-out-sound.length', 'run-out-sound.form'),
  ...column('text', 'run-out-sound.counted', 'format.width', 'format.tracks', 'format.speed', 'format.equalisation'),
  ...column('text', 'format.direction', 'format.noise-reduction', 'format.level'),
  ...column('list', 'format.tones'),
  ...column('text', 'pack.wound-on', 'pack.reel-size', 'pack.outside-diameter', 'pack.hub-diameter', 'pack.wind'),
  ...column('text', 'stock', 'recorded', 'recorded.on', 'recorded.by', 'recorded.at', 'recorded.for'),
  ...column('list', 'copied-from'),
  ...column('text', 'generation'),
  ...column('lines', 'copy-log', 'splices', 'cuts', 'photos', 'readings', 'condition', 'handling'),
  ...column('text', 'place', 'place.at', 'place.shelf', 'place.stored'),
  ...column('lines', 'custody', 'valuations'),
  ...column('text', 'rights'),
  ...column('list', 'private'),
  ...column('lines', 'accepted'),
  ...column('free', 'also'),
  ...column('text', 'body'),
];
