import type { Given } from './small-collection.ts';

/** A collection in which each fact holds a word found nowhere else, `QQ` and a number, with the key that it stands
 * under: so that a fact can be looked for in whatever is made from it. */
export const TOLD_EVERYTHING: Given = {
  collection: `
    title: QQ01 collection
    owner: QQ02 owner
    ---
    QQ03 collection body`,
  'reels/qq04-shown': `
    title: QQ05 shown
    status: lent
    lent: { to: QQ06 borrower, until: "2029" }
    kind: copy master
    set: QQ07-set
    side: "1"
    edition: [qq08-record]
    numbers: { catalogue: [QQ10], matrix: [QQ11], job: [QQ12], other: [QQ13 box] }
    client: qq14-client
    length: "8:00"
    contents:
      - { title: QQ15 title, length: "4:00", by: QQ16 player, note: QQ17 note }
      - { title: QQ18 title, length: "4:00" }
    gaps: none
    run-out-sound: { holds: QQ19 horn, length: 4 s, counted: no }
    format: { width: 1/4 in, tracks: two-track stereo, speed: 15 in/s, equalisation: NAB, noise-reduction: QQ20 system, level: 320 nWb/m, tones: none }
    pack: { wound-on: bare hub, outside-diameter: 180 mm, hub-diameter: 100 mm, wind: tail out }
    stock: qq21-stock
    recorded: { on: "1978-02-09", by: qq22-engineer, at: QQ23 room, for: QQ24 buyer }
    copied-from: [qq25-parent]
    generation: "3"
    copy-log:
      - { on: "1979-01-03", for: QQ26 overseas, by: Q.T., kind: copy master, number: QQ27, reel: qq28-child, note: QQ29 note }
      - { on: "1979-02-03", for: QQ30 overseas, number: QQ31, note: QQ32 note }
    splices: [{ at: "4:00", note: QQ33 splice }]
    cuts: [{ number: "1", matrix: QQ34, on: "1978-06-27", by: QQ35 cutter, note: QQ36 note }]
    photos:
      - { file: qq37-front.jpg, shows: box front, note: QQ38 note }
      - { file: qq39-back.jpg, shows: box back }
    readings:
      - { of: numbers.matrix, photo: qq37-front.jpg, region: "xywh=percent:12,40,30,8", written: QQ40, sure: likely, by: QQ41 reader, note: QQ42 note }
      - { of: client, photo: qq37-front.jpg, region: "xywh=percent:12,60,30,8", written: QQ43, sure: likely }
      - { of: place.shelf, photo: qq37-front.jpg, region: "xywh=percent:12,70,30,8", written: QQ44 }
      - { of: copy-log, photo: qq39-back.jpg, region: "xywh=percent:12,70,30,8", written: QQ45 }
    condition:
      - { on: "2026-03-02", by: QQ46 looker, found: [mould], note: QQ47 note }
    handling:
      - { what: transfer, on: "2026-03-12", by: QQ48 hand, machine: qq49-machine, settings: QQ50 settings, files: [{ name: qq51.wav, sha256: 0000000000000000000000000000000000000000000000000000000000000000 }], note: QQ52 note }
    place: { at: qq53-room, shelf: QQ54 shelf, stored: flat }
    custody:
      - { holder: QQ55 dealer, from: "2019", until: "2026-02", evidence: QQ56 letter, note: QQ57 note }
      - { holder: owner, from: "2026-02", how: QQ58 bought, price: 58101 GBP, evidence: QQ60 receipt }
    valuations: [{ on: "2026-04", by: QQ61 valuer, amount: 62103 GBP, basis: QQ63 basis }]
    rights: QQ64 rights
    accepted: [{ code: number/sides-differ, why: QQ65 why, on: "2026-03" }]
    also: { QQ66-key: QQ67 also }
    ---
    QQ68 reel body`,
  'reels/qq25-parent': `
    title: QQ70 parent
    kind: production master
    status: elsewhere
    side: "1"
    numbers: { matrix: [QQ71] }
    client: QQ72 client
    recorded: { on: "1977-11", by: QQ73 engineer, at: QQ74 room }
    copied-from: none
    also: QQ75
    ---
    QQ76 parent body`,
  'reels/qq28-child': `
    title: QQ77 child
    kind: copy master
    numbers: { matrix: [QQ31] }
    custody: [{ holder: QQ78 holder }]`,
  'reels/qq79-other': 'title: QQ80 other\nset: QQ07-set\nside: "2"\nnumbers: { matrix: [QQ81] }',
  'editions/qq08-record': `
    title: QQ82 record
    artist: QQ83 artist
    label: QQ84 label
    catalogue: [QQ85]
    made-as: LP
    territory: QQ86 territory
    sides:
      - { side: A, length: "8:00", matrix: QQ87 }
      - { side: B, length: "9:00", matrix: QQ88, reel: qq79-other }
    run-outs:
      - { side: A, written: QQ89, copy: QQ90 copy, note: QQ91 note }
      - { side: B, written: QQ92 }
    photos: [{ file: qr16-sleeve.jpg, note: QR17 caption }]
    accepted: [{ code: time/over-side, why: QR18 why }]
    also: QQ93
    ---
    QQ94 record body`,
  'machines/qq49-machine': `
    title: QQ95 machine
    speeds: [15 in/s]
    equalisations: [{ speed: 15 in/s, curve: NAB }]
    tracks: [two-track stereo]
    width: 1/4 in
    noise-reduction: [QR19 system]
    takes: [bare hub]
    largest-reel: 10.5 in
    state: working
    belongs-to: QQ96 owner
    photos: [{ file: qr20-machine.jpg, note: QR21 caption }]
    accepted: [{ code: playing/nothing-plays-it, why: QR22 why }]
    also: QR23
    ---
    QQ97 machine body`,
  'machines/qr24-machine': 'title: QR25 machine\nspeeds: [3.75 in/s]\nbelongs-to: QR26 owner',
  'stocks/qq21-stock': `
    title: QQ98 stock
    base: polyester
    binder: polyurethane
    thickness: 52 µm
    source: QQ99 source
    photos: [{ file: qr27-stock.jpg, note: QR28 caption }]
    also: QR29
    ---
    QR01 stock body`,
  'places/qq53-room': `
    title: QR02 room
    address: QR03 street
    climate: [{ file: qr30-log.csv, columns: { time: QR31_time, temperature_C: QR32_T, humidity_percent: QR33_RH } }]
    photos: [{ file: qr34-room.jpg, note: QR35 caption }]
    also: QR36
    ---
    QR04 room body`,
  'places/qq53-room/qr30-log.csv':
    'QR31_time,QR32_T,QR33_RH,QR37\n2026-01-01T00:00,21.7,47,QR38\n2026-01-01T01:00,21.7,47,QR38\n2026-01-03T00:00,31.7,77,QR38\n',
  'people/qq14-client': `
    title: QR05 client
    initials: [Q.C.]
    did: [QR06 work]
    photos: [{ file: qr39-face.jpg, note: QR40 caption }]
    also: QR41
    ---
    QR07 person body`,
  'people/qq22-engineer': 'title: QR08 engineer\ninitials: [Q.E.]\n---\nQR09 person body',
  'notes/qr10-note': 'title: QR11 note\n---\nQR12 note body',
  'reels/qq04-shown/qq37-front.jpg': '',
  'reels/qq04-shown/qq39-back.jpg': '',
  'editions/qq08-record/qr16-sleeve.jpg': '',
  'machines/qq49-machine/qr20-machine.jpg': '',
  'stocks/qq21-stock/qr27-stock.jpg': '',
  'places/qq53-room/qr34-room.jpg': '',
  'people/qq14-client/qr39-face.jpg': '',
  ...Object.fromEntries(
    ['valuer', 'insurer', 'engineer', 'researcher', 'friend'].map((audience) => [
      `shares/qr13-${audience}`,
      `title: Shown to one\nto: QR14 reader\nfor: ${audience}\nreels: [qq04-shown]\nopened-by: link\n---\nQR15 share body`,
    ]),
  ),
};

