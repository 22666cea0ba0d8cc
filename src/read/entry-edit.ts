import { parseDocument } from 'yaml';
import { findFences } from './fences.ts';
import { firstDifference, type Step } from './first-difference.ts';
import { sameWritten, type Written, type WrittenPath, withChange, withoutEmpty, writtenOf } from './written-value.ts';
import { parseFrontMatter } from './yaml.ts';
import { type Splice, YamlPlaces } from './yaml-splice.ts';
import { splicesFor } from './yaml-step.ts';
import { common } from './yaml-within.ts';

/** One thing to be changed in an entry. */
export interface Change {
  readonly path: WrittenPath;
  /** undefined takes the value away; empty texts, lists and maps count as nothing. */
  readonly to: Written | undefined;
}

/** That a change can't be made without writing more of the entry anew than was asked for. The text is as it was. */
export class CannotEdit extends Error {}

/** More steps than this are a new entry, not an edit. */
const MOST_STEPS = 2000;

/** Changes an entry's text: only what differs is put in, and comments, order, quoting, line ends and everything else stay
 * byte for byte. What comes out is read again, and says what was asked for and nothing else.
 *
 * @param text   The entry's whole file, byte order mark and all.
 * @param order  The keys of its kind, dotted, in the order in which new ones are put; a key that isn't in it goes last.
 * @throws {CannotEdit} when the entry can't be read, or has a form that a change doesn't fit into. */
export function editEntry(text: string, changes: readonly Change[], order: readonly string[]): string {
  const started = new EditedText(text);
  let wanted = started.written();
  for (const { path, to } of changes) {
    const changed = withChange(wanted, path, to === undefined ? undefined : withoutEmpty(to));
    if (changed === undefined) throw new CannotEdit('An entry with no facts at all can’t be read: leave its title.');
    wanted = changed;
  }
  let edited = started;
  let left = MOST_STEPS;
  for (;;) {
    const step = firstDifference(edited.written(), wanted);
    if (step === undefined) return edited.text;
    const splices = left-- > 0 ? splicesFor(edited.places(), step, order) : [];
    const next = firstThatFits(edited, step, splices);
    if (next === undefined) throw new CannotEdit(refusal(step.path));
    edited = next;
  }
}

/** The first way of doing a step after which the entry says what it should. */
function firstThatFits(edited: EditedText, step: Step, splices: readonly Splice[]): EditedText | undefined {
  const value = step.is === 'remove' ? undefined : step.value;
  const expected = step.is === 'insert' ? undefined : withChange(edited.written(), step.path, value);
  for (const [at, splice] of splices.entries()) {
    try {
      const next = edited.spliced(splice);
      if (next.text !== edited.text && (expected === undefined || sameWritten(next.written(), expected))) return next;
    } catch (error) {
      if (!(error instanceof CannotEdit) || at === splices.length - 1) throw error;
    }
  }
  return undefined;
}

const refusal = (path: WrittenPath) =>
  `${path.join('.')} is written in a form that can’t be changed here without touching other lines. Change it in a text editor.`;

/** Puts another account under the facts. What is the same at its beginning and end stays byte for byte; what comes has
 * the line ends that the file has. */
export function editBody(text: string, body: string): string {
  const edited = new EditedText(text);
  const before = edited.plain.slice(edited.bodyStart);
  const { same, rest } = common(before, body);
  const [start, end] = [edited.bodyStart + same, edited.plain.length - rest];
  return edited.spliced({ start, end, text: body.slice(same, body.length - rest) }, 'body').text;
}

/** A file's text, and the same with one kind of line end and no byte order mark, as it is read. */
class EditedText {
  readonly text: string;
  readonly plain: string;
  readonly bodyStart: number;
  readonly #yamlStart: number;
  readonly #yaml: string;
  /** In `text`, where each character is that `plain` doesn't have. */
  readonly #dropped: readonly number[];
  #written: Written | undefined;

  constructor(text: string) {
    this.text = text;
    const dropped = text.startsWith('\ufeff') ? [0] : [];
    for (const match of text.matchAll(/\r\n/gu)) dropped.push(match.index);
    this.#dropped = dropped;
    this.plain = text.replace(/^\ufeff/u, '').replace(/\r\n?/gu, '\n');
    const fences = findFences(this.plain, '');
    if ('code' in fences) throw new CannotEdit(`${fences.message} ${fences.action}`);
    this.#yaml = fences.yaml;
    this.#yamlStart = this.plain.indexOf('\n') + 1;
    this.bodyStart = fences.bodyStart;
  }

  written(): Written {
    if (this.#written !== undefined) return this.#written;
    const { root, problems } = parseFrontMatter(this.#yaml, '');
    if (root === undefined) {
      const [problem] = problems;
      throw new CannotEdit(`Line ${problem?.place.line ?? 1}: ${problem?.message ?? ''} ${problem?.action ?? ''}`);
    }
    this.#written = writtenOf(root);
    return this.#written;
  }

  places(): YamlPlaces {
    const options = { schema: 'failsafe', version: '1.2', uniqueKeys: false, keepSourceTokens: true } as const;
    return new YamlPlaces(
      this.#yaml,
      parseDocument(this.#yaml, { ...options, prettyErrors: false, logLevel: 'error' }),
    );
  }

  /** @param part  Whether offsets count within the front matter or the whole file. */
  spliced({ start, end, text }: Splice, part: 'yaml' | 'body' = 'yaml'): EditedText {
    const base = part === 'yaml' ? this.#yamlStart : 0;
    const put = this.#lineEnd() === '\n' ? text : text.replaceAll('\n', this.#lineEnd());
    return new EditedText(
      this.text.slice(0, this.#original(start + base)) + put + this.text.slice(this.#original(end + base)),
    );
  }

  /** The first line's. */
  #lineEnd(): string {
    return /\r\n|\r|\n/u.exec(this.text)?.[0] ?? '\n';
  }

  /** An offset in the file for one in its plain text. */
  #original(offset: number): number {
    let at = offset;
    for (const dropped of this.#dropped) {
      if (dropped > at || (dropped === at && this.text[dropped] !== '\ufeff')) break;
      at++;
    }
    return at;
  }
}
