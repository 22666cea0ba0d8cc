import {
  closeSync,
  fstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { constants, zstdCompressSync, zstdDecompressSync } from 'node:zlib';
import { temporaryName } from './atomic.ts';
import { seal, sha256, unseal } from './picture-cache.ts';

/** A page as it was made, with what the maker noted of it. */
export interface StoredPage<T> {
  readonly note: T;
  readonly html: Uint8Array;
}

/** One that lies in the file already, proved. */
export interface PackedPage<T> extends StoredPage<T> {
  readonly packed: Buffer;
}

/** Where a page lies in the file: offset, bytes, and their checksum. */
type Spot = readonly [offset: number, bytes: number, sha256: string];

interface Index {
  /** Pages of another version of the program are no good. */
  readonly version: string;
  readonly spots: Readonly<Record<string, Spot>>;
}

/** Bytes at the end of the file that say how long the index before them is. */
const TAIL = 16;
/** The quickest that makes them smaller. */
const QUICK = { params: { [constants.ZSTD_c_compressionLevel]: 1 } };
/** Sites whose pages are kept side by side. */
const MOST_SITES = 6;
/** Of the files that are kept side by side. Nothing else in the folder is touched. */
const OWN_NAME = /^[0-9a-f]{32}$/;

/** The pages of the last build and of this one, each in one file: the new one replaces the old when it is whole, and
 * holds what this build used and nothing else. Whatever is damaged in the old one is as if it weren't there. */
export class PageStore<T> {
  readonly #path: string;
  readonly #version: string;
  readonly #making: string;
  readonly #out: number;
  readonly #old: { readonly file: number; readonly spots: ReadonlyMap<string, Spot> } | undefined;
  readonly #spots: [string, Spot][] = [];
  #end = 0;

  /** @param version  of the program that makes the pages. */
  constructor(path: string, version: string) {
    this.#path = path;
    this.#version = version;
    mkdirSync(dirname(path), { recursive: true });
    this.#old = openOld(path, version);
    this.#making = temporaryName(path);
    this.#out = openSync(this.#making, 'wx');
  }

  /** The page that the last build made for an address; undefined when it made none or it isn't what was put there. */
  before(address: string): PackedPage<T> | undefined {
    const spot = this.#old?.spots.get(address);
    if (this.#old === undefined || spot === undefined) return undefined;
    const packed = readAt(this.#old.file, spot[0], spot[1]);
    if (packed === undefined || sha256(packed) !== spot[2]) return undefined;
    const bytes = zstdDecompressSync(packed);
    const end = bytes.indexOf(10);
    return { note: JSON.parse(bytes.toString('utf8', 0, end)) as T, html: bytes.subarray(end + 1), packed };
  }

  keep(address: string, { note, html }: StoredPage<T>): void {
    this.#add(address, zstdCompressSync(Buffer.concat([Buffer.from(`${JSON.stringify(note)}\n`), html]), QUICK));
  }

  /** Keeps a page of the last build for the next one too. */
  keepOn(address: string, { packed }: PackedPage<T>): void {
    this.#add(address, packed);
  }

  /** Puts the new file in the place of the old one. */
  replace(): void {
    const index = Buffer.from(seal({ version: this.#version, spots: Object.fromEntries(this.#spots) } satisfies Index));
    writeAll(this.#out, index);
    writeAll(this.#out, Buffer.from(String(index.length).padStart(TAIL)));
    this.#close();
    renameSync(this.#making, this.#path);
    dropOldest(dirname(this.#path));
  }

  /** Leaves the old file as it is. */
  abandon(): void {
    this.#close();
    rmSync(this.#making, { force: true });
  }

  #add(address: string, packed: Buffer): void {
    this.#spots.push([address, [this.#end, packed.length, sha256(packed)]]);
    writeAll(this.#out, packed);
    this.#end += packed.length;
  }

  #close(): void {
    closeSync(this.#out);
    if (this.#old !== undefined) closeSync(this.#old.file);
  }
}

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

function openOld(path: string, version: string) {
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch {
    return undefined;
  }
  const index = indexOf(file);
  if (index?.version === version) return { file, spots: new Map(Object.entries(index.spots)) };
  closeSync(file);
  return undefined;
}

function indexOf(file: number): Index | undefined {
  const { size } = fstatSync(file);
  const bytes = Number(readAt(file, size - TAIL, TAIL)?.toString('latin1'));
  if (!Number.isSafeInteger(bytes) || bytes <= 0 || bytes > size - TAIL) return undefined;
  const sealed = readAt(file, size - TAIL - bytes, bytes)?.toString('utf8');
  return sealed === undefined ? undefined : unseal<Index>(sealed);
}

/** Undefined when the file hasn't so many bytes there. */
function readAt(file: number, offset: number, bytes: number): Buffer | undefined {
  if (offset < 0) return undefined;
  const into = Buffer.allocUnsafe(bytes);
  return readSync(file, into, 0, bytes, offset) === bytes ? into : undefined;
}

function writeAll(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
}
