import { createReadStream, createWriteStream, type Dirent, readdirSync, statSync } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { ImportedEntry } from '#compute/import/read-rows.ts';
import { byText } from '#model/diagnostic.ts';
import type { Loose } from '#model/entry.ts';
import { temporaryName } from '#publish/atomic.ts';
import { UsageError } from '../io.ts';

const IMAGE = /\.(?:jpe?g|png|webp|tiff?|avif|heic|heif)$/iu;
const LARGEST = 200 * 1024 * 1024;
const SHORTEST_NUMBER = 3;

/** One photograph that goes along: where it lies, and what it is called beside the entry. */
export interface PhotographToCopy {
  readonly from: string;
  readonly name: string;
}

/** The photographs of a folder and those below it, by path, sorted. Links are not followed. Throws UsageError when there is no such folder. */
export function photographsIn(dir: string): readonly string[] {
  const found: string[] = [];
  const look = (folder: string, depth: number) => {
    let names: Dirent[];
    try {
      names = readdirSync(folder, { withFileTypes: true });
    } catch {
      throw new UsageError(`There is no folder ${folder} to take photographs from.`);
    }
    for (const name of names.sort((a, b) => byText(a.name, b.name))) {
      const path = join(folder, name.name);
      if (name.isDirectory() && depth < 4 && !name.name.startsWith('.')) look(path, depth + 1);
      else if (name.isFile() && IMAGE.test(name.name) && statSync(path).size <= LARGEST) found.push(path);
    }
  };
  look(dir, 0);
  return found;
}

const plain = (text: string) =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');

/** An entry with the photographs that are its own: named in its row, or with one of its numbers, or its id, in their name.
 * Names that lead to no file, or to one of several, are kept under `also`. */
export function withPhotographs(
  entry: ImportedEntry,
  photographs: readonly string[],
): { readonly entry: ImportedEntry; readonly copies: readonly PhotographToCopy[] } {
  const named = namesOf(entry.facts.get('photos'));
  const copies = new Map<string, string>();
  const missing: string[] = [];
  const unclear: string[] = [];
  const photos: Loose[] = [];
  const add = (from: string, facts: Readonly<Record<string, Loose>> = {}) => {
    if ([...copies.values()].includes(from)) return;
    const name = freeName(basename(from), copies);
    copies.set(name, from);
    photos.push({ file: name, ...facts });
  };
  for (const { file, ...facts } of named) {
    const found = filesNamed(String(file), entry.id, photographs);
    const [only] = found;
    if (only !== undefined && found.length === 1) add(only, facts);
    else (found.length === 0 ? missing : unclear).push(lineOf(String(file), facts));
  }
  for (const path of photographs) if (bearsNumber(path, entry)) add(path);
  const facts = new Map(entry.facts);
  if (photos.length > 0) facts.set('photos', photos);
  else if (entry.facts.get('photos') !== 'none') facts.delete('photos');
  const also = new Map(entry.also);
  if (missing.length > 0) also.set('photos not found', missing.join('; '));
  if (unclear.length > 0) also.set('photos of which there are several', unclear.join('; '));
  return { entry: { ...entry, facts, also }, copies: [...copies].map(([name, from]) => ({ name, from })) };
}

/** Files that a name may mean: of several, those to which the way that is written leads, else those in a folder that is
 * called as the entry is. */
function filesNamed(written: string, id: string, photographs: readonly string[]): readonly string[] {
  const way = written.split(/[\\/]/u).map((step) => step.toLowerCase());
  const name = way.at(-1) ?? '';
  const called = photographs.filter((path) => basename(path).toLowerCase() === name);
  const all = called.length > 0 ? called : photographs.filter((path) => stem(path) === name);
  const folder = way.at(-2);
  const choices = [
    all.filter((path) => folder !== undefined && basename(dirname(path)).toLowerCase() === folder),
    all.filter((path) => basename(dirname(path)) === id),
  ];
  return choices.find((some) => some.length > 0) ?? all;
}

/** What a row says of a photograph that isn't there, so that none of it is lost. */
const lineOf = (file: string, facts: Readonly<Record<string, Loose>>) =>
  [
    file,
    ...Object.entries(facts).map(
      ([key, value]) => `${key}: ${typeof value === 'string' ? value : JSON.stringify(value)}`,
    ),
  ].join(', ');

function namesOf(photos: Loose | undefined): readonly Readonly<Record<string, Loose>>[] {
  if (!Array.isArray(photos)) return [];
  return photos.filter((one): one is Readonly<Record<string, Loose>> => typeof one === 'object' && 'file' in one);
}

const stem = (path: string) => basename(path, extname(path)).toLowerCase();

/** The number stands in the name as a whole: `4471` isn't in `IMG_44712`. */
function bearsNumber(path: string, entry: ImportedEntry): boolean {
  const name = stem(path);
  if (name === entry.id || name.startsWith(`${entry.id}-`) || name.startsWith(`${entry.id}_`)) return true;
  const numbers = ['matrix', 'catalogue', 'job', 'other'].flatMap((as) => {
    const value = entry.facts.get(`numbers.${as}`);
    return Array.isArray(value) ? value.map(String) : [];
  });
  // A number of figures alone may be a camera's own count: it must be all of the name, or all before its last part.
  return numbers.some((number) => {
    const wanted = plain(number);
    if (wanted.length < SHORTEST_NUMBER) return false;
    const whole = plain(name);
    return (
      whole === wanted ||
      plain(name.replace(/[-_ ]\p{N}{1,2}$|[-_ ](?:front|back|spine|legend|reel|box)$/u, '')) === wanted
    );
  });
}

function freeName(name: string, taken: ReadonlyMap<string, string>): string {
  const plainName = name.replace(/[^\p{L}\p{N}._ -]/gu, '-').replace(/^[.~-]+/u, '');
  const [base, end] = [basename(plainName, extname(plainName)), extname(plainName)];
  let free = plainName;
  for (let count = 2; taken.has(free); count++) free = `${base}-${count}${end}`;
  return free;
}

/** Copies a photograph whole or not at all, and never over one that is there. */
export async function copyPhotograph({ from, name }: PhotographToCopy, folder: string): Promise<void> {
  const target = join(folder, name);
  if (await stat(target).then(Boolean, () => false)) return;
  await mkdir(dirname(target), { recursive: true });
  const temporary = temporaryName(target);
  try {
    await pipeline(createReadStream(from), createWriteStream(temporary, { flags: 'wx' }));
    await rename(temporary, target);
  } finally {
    await rm(temporary, { force: true });
  }
}
