import type { Diagnostic } from '#model/diagnostic.ts';
import type { Place } from '#model/place.ts';
import { type Address, addressOf } from './address.ts';
import { htmlInBody } from './body.ts';
import { findFences } from './fences.ts';
import type { SourceFile } from './source-file.ts';
import type { Branch } from './tree.ts';
import { parseFrontMatter } from './yaml.ts';

/** An entry cut into its front matter, with a place for each part, and its body. */
export interface RawEntry extends Address {
  /** Relative to the collection, with `/`. */
  readonly file: string;
  readonly place: Place;
  readonly root: Branch;
  readonly body: string;
  /** The body's first line in the file, from 1. */
  readonly bodyLine: number;
}

/** A file after reading: the entry, or why there is none. An address without an entry is one that can't be used. */
export interface SplitEntry {
  readonly path: string;
  readonly address: Address | undefined;
  readonly entry: RawEntry | undefined;
  readonly problems: readonly Diagnostic[];
}

/** Cuts a file into front matter and body. Nothing in it is ever run, whatever language it asks for. */
export function splitEntry(file: SourceFile): SplitEntry {
  const address = addressOf(file.path);
  if ('code' in address) return { path: file.path, address: undefined, entry: undefined, problems: [address] };
  const unusable = (problems: readonly Diagnostic[]) => ({ path: file.path, address, entry: undefined, problems });

  const text = plainLines(file.text);
  const fences = findFences(text, file.path);
  if ('code' in fences) return unusable([fences]);
  const front = parseFrontMatter(fences.yaml, file.path);
  if (front.root === undefined) return unusable(front.problems);

  const body = text.slice(fences.bodyStart);
  const entry: RawEntry = {
    ...address,
    file: file.path,
    place: { file: file.path, line: 1, column: 1, field: '' },
    root: front.root,
    body,
    bodyLine: fences.bodyLine,
  };
  return {
    path: file.path,
    address,
    entry,
    problems: [...front.problems, ...htmlInBody(body, file.path, fences.bodyLine)],
  };
}

/** Without a byte order mark, and with one line end; lines and columns stay as an editor counts them. */
function plainLines(text: string): string {
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  return plain.includes('\r') ? plain.replace(/\r\n?/gu, '\n') : plain;
}
