import type { EntryKind } from '#model/words.ts';

/** How each kind of entry begins: valid as it stands, every other key in a comment that only needs its `#` taken away. */
const REEL = `status: held            # held | lent | elsewhere | missing | gone | destroyed
# kind: copy master     # session tape | original master | production master | copy master | cutting master | safety copy | running master
# set: almanac-overseas # reels that belong together share this name
# side: "1"
# edition: almanac-lp   # an id in editions/, or a list
# numbers:              # as the label writes them
#   catalogue: [HLX 2207]
#   matrix: [HLX 2207-A]
#   job: ["4471"]
#   other: ["box 12"]
# client: Hollin Overseas
# length: "18:52"       # as the label states it
# contents:
#   - { title: Low Water, length: "4:10" }
# gaps: none            # none | a duration such as 3 s | mixed
# format:
#   width: 1/4 in
#   tracks: two-track stereo
#   speed: 30 in/s
#   equalisation: AES
#   direction: one
#   noise-reduction: none
#   level: 320 nWb/m
#   tones: [1 kHz, 10 kHz, 100 Hz]
# pack:
#   wound-on: bare hub  # or: reel, then reel-size: 10.5 in
#   outside-diameter: 260 mm
#   hub-diameter: 100 mm
#   wind: tail out
# stock: norda-verde    # an id in stocks/
# recorded: { on: "1978-02-09", by: T.K., at: Copy Room B }
# copied-from: [almanac-master]   # none: known to be a first tape
# copy-log:             # the copies that were run off from this reel
#   - { on: "1978-02-09", for: Hollin Overseas, speed: 30 in/s, kind: copy master }
# cuts:                 # the lacquers cut from it
#   - { number: "1", on: "1978-06-27", by: A.V., half-speed: yes }
# photos:               # files in this entry's own folder
#   - { file: box-front.jpg, shows: box front }
# readings:             # letter by letter; ? unread, {1|7} one of these, {1?} in doubt
#   - { of: numbers.matrix, photo: box-front.jpg, region: "xywh=percent:12,40,30,8", written: "HLX 22O7-A", sure: likely }
# condition:            # look and smell; nothing needs to be wound or played for it
#   - { on: "2026-03-02", by: owner, found: [none] }
# place: { at: spare-room, shelf: C2, stored: flat }
# custody:
#   - { holder: owner, from: "2026-02", how: bought }
# rights: not the owner's
`;

const EDITION = `# artist: The Group
# label: Hollin
# catalogue: HLX 2207
# made-as: LP           # LP | EP | single | cassette | other
# territory: overseas
# issued: "1978-09"
# speed: 33⅓ rpm
# sides:
#   - { side: "1", length: "18:52", matrix: HLX 2207-A }
# run-outs:             # what is etched on the copies seen
#   - { side: "1", written: "HLX 2207-A-3" }
`;

const MACHINE = `# speeds: [7.5 in/s, 15 in/s]
# equalisations:
#   - { speed: 15 in/s, curve: IEC }
# tracks: [two-track stereo]
# largest-reel: 10.5 in
# takes: [reel]         # reel | bare hub
# width: 1/4 in
# noise-reduction: none
# state: working        # working | needs work | not tried
# belongs-to: owner
`;

const STOCK = `# base: polyester       # polyester | acetate | PVC | paper
# binder: polyurethane  # polyurethane | other
# back-coated: yes
# thickness: 52 µm      # the whole tape, not the base alone
# made: 1972/1984
# known-to-shed: no
# source: where this is known from
`;

const PLACE = `# address: never shown to anyone else unless a share says so
# climate: [log.csv]    # a logger's file in this entry's own folder
`;

const PERSON = `# initials: [T.K.]
# did: [copying]
# active: 1968/1985
`;

const SHARE = `for: valuer             # valuer | insurer | engineer | researcher | friend
reels: []               # ids in reels/; nothing can be sealed until one is named
# to: a name, shown inside the dossier only
# front: one line that anyone may read
# until: "2027-02-01"
# opened-by: passphrase # passphrase | link
`;

const STARTS: Readonly<Record<EntryKind, string>> = {
  reels: REEL,
  editions: EDITION,
  machines: MACHINE,
  stocks: STOCK,
  places: PLACE,
  people: PERSON,
  shares: SHARE,
  notes: '',
};

/** What goes below the front matter, for the owner to write over. */
const BODY = 'Your own account goes here.\n';

/** The text of a new entry, valid as it stands.
 * @param title  any text; quoted as YAML where it needs it.
 * @param needs  facts that were asked for, in place of those it begins with. */
export function startingEntry(kind: EntryKind, title: string, needs: ReadonlyMap<string, string> = new Map()): string {
  const start = STARTS[kind].replace(/^([a-z]+): (\S+)( *)/gmu, (line, key: string, value: string, gap: string) => {
    const told = needs.get(key);
    return told === undefined
      ? line
      : `${key}: ${told}${' '.repeat(Math.max(gap === '' ? 0 : 1, gap.length + value.length - told.length))}`;
  });
  return `---\ntitle: ${quoted(title)}\n${start}---\n${BODY}`;
}

/** Quoted always but for plain words: a title such as `none` or `12:30` must stay a title. */
const quoted = (title: string) =>
  /^[A-Za-z][A-Za-z ]*$/.test(title) && title !== 'none' ? title : JSON.stringify(title);
