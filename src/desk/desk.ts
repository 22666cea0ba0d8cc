import type { Diagnostic } from '#model/diagnostic.ts';
import { byText } from '#model/diagnostic.ts';
import { ENTRY_KINDS, type EntryKind } from '#model/words.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { type Change, editBody, editEntry } from '#read/entry-edit.ts';
import { splitEntry } from '#read/front-matter.ts';
import { type Written, writtenOf } from '#read/written-value.ts';
import { EntryFiles, type FoundEntry } from './entry-files.ts';
import { keyOrder } from './fields/kinds.ts';
import { FreshFiles } from './fresh-files.ts';

export interface DeskOptions {
  /** The collection's folder; absolute. */
  readonly root: string;
  /** Reads, validates and checks files that may not be on disk as they stand. */
  readonly check: (files: CollectionFiles) => Promise<readonly Diagnostic[]>;
}

/** A line of the list of entries. */
export interface Listed {
  readonly kind: EntryKind;
  readonly id: string;
  readonly title: string;
}

/** An entry as the page gets it. */
export interface Opened {
  readonly kind: EntryKind;
  readonly id: string;
  readonly hash: string;
  /** undefined when it can't be read; `problems` says why. */
  readonly facts: Written | undefined;
  readonly body: string;
  /** Names of the photographs in its folder. */
  readonly images: readonly string[];
  readonly problems: readonly Diagnostic[];
}

/** What the page wants an entry to say. */
export interface Wish {
  readonly kind: EntryKind;
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

/** What can be done at the desk. Nothing is written but by `save`, `create` and `addPhotograph`, one at a time. */
export class Desk {
  readonly #options: DeskOptions;
  readonly #files: EntryFiles;
  readonly #fresh: FreshFiles;
  #queue: Promise<unknown> = Promise.resolve();

  constructor(options: DeskOptions) {
    this.#options = options;
    this.#files = new EntryFiles(options.root);
    this.#fresh = new FreshFiles(options.root);
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

  async open(kind: EntryKind, id: string): Promise<Opened> {
    const files = this.#fresh.now();
    const found = this.#files.find(files, kind, id);
    return await this.#opened(files, kind, id, found);
  }

  /** What the checks would say of an entry as wished for, and the lines that would change. Writes nothing. */
  async look(
    wish: Wish,
  ): Promise<{ problems: readonly Diagnostic[]; gone: readonly string[]; come: readonly string[] }> {
    const files = this.#fresh.now();
    const found = this.#files.find(files, wish.kind, wish.id);
    const text = wished(found.text, wish);
    return { problems: await this.#problems(files, found.path, text), ...changedLines(found.text, text) };
  }

  save(wish: Wish): Promise<Saved> {
    return this.#inTurn(async () => {
      const files = this.#fresh.now();
      const found = this.#files.find(files, wish.kind, wish.id);
      if (found.hash !== wish.hash) return { is: 'changed', theirs: found.text, yours: describe(wish) };
      const text = wished(found.text, wish);
      if (text !== found.text) await this.#files.replace(found, text);
      return { is: 'saved', entry: await this.open(wish.kind, wish.id) };
    });
  }

  create(kind: EntryKind, id: string, title: string): Promise<Opened> {
    return this.#inTurn(async () => {
      await this.#files.create(kind, id, title);
      return await this.open(kind, id);
    });
  }

  addPhotograph(kind: EntryKind, id: string, name: string, bytes: Uint8Array): Promise<string> {
    return this.#inTurn(async () => {
      const found = this.#files.find(this.#fresh.now(), kind, id);
      return await this.#files.addPhotograph(found, name, bytes);
    });
  }

  /** Where a photograph of an entry lies, if its folder has one of that name. */
  photograph(kind: EntryKind, id: string, name: string): string | undefined {
    const files = this.#fresh.now();
    const { path } = this.#files.find(files, kind, id);
    return imagesOf(files, path).includes(name) ? `${folderOf(path)}${name}` : undefined;
  }

  async #opened(
    files: CollectionFiles,
    kind: EntryKind,
    id: string,
    { path, text, hash }: FoundEntry,
  ): Promise<Opened> {
    const { entry } = splitEntry({ path, text });
    return {
      kind,
      id,
      hash,
      facts: entry === undefined ? undefined : writtenOf(entry.root),
      body: entry?.body ?? '',
      images: imagesOf(files, path),
      problems: await this.#problems(files, path, text),
    };
  }

  /** Of all the collection's problems, those that this entry has a part in. */
  async #problems(files: CollectionFiles, path: string, text: string): Promise<readonly Diagnostic[]> {
    const split = splitEntry({ path, text });
    const entries = files.entries.map((entry) => (entry.path === path ? split : entry));
    const others = files.problems.filter(({ place }) => place.file !== path);
    const problems = await this.#options.check({ ...files, entries, problems: [...others, ...split.problems] });
    return problems.filter(
      ({ place, related }) => place.file === path || related.some(({ place: other }) => other.file === path),
    );
  }

  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#queue.then(work, work);
    this.#queue = next.catch(() => undefined);
    return next;
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

function changedLines(before: string, after: string) {
  const old = before.split(/\r?\n/u);
  const now = after.split(/\r?\n/u);
  const only = (lines: readonly string[], others: ReadonlySet<string>) => lines.filter((line) => !others.has(line));
  return { gone: only(old, new Set(now)), come: only(now, new Set(old)) };
}

const folderOf = (path: string) => path.slice(0, path.lastIndexOf('/') + 1);

const imagesOf = (files: CollectionFiles, path: string) =>
  files.images.filter((image) => image.startsWith(folderOf(path))).map((image) => image.slice(folderOf(path).length));
