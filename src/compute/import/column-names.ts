import { keysOfSheet, SHEET_KINDS, type SheetKind } from '#model/entry-column.ts';
import { SAID_OF_OTHERS } from './other-column-names.ts';

/** What collectors call a column, and the fact that is meant. Common usage, no source. Where two facts could be meant the
 * content decides, or the column stays unasked. */
const SAID_OF_REELS: Readonly<Record<string, readonly string[]>> = {
  id: ['id', 'ident', 'key', 'tape id'],
  title: ['title', 'name', 'album', 'programme', 'program', 'recording', 'tape title', 'album title', 'item', 'what'],
  status: ['status', 'where is it', 'have it'],
  kind: ['kind', 'type', 'tape type', 'kind of tape', 'master type', 'class'],
  set: ['set', 'belongs with'],
  side: ['side', 'part', 'programme no', 'side no'],
  edition: ['edition id'],
  'edition.title': ['edition title', 'record', 'lp', 'released as', 'record title'],
  'edition.artist': ['artist', 'artists', 'performer', 'performers', 'group', 'band'],
  'edition.label': ['record label', 'record company', 'company', 'issuing label'],
  'edition.territory': ['territory', 'country', 'country of release', 'market'],
  'edition.issued': ['issued', 'released', 'release date', 'release year', 'year of release'],
  'numbers.catalogue': [
    'catalogue',
    'catalogue number',
    'catalogue no',
    'cat',
    'cat no',
    'cat number',
    'catalog number',
    'catalog no',
    'release number',
  ],
  'numbers.matrix': ['matrix', 'matrix number', 'matrix no', 'master no', 'master number', 'mx'],
  'numbers.job': ['job', 'job number', 'job no', 'order no', 'work order'],
  'numbers.other': [
    'box',
    'box no',
    'box number',
    'other number',
    'number',
    'no',
    'tape no',
    'tape number',
    'reel no',
    'inventory no',
    'inv no',
    'label number',
  ],
  client: ['client', 'made for', 'customer', 'for'],
  length: ['length', 'duration', 'time', 'running time', 'playing time', 'timing', 'total time', 'dur'],
  gaps: ['gaps', 'gap'],
  'format.width': ['width', 'tape width'],
  'format.tracks': ['tracks', 'track format', 'track', 'channels', 'mono stereo', 'head'],
  'format.speed': ['speed', 'tape speed', 'ips', 'in s', 'cm s', 'cms'],
  'format.equalisation': ['equalisation', 'equalization', 'eq', 'curve'],
  'format.noise-reduction': ['noise reduction', 'nr'],
  'format.level': ['level', 'reference level', 'flux', 'fluxivity'],
  'format.tones': ['tones', 'line up tones', 'alignment tones'],
  'pack.wound-on': ['wound on', 'carrier', 'spool or hub'],
  'pack.reel-size': ['reel size', 'spool size', 'reel', 'spool', 'size'],
  'pack.outside-diameter': ['outside diameter', 'pack diameter', 'diameter'],
  'pack.hub-diameter': ['hub', 'hub diameter'],
  'pack.wind': ['wind', 'tail head', 'tails out'],
  stock: ['stock id', 'tape stock', 'stock name'],
  'recorded.on': [
    'recorded',
    'recorded on',
    'date',
    'date recorded',
    'recording date',
    'year',
    'rec date',
    'tape date',
    'dated',
  ],
  'recorded.by': ['engineer', 'recorded by', 'copied by', 'initials'],
  'recorded.at': ['studio', 'recorded at', 'where recorded', 'location recorded'],
  'recorded.for': ['recorded for'],
  'copied-from': ['copied from id'],
  generation: ['generation', 'gen'],
  photos: ['photo', 'photos', 'photograph', 'photographs', 'picture', 'pictures', 'image', 'images', 'scan'],
  condition: ['condition', 'state of tape', 'defects'],
  'place.at': ['place id', 'room', 'kept in'],
  'place.shelf': ['shelf', 'location', 'where kept', 'rack', 'bay'],
  'place.stored': ['stored', 'how stored'],
  custody: ['provenance', 'from whom', 'bought from', 'source', 'seller', 'acquired from'],
  valuations: ['value', 'valuation', 'insured value', 'worth', 'insurance value'],
  rights: ['rights', 'copyright'],
  body: ['notes', 'note', 'remarks', 'remark', 'comments', 'comment', 'description', 'memo'],
};

/** A heading as it is compared: no case, accents, points or units in brackets. */
const plainName = (text: string): string =>
  text
    .slice(0, 100)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\([^)]{0,30}\)|\[[^\]]{0,30}\]/gu, ' ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const SAID: Readonly<Record<SheetKind, Readonly<Record<string, readonly string[]>>>> = {
  reels: SAID_OF_REELS,
  ...SAID_OF_OTHERS,
};

const BY_NAME = new Map(
  SHEET_KINDS.map((kind) => {
    const names = Object.entries(SAID[kind]).flatMap(([key, said]) => said.map((name) => [name, key] as const));
    return [kind, new Map(names)] as const;
  }),
);
const OUR_OWN = new Map(SHEET_KINDS.map((kind) => [kind, new Set(keysOfSheet(kind))] as const));

/** The fact that a heading names in a sheet of one kind: our own key, or what such a column is usually called. */
export function keyNamed(header: string, kind: SheetKind): string | undefined {
  const own = header.trim().toLowerCase();
  return OUR_OWN.get(kind)?.has(own) === true ? own : BY_NAME.get(kind)?.get(plainName(header));
}

/** A unit in the heading's own words, which its bare numbers are in: `Speed (ips)`, `Pack mm`. */
export function unitNamed(header: string): string | undefined {
  const found =
    /(?:^|[^\p{L}])(ips|in\/s|in\/sec|cm\/s|cms|mm|cm|in|inch|inches|ft|feet|min|mins|minutes|sec|secs|seconds|gbp|eur|usd|nwb\/m|µm|um)(?:$|[^\p{L}/])/iu.exec(
      header,
    )?.[1];
  if (found === undefined) return undefined;
  return SPELLED[found.toLowerCase()] ?? found.toLowerCase();
}

const SPELLED: Readonly<Record<string, string>> = {
  ips: 'in/s',
  'in/sec': 'in/s',
  cms: 'cm/s',
  inch: 'in',
  inches: 'in',
  feet: 'ft',
  mins: 'min',
  minutes: 'min',
  sec: 's',
  secs: 's',
  seconds: 's',
  gbp: 'GBP',
  eur: 'EUR',
  usd: 'USD',
  'nwb/m': 'nWb/m',
  um: 'µm',
};
