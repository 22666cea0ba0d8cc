import { AUDIENCES, type Audience } from '#model/words.ts';

/** What every reader sees of a reel: which one it is. */
export const IDENTITY: readonly string[] = ['title', 'kind', 'side', 'set', 'numbers', 'edition', 'rights'];

/** Some facts, in words, and who sees which of them. A key stands for all below it, except for FREE_WORDS. */
export interface TableRow {
  readonly words: string;
  readonly keys: readonly string[];
  readonly seenBy: Partial<Record<Audience, readonly string[]>>;
}

const row = (words: string, keys: readonly string[], seenBy: Partial<Record<Audience, 'all' | readonly string[]>>) => ({
  words,
  keys,
  seenBy: Object.fromEntries(
    AUDIENCES.flatMap((audience) => {
      const seen = seenBy[audience];
      return seen === undefined ? [] : [[audience, seen === 'all' ? keys : seen]];
    }),
  ) as Partial<Record<Audience, readonly string[]>>,
});

const all = 'all';

/** What an audience sees beyond IDENTITY. Whatever isn't named here stays out, a key that is added later too. */
export const TABLE: readonly TableRow[] = [
  row('photographs and readings', ['photos', 'readings'], {
    valuer: all,
    insurer: all,
    engineer: all,
    researcher: all,
    friend: ['photos'],
  }),
  row('contents, length, gaps, run-out sound', ['contents', 'length', 'gaps', 'run-out-sound'], {
    valuer: all,
    engineer: all,
    researcher: all,
    friend: all,
  }),
  row('format, pack, stock, worked figures', ['format', 'pack', 'stock', 'worked'], {
    valuer: all,
    insurer: all,
    engineer: all,
    researcher: all,
  }),
  row('who recorded it, where and when, and for whom', ['recorded', 'client'], { valuer: all, researcher: all }),
  row('lineage, copy log, cuts', ['lineage', 'copied-from', 'generation', 'copy-log', 'cuts'], {
    valuer: all,
    engineer: ['lineage', 'copied-from', 'generation'],
    researcher: all,
  }),
  row('condition, handling, findings', ['condition', 'handling', 'splices', 'findings'], {
    valuer: all,
    insurer: all,
    engineer: all,
    researcher: ['findings'],
  }),
  row('the playing plan, and what a machine must have', ['playing'], { engineer: all }),
  row('what disagrees, what is missing', ['problems', 'missing'], { valuer: all, engineer: all, researcher: all }),
  row('how and when it changed hands', ['custody.how', 'custody.from', 'custody.until'], {
    valuer: all,
    insurer: all,
    researcher: all,
  }),
  row('valuations', ['valuations'], { insurer: all }),
];

/** The owner's own words about a fact, and what shows it: out unless a share names them, as `contents.note`. */
export const FREE_WORDS: readonly string[] = ['note', 'source', 'evidence', 'copy'];

/** Facts beside those of the table that a share may name. */
const ALSO_NAMED: readonly string[] = [
  'status',
  'custody',
  'place',
  'address',
  'body',
  'also',
  'accepted',
  'recorded.on',
  'recorded.by',
  'recorded.at',
  'recorded.for',
];

/** Keys that stand below one of the table, with what may be named below them. */
const BELOW: Readonly<Record<string, readonly string[]>> = {
  photos: ['note', 'on', 'shows'],
  readings: ['note'],
  contents: ['title', 'length', 'gap-after', 'side', 'by', 'note'],
  'run-out-sound': ['holds', 'length', 'form', 'counted'],
  format: ['width', 'tracks', 'speed', 'equalisation', 'direction', 'noise-reduction', 'level', 'tones'],
  pack: ['wound-on', 'reel-size', 'outside-diameter', 'hub-diameter', 'wind'],
  stock: ['base', 'binder', 'back-coated', 'thickness', 'made', 'known-to-shed', 'source'],
  recorded: ['on', 'by', 'at', 'for'],
  'copy-log': ['on', 'for', 'by', 'speed', 'equalisation', 'kind', 'number', 'note'],
  cuts: ['number', 'matrix', 'side', 'on', 'by', 'half-speed', 'used', 'note'],
  condition: ['on', 'by', 'found', 'note'],
  handling: [
    'what',
    'on',
    'by',
    'temperature',
    'duration',
    'started',
    'ended',
    'machine',
    'settings',
    'passes',
    'note',
  ],
  splices: ['at', 'note'],
  custody: ['holder', 'from', 'until', 'how', 'price', 'evidence', 'note'],
  valuations: ['on', 'by', 'amount', 'basis'],
  place: ['at', 'shelf', 'stored'],
  numbers: ['catalogue', 'matrix', 'job', 'other'],
  edition: ['run-outs'],
};

/** Every key that `shows` and `shows-private` may name. */
export const NAMEABLE: ReadonlySet<string> = new Set([
  ...IDENTITY,
  ...TABLE.flatMap((line) => line.keys),
  ...ALSO_NAMED,
  ...Object.entries(BELOW).flatMap(([key, below]) => below.map((part) => `${key}.${part}`)),
]);
