import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import type { Edition } from '#model/edition.ts';
import { itemsOf, valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { Person } from '#model/person-entry.ts';
import type { Reel } from '#model/reel.ts';
import type { Share } from '#model/share.ts';
import type { Stock } from '#model/stock.ts';
import type { StoragePlace } from '#model/storage-place.ts';
import { splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import type { Facts } from '#validate/schemas/base.ts';
import type { edition as editionSchema } from '#validate/schemas/edition.ts';
import type { machine as machineSchema } from '#validate/schemas/machine.ts';
import type { person as personSchema } from '#validate/schemas/person.ts';
import type { storagePlace as placeSchema } from '#validate/schemas/place.ts';
import type { reel as reelSchema } from '#validate/schemas/reel.ts';
import type { share as shareSchema } from '#validate/schemas/share.ts';
import type { stock as stockSchema } from '#validate/schemas/stock.ts';

/** Every key that a reel's entry can have, as the description of the entries gives them. */
const REEL = `---
title: Saltwater Almanac, side 1
status: held            # held | lent | elsewhere
lent: { to: a friend, until: "2027-02" }
left: { how: sold, on: 2001 }
kind: copy master
set: almanac-overseas
side: "1"
edition: almanac-lp
numbers:
  catalogue: [HLX 2207]
  matrix: [HLX 2207-A]
  job: ["4471"]
  other: ["box 12"]
client: hollin-overseas
length: "18:52"
contents:
  - { title: Low Water, length: "4:10" }
  - { title: Marram, length: "3:36", note: false start left on, gap-after: none }
gaps: none
run-out-sound: { holds: a foghorn, length: 4 s, form: concentric, counted: yes }
format:
  width: 1/4 in
  tracks: two-track stereo
  speed: 30 in/s
  equalisation: AES
  direction: one
  noise-reduction: none
  level: 320 nWb/m
  tones: [1 kHz, 10 kHz, 100 Hz]
pack:
  wound-on: bare hub
  outside-diameter: 260 mm ± 1 mm
  hub-diameter: 100 mm
  wind: tail out
stock: norda-verde
recorded: { on: "1978-02-09", by: T.K., at: Copy Room B }
copied-from: [almanac-master]
generation: "2"
copy-log:
  - { on: "1978-02-09", for: Hollin Overseas, speed: 30 in/s, kind: copy master, number: HLX 2207-A, reel: almanac-side-1 }
splices: [{ at: "4:10", note: dry }]
cuts:
  - { number: "1", on: "1978-06-27", by: ansel-vekke, half-speed: yes, used: no }
photos:
  - { file: box-front.jpg, shows: box front }
readings:
  - { of: numbers.matrix, photo: box-front.jpg, region: "xywh=percent:12,40,30,8", written: "HLX 22O7-A", sure: likely }
condition:
  - { on: "2026-03-02", by: owner, found: [none] }
handling:
  - { what: bake, on: "2026-03-10", temperature: 50 °C, duration: 36 h, ended: "2026-03-11T22:00" }
  - { what: transfer, on: "2026-03-12", machine: desk-machine, settings: 15 in/s IEC for 30 AES, passes: 1, files: [{ name: almanac-1.wav, sha256: ${'0f'.repeat(32)} }] }
place: { at: spare-room, shelf: C2, stored: flat }
custody:
  - { holder: A dealer in Ostrava, from: 2019, until: "2026-02" }
  - { holder: owner, from: "2026-02", how: bought, price: 450 GBP, evidence: receipt }
valuations:
  - { on: "2026-04", by: a valuer, amount: 900 GBP, basis: insurance }
rights: not the owner's
private: [client]
accepted: [{ code: number/sides-differ, why: seen under raking light, on: "2026-03" }]
also: { shelf-mark: "007", notes: [one, two] }
---
The owner's own account.
`;

const entry = (front: string) => `---\n${front}\n---\n`;
const FILES = [
  {
    path: 'collection.md',
    text: entry('title: Tapes\nowner: an owner\ncurrency: GBP\nunits: metric\nlanguage: en\nprivate: [client]'),
  },
  { path: 'reels/almanac-side-1/index.md', text: REEL },
  { path: 'reels/almanac-master.md', text: entry('title: Master\nstatus: elsewhere\ncopied-from: none') },
  {
    path: 'editions/almanac-lp.md',
    text: entry(
      'title: Saltwater Almanac\nartist: A band\nlabel: A label\ncatalogue: HLX 2207\nmade-as: LP\nterritory: none\nissued: 1978~\nsides: [{ side: "1", length: "18:52", matrix: HLX 2207-A }]\nspeed: 33⅓ rpm\nreissue-of: none\nrun-outs: [{ side: "1", written: HLX 2207-A2, cut: "2", copy: mine }]',
    ),
  },
  {
    path: 'machines/desk-machine.md',
    text: entry(
      'title: Desk machine\nspeeds: [7.5 in/s, 15 in/s]\nequalisations: [{ speed: 15 in/s, curve: IEC }]\ntracks: [two-track stereo]\nlargest-reel: 10.5 in\ntakes: [reel, bare hub]\nwidth: 1/4 in\nnoise-reduction: none\nstate: working\nbelongs-to: owner',
    ),
  },
  {
    path: 'stocks/norda-verde.md',
    text: entry(
      'title: Norda Verde\nbase: polyester\nbinder: polyurethane\nback-coated: yes\nthickness: 52 µm\nmade: 1972/1984\nknown-to-shed: yes\nsource: { thickness: measured by the owner, base: the box }',
    ),
  },
  {
    path: 'places/spare-room/index.md',
    text: entry(
      'title: Spare room\naddress: 1 An Invented Lane\nclimate: [plain.csv, { file: log.csv, columns: { time: t_UTC+2, temperature_C: T, humidity_percent: RH }, zone: +02:00 }]',
    ),
  },
  {
    path: 'people/ansel-vekke.md',
    text: entry('title: Ansel Vekke\ninitials: [A.V.]\ndid: [cutting]\nactive: 1968/1985'),
  },
  { path: 'people/hollin-overseas.md', text: entry('title: Hollin Overseas') },
  {
    path: 'shares/for-the-archive.md',
    text: entry(
      'title: For the archive\nto: The archivist\nfront: For you\nfor: researcher\nreels: [almanac-side-1]\nshows: [format]\nshows-private: [valuations]\nuntil: 2027\nopened-by: passphrase',
    ),
  },
  { path: 'notes/a-note.md', text: entry('title: A note') },
];

const files = splitFiles(FILES, ['reels/almanac-side-1/box-front.jpg']);
const { entries, problems } = validateAll(files);
const reel = entries.reels.find(({ id }) => id === 'almanac-side-1');

describe('entries with every key that there is', () => {
  test('are read without a problem', () => expect([...files.problems, ...problems]).toEqual([]));

  test('a reel is in our units', () => {
    expect(reel).toBeDefined();
    expect(valueOf(reel?.durationS)).toBe(18 * 60 + 52);
    expect(valueOf(reel?.format.speed)).toBe(30 * 25.4);
    expect(valueOf(reel?.format.width)).toEqual({ value: 6.35 });
    expect(reel?.format.noiseReduction).toMatchObject({ is: 'none' });
    expect(itemsOf(reel?.format.tones).map(({ value }) => value)).toEqual([1000, 10_000, 100]);
    expect(valueOf(reel?.pack.outsideDiameter)).toEqual({ value: 260, plusMinus: 1 });
    expect(reel?.pack.reelSize).toBeUndefined();
    expect(reel?.gaps).toMatchObject({ is: 'none' });
    expect(itemsOf(reel?.contents)[1]?.gapAfterS).toMatchObject({ is: 'none' });
    expect(itemsOf(reel?.condition)[0]?.found).toMatchObject({ is: 'none' });
    expect(itemsOf(reel?.handling)[0]).toMatchObject({
      temperatureC: { value: 50 },
      durationS: { value: 36 * 3600 },
      ended: { value: '2026-03-11T22:00' },
    });
    expect(itemsOf(reel?.custody)[1]?.price?.value).toEqual({ amount: 450, currency: 'GBP' });
    expect(itemsOf(reel?.cuts)[0]).toMatchObject({
      halfSpeed: { value: true },
      used: { value: false },
      by: { value: { is: 'entry', id: 'ansel-vekke' } },
    });
    expect(reel?.also).toEqual(Object.assign(Object.create(null), { 'shelf-mark': '007', notes: ['one', 'two'] }));
  });

  test('every key of the entry reaches the model', () => {
    const facts = Object.values(reel ?? {}).filter((fact) => fact !== undefined);
    // 32 facts and the seven things that the file itself gives.
    expect(facts).toHaveLength([...(reel?.keys.keys() ?? [])].length + 7);
  });

  test('a value keeps what was written and where', () => {
    expect(reel?.pack.outsideDiameter).toMatchObject({
      written: '260 mm ± 1 mm',
      place: { file: 'reels/almanac-side-1/index.md', line: 33, column: 21, field: 'pack.outside-diameter' },
    });
    expect(reel?.keys.get('contents')).toMatchObject({ line: 17, column: 1 });
    expect(reel).toMatchObject({
      body: "The owner's own account.\n",
      bodyLine: REEL.split('\n').indexOf("The owner's own account.") + 1,
    });
  });

  test('a share, a stock, a place and a machine are read', () => {
    expect(entries.shares[0]).toMatchObject({ audience: { value: 'researcher' }, openedBy: { value: 'passphrase' } });
    expect(valueOf(entries.stocks[0]?.thickness)).toEqual({ value: 52 });
    const source = valueOf(entries.stocks[0]?.source);
    expect(source instanceof Map ? source.get('base')?.value : undefined).toBe('the box');
    expect(itemsOf(entries.places[0]?.climate).map(({ file, zone }) => [file.value, zone?.value])).toEqual([
      ['plain.csv', undefined],
      ['log.csv', '+02:00'],
    ]);
    expect(itemsOf(entries.places[0]?.climate)[1]?.columns?.get('time')?.value).toBe('t_UTC+2');
    expect(valueOf(entries.editions[0]?.speed)).toBeCloseTo(100 / 3, 9);
    expect(itemsOf(entries.machines[0]?.widths)[0]?.value).toEqual({ value: 6.35 });
  });

  test('the order of the files changes nothing', () => {
    const backwards = validateAll(splitFiles([...FILES].reverse(), ['reels/almanac-side-1/box-front.jpg']));
    expect(backwards).toEqual({ entries, problems });
  });
});

/** What a schema gives is what the model says, key for key and both ways; else this file doesn't compile. */
type Same<A, B> = [A, B] extends [B, A] ? true : never;
const SAME: readonly [
  Same<z.output<typeof reelSchema>, Facts<Reel>>,
  Same<z.output<typeof editionSchema>, Facts<Edition>>,
  Same<z.output<typeof machineSchema>, Facts<Machine>>,
  Same<z.output<typeof stockSchema>, Facts<Stock>>,
  Same<z.output<typeof placeSchema>, Facts<StoragePlace>>,
  Same<z.output<typeof personSchema>, Facts<Person>>,
  Same<z.output<typeof shareSchema>, Facts<Share>>,
] = [true, true, true, true, true, true, true];
test('schemas and model are one shape', () => expect(SAME).toHaveLength(7));

const one = (front: string, path = 'reels/x.md') => {
  const read = splitFiles([{ path, text: entry(front) }]);
  const answer = validateAll(read);
  return { ...answer, told: [...read.problems, ...answer.problems].map(({ code, place }) => `${code} ${place.field}`) };
};
const HELD = 'title: x\nstatus: held\n';

describe('missing, none and empty', () => {
  test('an empty value and an empty list are not recorded, and no problem', () => {
    const { entries: read, told } = one(`${HELD}kind:\ncontents: []\nformat:\nset: ""`);
    expect(told).toEqual([]);
    expect(read.reels[0]).toMatchObject({ kind: undefined, contents: undefined, format: {}, set: undefined });
  });
  test('none is a fact where a fact can be none, and refused where it cannot', () => {
    expect(one(`${HELD}copied-from: none\nsplices: none\nrun-out-sound: none`).told).toEqual([]);
    expect(one(`${HELD}format: none`).told).toEqual(['entry/bad-value format']);
    expect(one(`title: x\nstatus: none`).told).toEqual(['entry/bad-value status']);
  });
  test('a title with nothing behind it is a title missing', () => {
    expect(one('title:\nstatus: held').told).toEqual(['entry/missing title']);
  });
});

describe('what is near', () => {
  test('the nearest key and the nearest id are named', () => {
    const { problems: told } = one(`${HELD}titel: y\ncopied-from: [xx]`);
    expect(told.map(({ expected }) => expected)).toEqual(['title', 'x']);
  });
  test('a key of another part of the entry is found there', () => {
    expect(one(`${HELD}matrix: HLX`).problems[0]?.expected).toBe('numbers.matrix');
  });
  test('words behind a comma in braces are told to be put in quotes', () => {
    expect(one(`${HELD}splices: [{ at: "4:10", note: dry, seen twice }]`).problems[0]?.action).toContain('in quotes');
  });
  test('an id that is near nothing is told what to write', () => {
    expect(one(`${HELD}stock: something-else`).problems).toMatchObject([
      { code: 'entry/unknown-reference', found: 'something-else' },
    ]);
  });
});

describe('one thing by itself', () => {
  test('stands for a list of one', () => {
    const { entries: read, told } = one(`${HELD}numbers: { matrix: HLX 2207-A }\ncontents: Low Water\nside: [A, B]`);
    expect(told).toEqual([]);
    expect(itemsOf(read.reels[0]?.contents).map(({ title }) => title.value)).toEqual(['Low Water']);
    expect(itemsOf(read.reels[0]?.numbers.matrix)).toHaveLength(1);
    expect(itemsOf(read.reels[0]?.sides)).toHaveLength(2);
  });
});

describe('several mistakes in one entry', () => {
  const { told, entries: read } = one(
    'title: x\nstatus: held\nlength: 19.44\nformat: { speed: 30, wdth: 1/4 in }\ncontents: [{ length: "4:10" }, { title: Marram, length: "4:61" }]\ncuts: 3\n',
  );
  test('are each told once', () => {
    expect(told.sort()).toEqual([
      'entry/bad-value contents[1].length',
      'entry/bad-value cuts',
      'entry/bad-value format.speed',
      'entry/bad-value length',
      'entry/missing contents[0].title',
      'entry/unknown-key format.wdth',
    ]);
  });
  test('and what is sound is used', () => {
    expect(itemsOf(read.reels[0]?.contents).map(({ title }) => title.value)).toEqual(['Marram']);
    expect(read.reels[0]?.durationS).toBeUndefined();
    expect(read.reels[0]?.format.speed).toBeUndefined();
  });
});

describe('photographs', () => {
  const text = entry(`${HELD}photos: [{ file: box.jpg, shows: box front }, spine.jpg]`);
  const images = ['reels/x/box.jpg', 'reels/x/spine.jpg', 'reels/x/extra.jpg', 'reels/loose.jpg'];
  const measured = new Map([
    ['reels/x/box.jpg', { path: 'reels/x/box.jpg', opens: true, widthPx: 40, heightPx: 30 } as const],
    [
      'reels/x/spine.jpg',
      {
        path: 'reels/x/spine.jpg',
        opens: false,
        problem: 'The picture is cut short.',
        action: 'Copy it again.',
      } as const,
    ],
  ]);
  test('one that does not open, and images that nothing names, are told', () => {
    const { problems: told } = validateAll(splitFiles([{ path: 'reels/x/index.md', text }], images), measured);
    expect(told.map(({ code, severity, found }) => [code, severity, found])).toEqual([
      ['photo/unreadable', 'error', 'spine.jpg'],
      ['photo/unnamed', 'note', 'reels/loose.jpg'],
      ['photo/unnamed', 'note', 'extra.jpg'],
    ]);
  });
  test('an image that the text shows is named', () => {
    const shown = `${text}\n![the lid](extra.jpg)\n`;
    const { problems: told } = validateAll(splitFiles([{ path: 'reels/x/index.md', text: shown }], images.slice(0, 3)));
    expect(told).toEqual([]);
  });
  test('a name in another Unicode form is told apart from a missing one', () => {
    const named = entry(`${HELD}photos: [${'marée.jpg'.normalize('NFC')}]`);
    const { problems: told } = validateAll(
      splitFiles([{ path: 'reels/x/index.md', text: named }], [`reels/x/${'marée.jpg'.normalize('NFD')}`]),
    );
    expect(told.find(({ code }) => code === 'photo/missing')?.action).toContain('Unicode form');
  });
  test('a reading from a photograph that is not listed names the nearest', () => {
    const readings = entry(`${HELD}photos: [box.jpg]\nreadings: [{ of: title, photo: bax.jpg, written: x }]`);
    const { problems: told } = validateAll(
      splitFiles([{ path: 'reels/x/index.md', text: readings }], ['reels/x/box.jpg']),
    );
    expect(told).toMatchObject([
      { code: 'entry/unknown-reference', expected: 'box.jpg', place: { field: 'readings[0].photo' } },
    ]);
  });
  test('a reading of a key that there isn’t names the nearest', () => {
    const { told } = one(`${HELD}readings: [{ of: numbers.matrx, written: x }]`);
    expect(told).toEqual(['entry/unknown-key readings[0].of']);
  });
});