/** The words that each audience may be told, by the contract's table; all others must not be in its dossier. */
const IDENTITY = [
  'QQ05',
  'QQ07',
  'QQ10',
  'QQ11',
  'QQ12',
  'QQ13',
  'QQ64',
  'QQ82',
  'QQ83',
  'QQ84',
  'QQ85',
  'QQ86',
  'QQ87',
  'QR14',
];
const CONTENTS = ['QQ15', 'QQ16', 'QQ18', 'QQ19'];
const TAPE = ['QQ20', 'QQ98'];
const MADE = ['QQ23', 'QQ24', 'QR05', 'QR08', 'QQ43'];
const COPIES = ['QQ26', 'QQ30', 'QQ34', 'QQ35', 'QQ45', 'QQ89'];
const CARE = ['QQ46', 'QQ48', 'QQ50', 'QQ95'];

export const MAY_BE_TOLD: Readonly<Record<string, readonly string[]>> = {
  valuer: [...IDENTITY, 'QQ40', ...CONTENTS, ...TAPE, ...MADE, ...COPIES, ...CARE, 'QQ58'],
  insurer: [...IDENTITY, 'QQ40', ...TAPE, ...CARE, 'QQ58', 'QQ61', 'QQ63', '62103'],
  engineer: [...IDENTITY, 'QQ40', ...CONTENTS, ...TAPE, ...CARE, 'QR19'],
  researcher: [...IDENTITY, 'QQ40', ...CONTENTS, ...TAPE, ...MADE, ...COPIES, 'QQ58'],
  friend: [...IDENTITY, ...CONTENTS],
};

/** Each such word in a text, and the two amounts of money, in order. */
export const wordsToldIn = (text: string): readonly string[] =>
  [...new Set(text.match(/Q[QR]\d\d|58[,.  ]?101|62[,.  ]?103/giu) ?? [])]
    .map((word) => word.toUpperCase().replace(/[,.  ]/gu, ''))
    .sort();
