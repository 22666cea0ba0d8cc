import { createHash, hash } from 'node:crypto';
import {
  closeSync,
  fstatSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { temporaryName } from './atomic.ts';
import { sha256 } from './picture-cache.ts';

/** Of a page: the checksum of its bytes, and the note as JSON, which is read when it is asked for. */
type Line = readonly [sha256: string, note: string];

/** Sites whose notes are kept side by side. */
const MOST_SITES = 6;
/** Of the files that are kept side by side. Nothing else in the folder is touched. */
const OWN_NAME = /^[0-9a-f]{32}$/;

/** The pages of the last build, taken from its site, and notes of how each was made. The new notes replace the old when
 * the new site's pages are all there, and tell of these and no others. A page that isn't what it was when it was made, and
 * a file of notes that is damaged, are as if they weren't there. */
export class KeptPages<T> {
  readonly #file: string;
  readonly #version: string;
  readonly #site: string;
  readonly #old: ReadonlyMap<string, Line>;
  readonly #new: [string, Line][] = [];
  #bytes = Buffer.allocUnsafe(1 << 20);

  /** @param file  of the notes.
   * @param version  of the program that makes the pages.
   * @param site  the folder of the site that the last build made; it needn't be there. */
  constructor(file: string, version: string, site: string) {
    this.#file = file;
    this.#version = version;
    this.#site = site;
    this.#old = notesIn(file, version);
  }

  /** What was noted of the page that the last build made for an address; undefined when it made none. */
  noteOf(address: string): T | undefined {
    const line = this.#old.get(address);
    return line === undefined ? undefined : (JSON.parse(line[1]) as T);
  }

  /** Puts the page of the last build into a new site, and keeps it for the next build too. The two sites then share the
   * file, where the system lets them: nothing is ever written into a page that stands in a site.
   *
   * @param into  the folder of the new site, where the page's own folder is there and empty.
   * @returns false when the page isn't there any more, or isn't as it was made: nothing is done then. */
  take(address: string, into: string): boolean {
    const line = this.#old.get(address);
    const from = pageFile(this.#site, address);
    const html = line && this.#bytesOf(from);
    if (line === undefined || html === undefined || checksum(html) !== line[0]) return false;
    const to = pageFile(into, address);
    try {
      linkSync(from, to);
    } catch {
      writeFileSync(to, html);
    }
    this.#new.push([address, line]);
    return true;
  }

  /** Keeps a page that this build made. */
  keep(address: string, note: T, html: Uint8Array): void {
    this.#new.push([address, [checksum(html), JSON.stringify(note)]]);
  }

  /** A file's bytes, until the next file's are asked for: one piece of memory does for them all. */
  #bytesOf(path: string): Uint8Array | undefined {
    let file: number | undefined;
    try {
      file = openSync(path, 'r');
      const { size } = fstatSync(file);
      if (size > this.#bytes.length) this.#bytes = Buffer.allocUnsafe(2 * size);
      const read = readSync(file, this.#bytes, 0, size, 0);
      return this.#bytes.subarray(0, read);
    } catch {
      return undefined;
    } finally {
      if (file !== undefined) closeSync(file);
    }
  }

  /** Puts the new notes in the place of the old ones. */
  replace(): void {
    mkdirSync(dirname(this.#file), { recursive: true });
    const making = temporaryName(this.#file);
    writeNotes(making, this.#version, this.#new);
    renameSync(making, this.#file);
    dropOldest(dirname(this.#file));
  }
}

/** Where the page of an address such as `/reels/low-water` lies in a site. */
export const pageFile = (site: string, address: string): string => join(site, address, 'index.html');

/** Those that were made longest ago go; another program may do the same at the same time. */
function dropOldest(folder: string): void {
  const files = readdirSync(folder).filter((name) => OWN_NAME.test(name));
  const made = files.map((name) => ({
    name,
    at: statSync(join(folder, name), { throwIfNoEntry: false })?.mtimeMs ?? 0,
  }));
  made.sort((a, b) => b.at - a.at || (a.name < b.name ? -1 : 1));
  for (const { name } of made.slice(MOST_SITES)) rmSync(join(folder, name), { force: true });
}

/** The version of the program, then a line a page, then the checksum of all that. Written line by line: as one text they
 * would take the memory of thousands of pages. */
function writeNotes(path: string, version: string, pages: readonly (readonly [string, Line])[]): void {
  const sum = createHash('sha256');
  const file = openSync(path, 'w');
  try {
    const write = (value: unknown) => {
      const line = `${JSON.stringify(value)}\n`;
      sum.update(line);
      writeSync(file, line);
    };
    write(version);
    for (const page of pages) write(page);
    writeSync(file, sum.digest('hex'));
  } finally {
    closeSync(file);
  }
}

const SUM = 64;

/** The notes in a file; none when it isn't there, is damaged, or is of another version of the program, whose pages are no
 * good. */
function notesIn(path: string, version: string): ReadonlyMap<string, Line> {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    return new Map();
  }
  const body = text.slice(0, -SUM);
  if (text.slice(-SUM) !== sha256(body)) return new Map();
  const [first = '', ...lines] = body.split('\n').slice(0, -1);
  if (first !== JSON.stringify(version)) return new Map();
  return new Map(lines.map((line) => JSON.parse(line) as [string, Line]));
}

const checksum = (bytes: Uint8Array) => hash('sha256', bytes, 'base64');
