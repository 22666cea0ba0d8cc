import { hash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { temporaryName } from './atomic.ts';
import { seal, unseal } from './picture-cache.ts';

/** A page of the last build that is as it was made, with what was noted of it. */
export interface KeptPage<T> {
  readonly note: T;
  readonly html: Uint8Array;
}

/** Of a page: the checksum of its bytes, and the note as JSON, which is read when it is asked for. */
type Line = readonly [sha256: string, note: string];

interface Notes {
  /** Pages of another version of the program are no good. */
  readonly version: string;
  readonly pages: Readonly<Record<string, Line>>;
}

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

  /** @param file  of the notes.
   * @param version  of the program that makes the pages.
   * @param site  the folder of the site that the last build made; it needn't be there. */
  constructor(file: string, version: string, site: string) {
    this.#file = file;
    this.#version = version;
    this.#site = site;
    const notes = notesIn(file);
    this.#old = new Map(notes?.version === version ? Object.entries(notes.pages) : []);
  }

  /** The page that the last build made for an address; undefined when it made none or it has been changed since. */
  before(address: string): KeptPage<T> | undefined {
    const line = this.#old.get(address);
    if (line === undefined) return undefined;
    let html: Uint8Array;
    try {
      html = readFileSync(pageFile(this.#site, address));
    } catch {
      return undefined;
    }
    return checksum(html) === line[0] ? { note: JSON.parse(line[1]) as T, html } : undefined;
  }

  keep(address: string, { note, html }: KeptPage<T>): void {
    this.#new.push([address, [checksum(html), JSON.stringify(note)]]);
  }

  /** Keeps a page of the last build for the next one too. */
  keepOn(address: string): void {
    const line = this.#old.get(address);
    if (line !== undefined) this.#new.push([address, line]);
  }

  /** Puts the new notes in the place of the old ones. */
  replace(): void {
    mkdirSync(dirname(this.#file), { recursive: true });
    const making = temporaryName(this.#file);
    writeFileSync(making, seal({ version: this.#version, pages: Object.fromEntries(this.#new) } satisfies Notes));
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

function notesIn(file: string): Notes | undefined {
  try {
    return unseal<Notes>(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

const checksum = (bytes: Uint8Array) => hash('sha256', bytes, 'base64');
