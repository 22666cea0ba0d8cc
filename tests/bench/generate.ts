import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { chance } from './chance.ts';

/** Writes a sound collection of invented reels: sets of two sides on pancakes, an edition a set, a production master
 * with a copy log for every fourth set. The same seed gives the same files.
 *
 * @param reels  how many reel entries; editions and the rest come on top.
 * @returns the ids of the reels. */
export async function generateCollection(into: string, reels: number, seed = 1): Promise<readonly string[]> {
  const files = collectionFiles(reels, seed);
  for (const folder of new Set([...files.keys()].map((file) => dirname(join(into, file))))) {
    await mkdir(folder, { recursive: true });
  }
  for (const [file, text] of files) await writeFile(join(into, file), text);
  return [...files.keys()].filter((file) => file.startsWith('reels/')).map((file) => file.slice(6, -3));
}

const SYLLABLES = [
  'al',
  'bor',
  'cas',
  'del',
  'em',
  'far',
  'gal',
  'hol',
  'im',
  'jun',
  'kel',
  'lum',
  'mar',
  'nor',
  'ost',
  'pel',
];
const HUB_MM = 100;
const THICKNESS_UM = 52;
const IN_PER_S = 30;

export function collectionFiles(reels: number, seed: number): ReadonlyMap<string, string> {
  const next = chance(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const word = () => capital(`${pick(SYLLABLES)}${pick(SYLLABLES)}${next() < 0.4 ? pick(SYLLABLES) : ''}`);
  const files = new Map<string, string>(fixedFiles());
  let made = 0;
  for (let set = 0; made < reels; set += 1) {
    const id = `set-${String(set).padStart(5, '0')}`;
    const name = `${word()} ${word()}`;
    const stem = 100_000 + set * 4;
    const year = 1965 + (set % 20);
    const lengths = [titleLengths(next), titleLengths(next)];
    const master = set % 4 === 0 && reels - made > 2;
    const sides = Math.min(2, reels - made - (master ? 1 : 0));
    if (master) {
      files.set(`reels/${id}-master.md`, masterEntry(id, name, stem, year));
      made += 1;
    }
    for (let side = 1; side <= sides; side += 1) {
      const titles = lengths[side - 1] ?? [];
      files.set(`reels/${id}-side-${side}.md`, sideEntry({ id, name, stem, year, side, titles, master, word }));
      made += 1;
    }
    files.set(`editions/${id}-lp.md`, editionEntry(name, stem, year, lengths.slice(0, sides)));
  }
  return files;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const clock = (s: number) => `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')}`;
const sum = (counts: readonly number[]) => counts.reduce((all, one) => all + one, 0);

const titleLengths = (next: () => number): number[] =>
  Array.from({ length: 4 + Math.floor(next() * 3) }, () => 120 + Math.floor(next() * 150));

/** Outside diameter of the pack that holds this long at 30 in/s (geometry). */
function packMm(durationS: number): number {
  const lengthMm = durationS * IN_PER_S * 25.4;
  return Math.ceil(Math.sqrt(HUB_MM ** 2 + (4 * lengthMm * (THICKNESS_UM / 1000)) / Math.PI));
}

interface Side {
  readonly id: string;
  readonly name: string;
  readonly stem: number;
  readonly year: number;
  readonly side: number;
  readonly titles: readonly number[];
  readonly master: boolean;
  readonly word: () => string;
}

function sideEntry({ id, name, stem, year, side, titles, master, word }: Side): string {
  const stated = sum(titles);
  return `---
title: ${name}, side ${side}
status: held
kind: copy master
set: ${id}
side: "${side}"
edition: ${id}-lp
numbers:
  catalogue: [QKX ${stem}]
  matrix: [QKX ${stem + side}]
  job: ["${stem % 9973}"]
client: overseas-client
length: "${clock(stated)}"
contents:
${titles.map((length) => `  - { title: ${word()} ${word()}, length: "${clock(length)}" }`).join('\n')}
gaps: none
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
  outside-diameter: ${packMm(stated)} mm
  hub-diameter: ${HUB_MM} mm
  wind: tail out
stock: stock-one
recorded: { on: "${year}-03-12", by: copy-engineer, at: Copy room }
${master ? `copied-from: [${id}-master]\n` : ''}condition:
  - { on: "2026-03-02", by: owner, found: [none] }
place: { at: shelf-room, shelf: C${stem % 40}, stored: flat }
custody:
  - { holder: owner, from: "2020-02", how: bought }
rights: not the owner's
---
The box of ${name} came with its fellow. The label is typed, with a correction in ink in the line for the side.

It was looked at, not played. See [the edition](../editions/${id}-lp.md) for what was cut from it.
`;
}

function masterEntry(id: string, name: string, stem: number, year: number): string {
  const line = (side: number) =>
    `  - { on: "${year}-03-12", for: overseas-client, speed: 30 in/s, kind: copy master, number: QKX ${stem + side}, reel: ${id}-side-${side} }`;
  return `---
title: ${name}, production master
status: elsewhere
kind: production master
edition: ${id}-lp
format: { width: 1/4 in, tracks: two-track stereo, speed: 30 in/s, equalisation: AES }
recorded: { on: "${year}-01-20", by: copy-engineer }
copy-log:
${line(1)}
${line(2)}
---
Seen in a photograph only.
`;
}

function editionEntry(name: string, stem: number, year: number, sides: readonly (readonly number[])[]): string {
  return `---
title: ${name}
artist: ${name.split(' ')[0]} Group
label: Quillon
catalogue: QKX ${stem}
made-as: LP
territory: abroad
issued: "${year + 1}"
speed: 33⅓ rpm
sides:
${sides.map((titles, index) => `  - { side: "${index + 1}", length: "${clock(sum(titles))}", matrix: QKX ${stem + index + 1} }`).join('\n')}
---
One copy seen.
`;
}

const fixedFiles = (): readonly (readonly [string, string])[] => [
  ['collection.md', '---\ntitle: A generated collection\nowner: The owner\ncurrency: EUR\nunits: metric\n---\n'],
  ['people/overseas-client.md', '---\ntitle: Overseas client\n---\n'],
  [
    'people/copy-engineer.md',
    '---\ntitle: A copy engineer\ninitials: [C.E.]\ndid: [copying]\nactive: 1960/1990\n---\n',
  ],
  [
    'stocks/stock-one.md',
    '---\ntitle: Stock one\nbase: polyester\nbinder: other\nback-coated: yes\nthickness: 52 µm\nmade: 1960/1990\nknown-to-shed: no\nsource: invented\n---\n',
  ],
  ['places/shelf-room.md', '---\ntitle: The shelf room\n---\n'],
  [
    'machines/studio-machine.md',
    '---\ntitle: A studio machine\nspeeds: [7.5 in/s, 15 in/s, 30 in/s]\nequalisations:\n  - { speed: 30 in/s, curve: AES }\n  - { speed: 15 in/s, curve: IEC }\n  - { speed: 15 in/s, curve: NAB }\ntracks: [two-track stereo, full-track mono]\nlargest-reel: 12.5 in\ntakes: [reel, bare hub]\nwidth: 1/4 in\nnoise-reduction: none\nstate: working\nbelongs-to: owner\n---\n',
  ],
];
