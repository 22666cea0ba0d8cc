/** The closed lists of words that an entry may use. Order is the order in which they are offered. */
export const STATUSES = ['held', 'lent', 'elsewhere', 'missing', 'gone', 'destroyed'] as const;
export type Status = (typeof STATUSES)[number];

export const LEAVINGS = ['sold', 'given', 'swapped', 'lost', 'destroyed'] as const;
export type Leaving = (typeof LEAVINGS)[number];

export const KINDS = [
  'session tape',
  'original master',
  'production master',
  'copy master',
  'cutting master',
  'safety copy',
  'running master',
] as const;
export type Kind = (typeof KINDS)[number];

export const TRACK_FORMATS = [
  'full-track mono',
  'half-track mono',
  'two-track stereo',
  'quarter-track stereo',
  'other',
] as const;
export type TrackFormat = (typeof TRACK_FORMATS)[number];

export const DIRECTIONS = ['one', 'both'] as const;
export type Direction = (typeof DIRECTIONS)[number];

export const CARRIERS = ['bare hub', 'reel'] as const;
export type Carrier = (typeof CARRIERS)[number];

export const WINDS = ['tail out', 'head out'] as const;
export type Wind = (typeof WINDS)[number];

export const SURENESSES = ['certain', 'likely', 'guess'] as const;
export type Sureness = (typeof SURENESSES)[number];

export const PHOTO_SUBJECTS = [
  'box front',
  'box back',
  'spine',
  'legend',
  'reel',
  'pack',
  'tape end',
  'leader',
  'other',
] as const;
export type PhotoSubject = (typeof PHOTO_SUBJECTS)[number];

export const SIGNS = [
  'edge damage',
  'mould',
  'vinegar smell',
  'shedding',
  'squeal',
  'sticky',
  'splice failing',
  'cinching',
  'spoking',
  'print-through heard',
] as const;
export type Sign = (typeof SIGNS)[number];

export const TREATMENTS = ['bake', 'clean', 'splice repair', 'rewind', 'play', 'transfer'] as const;
export type Treatment = (typeof TREATMENTS)[number];

export const STORED = ['upright', 'flat', 'hanging'] as const;
export type Stored = (typeof STORED)[number];

export const MADE_AS = ['LP', 'EP', 'single', 'cassette', 'other'] as const;
export type MadeAs = (typeof MADE_AS)[number];

export const BASE_FILMS = ['polyester', 'acetate', 'PVC', 'paper'] as const;
export type BaseFilm = (typeof BASE_FILMS)[number];

export const BINDERS = ['polyurethane', 'other'] as const;
export type Binder = (typeof BINDERS)[number];

export const MACHINE_STATES = ['working', 'needs work', 'not tried'] as const;
export type MachineState = (typeof MACHINE_STATES)[number];

export const AUDIENCES = ['valuer', 'insurer', 'engineer', 'researcher', 'friend'] as const;
export type Audience = (typeof AUDIENCES)[number];

export const OPENED_BY = ['link', 'passphrase'] as const;
export type OpenedBy = (typeof OPENED_BY)[number];

export const RUN_OUT_FORMS = ['concentric', 'run-out', 'other'] as const;
export type RunOutForm = (typeof RUN_OUT_FORMS)[number];

export const UNIT_SYSTEMS = ['metric', 'imperial'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

export const ENTRY_KINDS = ['reels', 'editions', 'machines', 'stocks', 'places', 'people', 'shares', 'notes'] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];
