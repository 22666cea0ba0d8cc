import {
  AUDIENCES,
  BASE_FILMS,
  BINDERS,
  CARRIERS,
  type EntryKind,
  MACHINE_STATES,
  MADE_AS,
  OPENED_BY,
  TRACK_FORMATS,
  UNIT_SYSTEMS,
} from '#model/words.ts';
import { COLUMN_KEYS } from '#read/climate-columns.ts';
import { LAST, PHOTOS, TITLE, YES_NO } from './every-kind.ts';
import { type Field, free, keysOf, list, many, neverNone, one, orNone } from './field.ts';
import { REEL } from './reel.ts';

const END = [PHOTOS, ...LAST];

/** What the desk opens: an entry, or what the collection says of itself. */
export type DeskKind = EntryKind | 'collection';

/** Every fact of every kind of entry, in the order in which it is asked for and written. */
export const FIELDS: Readonly<Record<DeskKind, readonly Field[]>> = {
  reels: REEL,
  editions: [
    TITLE,
    ...orNone(one('artist', 'Artist')),
    ...orNone(one('label', 'Label')),
    many('catalogue', 'Catalogue number', 'HLX 2207'),
    ...orNone(one('made-as', 'Made as', MADE_AS)),
    ...orNone(one('territory', 'Territory')),
    ...orNone(one('issued', 'Issued', '1978-06')),
    list('sides', 'Sides', [
      one('side', 'Side', '1'),
      one('length', 'Length', '18:52'),
      ...orNone(one('matrix', 'Matrix number', 'HLX 2207-A')),
      one('reel', 'Cut from', { refers: 'reels' }),
    ]),
    ...orNone(one('speed', 'Speed', '33⅓ rpm')),
    many('reissue-of', 'Reissue of', { refers: 'editions' }),
    list('run-outs', 'Etched in the run-outs', [
      one('side', 'Side', '1'),
      one('written', 'What is etched', 'HLX 2207-A2'),
      one('cut', 'Cut', '2'),
      one('copy', 'Which copy was seen'),
      one('note', 'Note'),
    ]),
    ...END,
  ],
  machines: [
    TITLE,
    many('speeds', 'Speeds', '15 in/s'),
    list(
      'equalisations',
      'Equalisations',
      [one('speed', 'Speed', '15 in/s'), one('curve', 'Equalisation', 'IEC')],
      'curve',
    ),
    many('tracks', 'Heads fitted', TRACK_FORMATS),
    ...orNone(one('largest-reel', 'Largest reel', '10.5 in')),
    many('takes', 'Takes', CARRIERS),
    many('width', 'Tape width', '1/4 in'),
    many('noise-reduction', 'Noise reduction', 'none'),
    ...orNone(one('state', 'State', MACHINE_STATES)),
    ...orNone(one('belongs-to', 'Belongs to', { refers: 'people' })),
    ...END,
  ],
  stocks: [
    TITLE,
    ...orNone(
      one('base', 'Base', [...BASE_FILMS]),
      one('binder', 'Binder', [...BINDERS]),
      one('back-coated', 'Back-coated', YES_NO),
      one('thickness', 'Thickness, in all', '52 µm'),
      one('made', 'Made', '1972/1984'),
      one('known-to-shed', 'Known to shed', YES_NO),
    ),
    free('source', 'Source', {
      texts: true,
      keys: ['base', 'binder', 'back-coated', 'thickness', 'made', 'known-to-shed'],
    }),
    ...END,
  ],
  places: [
    TITLE,
    ...orNone(one('address', 'Address (private)')),
    list(
      'climate',
      'Climate logs',
      [
        one('file', 'File', { file: true, example: 'climate.csv' }),
        free('columns', 'What its columns are called', { texts: true, keys: COLUMN_KEYS }),
        one('zone', 'Time zone', '+02:00'),
      ],
      'file',
    ),
    ...END,
  ],
  people: [
    TITLE,
    many('initials', 'Initials on labels', 'T.K.'),
    many('did', 'What they did'),
    ...orNone(one('active', 'Active', '1968/1985')),
    ...END,
  ],
  shares: [
    TITLE,
    ...orNone(one('to', 'To whom'), one('front', 'A line outside it')),
    one('for', 'For', [...AUDIENCES]),
    neverNone(many('reels', 'Reels', { refers: 'reels' })),
    many('shows', 'Shows too', { facts: true, example: 'cuts' }),
    many('shows-private', 'Shows, though private', { facts: true, example: 'custody' }),
    ...orNone(one('until', 'Until', '2026-12-31'), one('opened-by', 'Opened by', [...OPENED_BY])),
    ...END,
  ],
  notes: [TITLE, ...END],
  collection: [
    ...orNone(
      one('title', 'Title', 'Back-stair tapes'),
      one('owner', 'Owner'),
      one('currency', 'Currency', 'EUR'),
      one('units', 'Units', [...UNIT_SYSTEMS]),
      one('language', 'Language', 'en'),
    ),
    neverNone(many('private', 'Kept private in every entry', { facts: true, example: 'numbers.job' })),
    neverNone(one('format', 'Version of the entries’ form', '1')),
  ],
};

/** The dotted keys of a kind, in the order in which new ones are put into an entry. */
export const keyOrder = (kind: DeskKind): readonly string[] => keysOf(FIELDS[kind]);

/** What one entry of a kind is called. */
export const ONE_OF: Readonly<Record<DeskKind, string>> = {
  reels: 'reel',
  editions: 'edition',
  machines: 'machine',
  stocks: 'stock',
  places: 'place',
  people: 'person',
  shares: 'share',
  notes: 'note',
  collection: 'collection',
};
