import { type CellForm, column, REEL_COLUMNS, type SheetColumn } from './reel-column.ts';
import type { EntryKind } from './words.ts';

/** The kinds of entry that a spreadsheet can hold, one a row. */
export const SHEET_KINDS = ['reels', 'editions', 'machines', 'stocks', 'places', 'people'] as const;
export type SheetKind = (typeof SHEET_KINDS)[number] & EntryKind;

const FIRST = column('text', 'id', 'title');
const LAST = [
  ...column('lines', 'photos'),
  ...column('list', 'private'),
  ...column('lines', 'accepted'),
  ...column('free', 'also'),
  ...column('text', 'body'),
];

const COLUMNS: Readonly<Record<SheetKind, readonly SheetColumn[]>> = {
  reels: REEL_COLUMNS,
  editions: [
    ...FIRST,
    ...column('text', 'artist', 'label'),
    ...column('list', 'catalogue'),
    ...column('text', 'made-as', 'territory', 'issued'),
    ...column('lines', 'sides'),
    ...column('text', 'speed'),
    ...column('list', 'reissue-of'),
    ...column('lines', 'run-outs'),
    ...LAST,
  ],
  machines: [
    ...FIRST,
    ...column('list', 'speeds'),
    ...column('lines', 'equalisations'),
    ...column('list', 'tracks'),
    ...column('text', 'largest-reel'),
    ...column('list', 'takes', 'width', 'noise-reduction'),
    ...column('text', 'state', 'belongs-to'),
    ...LAST,
  ],
  stocks: [
    ...FIRST,
    ...column('text', 'base', 'binder', 'back-coated', 'thickness', 'made', 'known-to-shed'),
    ...column('free', 'source'),
    ...LAST,
  ],
  places: [...FIRST, ...column('text', 'address'), ...column('lines', 'climate'), ...LAST],
  people: [...FIRST, ...column('list', 'initials', 'did'), ...column('text', 'active'), ...LAST],
};

/** The columns of a sheet of one kind of entry, in the order in which an entry has the facts. */
export const columnsOf = (kind: SheetKind): readonly SheetColumn[] => COLUMNS[kind];

const FORMS: Readonly<Record<string, ReadonlyMap<string, CellForm>>> = Object.fromEntries(
  SHEET_KINDS.map((kind) => [kind, new Map(COLUMNS[kind].map(({ key, form }) => [key, form]))]),
);

/** How the cells of a fact's column are read; undefined for a key that the kind hasn't. */
export const formOf = (kind: SheetKind, key: string): CellForm | undefined => FORMS[kind]?.get(key);

/** What a row of a reel may tell of the record that came of it: `edition.artist` is the artist of the reel's edition. */
const OF_THE_EDITION = ['title', 'artist', 'label', 'catalogue', 'territory', 'issued'] as const;

/** What a column of a sheet can be taken for, beside `also` and `?`. */
export const keysOfSheet = (kind: SheetKind): readonly string[] => [
  ...COLUMNS[kind].map(({ key }) => key),
  ...(kind === 'reels' ? OF_THE_EDITION.map((key) => `edition.${key}`) : []),
];
