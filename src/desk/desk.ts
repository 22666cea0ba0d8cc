import type { Accepted, Diagnostic } from '#model/diagnostic.ts';
import { byText } from '#model/diagnostic.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { type Change, editBody, editEntry } from '#read/entry-edit.ts';
import { splitEntry } from '#read/front-matter.ts';
import { type Written, writtenOf } from '#read/written-value.ts';
import { EntryFiles, type FoundEntry } from './entry-files.ts';
import { EntryMoves } from './entry-moves.ts';
import { type DeskKind, keyOrder } from './fields/kinds.ts';
import { type AddedLog, addLog, addPhotograph, imagesOf, photographOf } from './files-beside.ts';
import { FreshFiles } from './fresh-files.ts';
import { KeptBefore } from './kept-before.ts';
import { lineDiff } from './line-diff.ts';
import { Turns } from './turns.ts';

export interface DeskOptions {
  /** The collection's folder; absolute. */
  readonly root: string;
  /** Reads, validates and checks files that may not be on disk as they stand. */
  readonly check: (files: CollectionFiles) => Promise<Checked>;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

/** What the checks say of a collection: what is open, and what its entries accept. */
export interface Checked {
  readonly problems: readonly Diagnostic[];
  readonly accepted: readonly Accepted[];
}

/** A line of the list of entries. */
export interface Listed {
  readonly kind: EntryKind;
  readonly id: string;
  readonly title: string;
}

/** An entry as the page gets it. */
export interface Opened extends Checked {
  readonly kind: DeskKind;
  readonly id: string;
  readonly hash: string;
  /** undefined when it can't be read; `problems` says why. */
  readonly facts: Written | undefined;
  readonly body: string;
  /** Names of the photographs in its folder. */
  readonly images: readonly string[];
}

/** What the page wants an entry to say. */
export interface Wish {
  readonly kind: DeskKind;
  readonly id: string;
  /** Of the text that the page began with. */
  readonly hash: string;
  readonly changes: readonly Change[];
  readonly body?: string;
}

export type Saved =
  | { readonly is: 'saved'; readonly entry: Opened }
  /** Somebody else changed it meanwhile: both texts, and nothing written. */
  | { readonly is: 'changed'; readonly theirs: string; readonly yours: string };

/** What is entered at the desk. Nothing is written but when one of its methods is asked to, one at a time. */
export class Desk {
  readonly #options: DeskOptions;
  readonly #files: EntryFiles;
  readonly #fresh: FreshFiles;
  readonly #turns = new Turns();
  readonly moves: EntryMoves;

  constructor(options: DeskOptions) {
    const kept = new KeptBefore(options.root, options.now ?? Date.now);
    this.#options = options;
    this.#files = new EntryFiles(options.root, kept);
    this.#fresh = new FreshFiles(options.root);
    this.moves = new EntryMoves({ files: this.#files, fresh: this.#fresh, kept, turns: this.#turns });
  }

  entries(): readonly Listed[] {
    const listed = this.#fresh.now().entries.flatMap(({ address, entry }): Listed[] => {
      if (address === undefined || address.folder === 'collection') return [];
      const title = entry?.root.fields['title'];
      return [{ kind: address.folder, id: address.id, title: title?.is === 'scalar' ? title.text : address.id }];
    });
    const rank = ({ kind }: Listed) => ENTRY_KINDS.indexOf(kind);
    return listed.sort((a, b) => rank(a) - rank(b) || byText(a.title, b.title) || byText(a.id, b.id));
  }

  async open(kind: DeskKind, id: string): Promise<Opened> {
    const files = this.#fresh.now();
    const found = this.#files.find(files, kind, id);
    const { entry } = splitEntry(found);
    return {
      kind,
      id,
      hash: found.hash,
      facts: entry === undefined ? undefined : writtenOf(entry.root),
      body: entry?.body ?? '',
      images: imagesOf(files, found),
      ...(await this.#checked(files, found)),
    };
  }

  /** What the checks would say of an entry as wished for, and the lines that would change. Writes nothing. */
  async look(wish: Wish): Promise<Checked & { readonly lines: readonly string[] }> {
    const files = this.#fresh.now();
    const found = this.#files.find(files, wish.kind, wish.id);
    const text = wished(found.text, wish);
    return { ...(await this.#checked(files, { ...found, text })), lines: lineDiff(found.text, text) };
  }

  save(wish: Wish): Promise<Saved> {
    return this.#turns.take(async () => {
      const found = this.#files.find(this.#fresh.now(), wish.kind, wish.id);
      if (found.hash !== wish.hash) return { is: 'changed', theirs: found.text, yours: describe(wish) };
      const text = wished(found.text, wish);
      if (text !== found.text) await this.#files.replace(found, text);
      return { is: 'saved', entry: await this.open(wish.kind, wish.id) };
    });
  }

  create(kind: EntryKind, id: string, title: string): Promise<Opened> {
    return this.#turns.take(async () => {
      await this.#files.create(kind, id, title);
      return await this.open(kind, id);
    });
  }

  addPhotograph(kind: EntryKind, id: string, name: string, bytes: Uint8Array): Promise<string> {
    return this.#turns.take(async () => {
      const found = this.#files.find(this.#fresh.now(), kind, id);
      return await addPhotograph(this.#options.root, found, name, bytes);
    });
  }

  addLog(id: string, name: string, bytes: Uint8Array): Promise<AddedLog> {
    return this.#turns.take(async () => {
      const found = this.#files.find(this.#fresh.now(), 'places', id);
      return await addLog(this.#options.root, found, name, bytes);
    });
  }

  photograph(kind: EntryKind, id: string, name: string) {
    const files = this.#fresh.now();
    return photographOf(this.#options.root, files, this.#files.find(files, kind, id), name);
  }

  /** Of all that the checks say, what this entry has a part in. */
  async #checked(files: CollectionFiles, { path, text, there }: FoundEntry): Promise<Checked> {
    const split = splitEntry({ path, text });
    const entries = there ? files.entries.map((one) => (one.path === path ? split : one)) : [...files.entries, split];
    const others = files.problems.filter(({ place }) => place.file !== path);
    const all = await this.#options.check({ ...files, entries, problems: [...others, ...split.problems] });
    const own = ({ place, related }: Diagnostic) =>
      place.file === path || related.some(({ place: other }) => other.file === path);
    return { problems: all.problems.filter(own), accepted: all.accepted.filter(({ problem }) => own(problem)) };
  }
}

function wished(text: string, { kind, changes, body }: Wish): string {
  const facts = changes.length === 0 ? text : editEntry(text, changes, keyOrder(kind));
  return body === undefined ? facts : editBody(facts, body);
}

const describe = ({ changes, body }: Wish) =>
  [
    ...changes.map(({ path, to }) => `${path.join('.')}: ${to === undefined ? '(taken away)' : JSON.stringify(to)}`),
    ...(body === undefined ? [] : [body]),
  ].join('\n');
