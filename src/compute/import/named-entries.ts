import type { Loose } from '#model/entry.ts';
import type { SheetKind } from '#model/entry-column.ts';
import { idLike, isId } from '#model/entry-id.ts';
import { listsMeant, textsMeant } from './cell-forms.ts';
import { freeId, type ImportedEntry } from './read-rows.ts';
import type { Accepts } from './value-meant.ts';

/** Kinds of entry that rows of another kind name. */
export const NAMED_KINDS = ['editions', 'people', 'stocks', 'places'] as const;
export type NamedKind = (typeof NAMED_KINDS)[number] & SheetKind;

/** An entry that there is, by which a name is known again. */
export interface KnownEntry {
  readonly id: string;
  readonly title: string;
}

export interface WithNamed {
  /** The rows' own entries, each name that an entry was made of or found for put as its id. */
  readonly entries: readonly ImportedEntry[];
  readonly made: readonly ImportedEntry[];
  /** Cells that were kept under `also` and are facts now. */
  readonly moved: number;
}

/** A person's fact may be a free text, so a name stands there until an entry is made of it. */
const PERSONS = ['client', 'recorded.by', 'recorded.for', 'belongs-to'];
const INITIALS = /^(?:\p{Lu}\.){1,6}$/u;
const KIND_OF: Readonly<Record<string, NamedKind>> = { stock: 'stocks', 'place.at': 'places' };
const SIDE = /\b(?:sides?|s\.) ?\w{1,3}\)?$/iu;
const BETWEEN = /[\s,;:(–-]/u;

/** A reel's title without its side, which is the record's. */
function withoutSide(title: string): string {
  const trimmed = title.trim();
  let whole = trimmed.slice(0, SIDE.exec(trimmed)?.index ?? trimmed.length);
  while (BETWEEN.test(whole.at(-1) ?? '')) whole = whole.slice(0, -1);
  return whole;
}

/** Makes entries of what rows name: the record of a reel, the people on its label, its stock and its room. An entry that
 * there is, by the same title or id, is referred to and not made again.
 *
 * @param makes    Kinds of which entries are made; names of others stay as they are.
 * @param known    The entries there are.
 * @param accepts  Whether an entry of a kind can have a value under a key. */
export function withNamedEntries(
  given: readonly ImportedEntry[],
  makes: ReadonlySet<SheetKind>,
  known: Readonly<Record<NamedKind, readonly KnownEntry[]>>,
  accepts: (kind: NamedKind) => Accepts,
): WithNamed {
  const making = new Map(NAMED_KINDS.map((kind) => [kind, new Making(kind, known[kind], accepts(kind))] as const));
  let moved = 0;
  const entries = given.map((entry) => {
    const facts = new Map(entry.facts);
    const also = new Map(entry.also);
    const settle = (key: string, text: string) => {
      const at = [...also].find(([under, kept]) => kept === text && isUnder(under, key, entry))?.[0];
      if (at !== undefined && also.delete(at)) moved += 1;
    };
    const named = (key: string) => entry.named.find((one) => one.key === key)?.text;

    const editions = makes.has('editions') ? making.get('editions') : undefined;
    const of = entry.named.filter(({ key }) => key.startsWith('edition.'));
    const ids = facts.get('edition');
    const title = named('edition') ?? named('edition.title') ?? withoutSide(textOf(facts.get('title')));
    if (editions !== undefined && Array.isArray(ids)) {
      for (const id of ids) editions.byId(String(id), named('edition.title'));
      const [only] = ids;
      if (ids.length === 1) for (const one of of) if (editions.tell(String(only), one)) settle(one.key, one.text);
    } else if (editions !== undefined && (of.length > 0 || named('edition') !== undefined) && title !== '') {
      const id = editions.idFor(title, of, entry);
      facts.set('edition', [id]);
      for (const one of entry.named) if (one.key === 'edition' || editions.tells(id, one)) settle(one.key, one.text);
    }

    for (const [key, kind] of Object.entries(KIND_OF)) {
      const text = named(key);
      const fact = facts.get(key);
      if (!makes.has(kind)) continue;
      if (typeof fact === 'string' && fact !== 'none') making.get(kind)?.byId(fact);
      else if (text !== undefined && fact === undefined) {
        facts.set(key, making.get(kind)?.idFor(text, [], entry) ?? text);
        settle(key, text);
      }
    }
    for (const key of PERSONS) {
      const text = facts.get(key);
      if (!makes.has('people') || typeof text !== 'string' || ['none', 'owner'].includes(text)) continue;
      if (isId(text)) making.get('people')?.byId(text);
      else if (!INITIALS.test(text) && idLike(text) !== '')
        facts.set(key, making.get('people')?.idFor(text, [], entry) ?? text);
    }
    return { ...entry, facts, also };
  });
  return { entries, made: [...making.values()].flatMap((one) => [...one.made.values()]), moved };
}

/** Whether a key of `also` is where a named fact's cell was kept. */
const isUnder = (under: string, key: string, entry: ImportedEntry) =>
  entry.named.some((one) => one.key === key && (under === one.under || under.startsWith(`${one.under}, row `)));

const textOf = (value: Loose | undefined) => (typeof value === 'string' ? value : '');
const plain = (text: string) =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

interface Told {
  readonly key: string;
  readonly text: string;
}

interface MadeEntry extends ImportedEntry {
  readonly facts: Map<string, Loose>;
  readonly lines: number[];
}

/** The entries of one kind that are being made. */
class Making {
  readonly made = new Map<string, MadeEntry>();
  readonly #kind: NamedKind;
  readonly #accepts: Accepts;
  /** By plain title: ids of those that there are, and those that were made. */
  readonly #known: ReadonlyMap<string, string>;
  readonly #titled = new Map<string, MadeEntry[]>();
  readonly #taken: Set<string>;

  constructor(kind: NamedKind, known: readonly KnownEntry[], accepts: Accepts) {
    this.#kind = kind;
    this.#accepts = accepts;
    this.#known = new Map([...known].reverse().map(({ id, title }) => [plain(title), id]));
    this.#taken = new Set(known.map(({ id }) => id));
  }

  /** The id of the entry with a title: one that there is, one made before that nothing told speaks against, or a new one. */
  idFor(title: string, told: readonly Told[], from: ImportedEntry): string {
    const there = this.#known.get(plain(title));
    if (there !== undefined) return there;
    const same = this.#titled.get(plain(title))?.find((one) => told.every((fact) => this.#agrees(one, fact)));
    const id = same?.id ?? freeId(idLike(title) || `${this.#kind}-${from.lines[0] ?? 1}`, this.#taken);
    if (same === undefined) this.#begin(id, title, from);
    for (const fact of told) this.tell(id, fact);
    return id;
  }

  /** An entry that a row refers to by its id and that isn't there yet. */
  byId(id: string, title?: string): void {
    if (this.#taken.has(id)) return;
    const words = id.replaceAll('-', ' ');
    this.#begin(id, title ?? words.charAt(0).toUpperCase() + words.slice(1));
  }

  /** Adds a fact to a made entry; false where it can't be read, or the entry says something else, or isn't being made. */
  tell(id: string, fact: Told): boolean {
    const entry = this.made.get(id);
    const [key, value] = this.#read(fact);
    if (entry === undefined || value === undefined || !this.#agrees(entry, fact)) return false;
    if (!entry.facts.has(key)) entry.facts.set(key, value);
    return true;
  }

  /** Whether a made entry says what a row told. */
  tells(id: string, fact: Told): boolean {
    const [key, value] = this.#read(fact);
    const has = this.made.get(id)?.facts.get(key);
    return (
      value !== undefined && (JSON.stringify(has) === JSON.stringify(value) || (key === 'title' && has !== undefined))
    );
  }

  #begin(id: string, title: string, from?: ImportedEntry): void {
    const facts = new Map<string, Loose>([['title', title]]);
    const entry = { kind: this.#kind, id, lines: [...(from?.lines ?? [])], facts, also: new Map(), named: [] };
    this.made.set(id, entry);
    this.#taken.add(id);
    this.#titled.set(plain(title), [...(this.#titled.get(plain(title)) ?? []), entry]);
  }

  #agrees(entry: ImportedEntry, fact: Told): boolean {
    const [key, value] = this.#read(fact);
    const has = entry.facts.get(key);
    return key === 'title' || has === undefined || value === undefined || JSON.stringify(has) === JSON.stringify(value);
  }

  #read({ key, text }: Told): readonly [key: string, value: Loose | undefined] {
    const own = key.replace(/^edition\./u, '');
    const meant = own === 'catalogue' ? listsMeant(own, text, {}) : textsMeant(own, text, {});
    return [own, meant.find((value) => this.#accepts(own, value))];
  }
}
