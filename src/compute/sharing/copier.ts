import type { Entries } from '#model/entries.ts';
import type { AcceptedCode, EntryBase } from '#model/entry.ts';
import type { Fact, Known } from '#model/fact.ts';
import type { PersonRef } from '#model/person.ts';
import type { Place } from '#model/place.ts';
import type { NeutralNames } from './neutral-names.ts';
import type { Allows } from './scope.ts';

/** Copies what may be shown out of an entry, fact by fact: what nobody asks it to copy stays behind. */
export class Copier {
  readonly allows: Allows;
  readonly names: NeutralNames;
  readonly file: string;
  readonly #entries: Entries;

  /** @param file  what the copy's places name as their file. */
  constructor(allows: Allows, names: NeutralNames, file: string, entries: Entries) {
    this.allows = allows;
    this.names = names;
    this.file = file;
    this.#entries = entries;
  }

  /** A position without the line, and without the file's name. */
  place(place: Place): Place {
    return { file: this.file, line: 0, column: 0, field: place.field };
  }

  known<T>(key: string, fact: Known<T> | undefined): Known<T> | undefined {
    if (fact === undefined || !this.allows(key)) return undefined;
    return { is: 'known', value: fact.value, written: fact.written, place: this.place(fact.place) };
  }

  fact<T>(key: string, fact: Fact<T> | undefined): Fact<T> | undefined {
    if (fact === undefined || !this.allows(key)) return undefined;
    return fact.is === 'none' ? this.#none(fact.place) : this.known(key, fact);
  }

  /** A list, each item copied by itself; an item that gives nothing is left out. The list as it was written is not
   * carried: it holds the items that were left out. */
  list<T>(
    key: string,
    fact: Fact<readonly T[]> | undefined,
    item: (one: T, at: number) => T | undefined,
  ): Fact<readonly T[]> | undefined {
    if (fact === undefined || !this.allows(key)) return undefined;
    if (fact.is === 'none') return this.#none(fact.place);
    const value = fact.value.map(item).filter((one): one is T & {} => one !== undefined);
    return { is: 'known', value, written: '', place: this.place(fact.place) };
  }

  /** A map of facts, copied part by part. */
  map<T>(key: string, fact: Fact<T> | undefined, parts: (value: T) => T): Fact<T> | undefined {
    if (fact === undefined || !this.#mayHold(key)) return undefined;
    if (fact.is === 'none') return this.allows(key) ? this.#none(fact.place) : undefined;
    return { is: 'known', value: parts(fact.value), written: '', place: this.place(fact.place) };
  }

  /** A list of numbers or words, written as its items are. */
  texts<T>(key: string, fact: Fact<readonly Known<T>[]> | undefined): Fact<readonly Known<T>[]> | undefined {
    const list = this.list(key, fact, (one) => this.known(key, one));
    if (list?.is !== 'known') return list;
    return { ...list, written: `[${list.value.map((one) => one.written).join(', ')}]` };
  }

  /** Someone whom an entry names: by the title of their own entry, never by its id. */
  person(key: string, who: Known<PersonRef> | undefined): Known<PersonRef> | undefined {
    if (who === undefined || !this.allows(key)) return undefined;
    const value = this.#person(who.value);
    return { is: 'known', value, written: 'text' in value ? value.text : value.is, place: this.place(who.place) };
  }

  personFact(key: string, who: Fact<PersonRef> | undefined): Fact<PersonRef> | undefined {
    if (who === undefined || !this.allows(key)) return undefined;
    return who.is === 'none' ? this.#none(who.place) : this.person(key, who);
  }

  /** An id of another entry, under its neutral name. */
  id(kind: string, id: Known<string>): Known<string> {
    const name = this.names.of(kind, id.value);
    return { is: 'known', value: name, written: name, place: this.place(id.place) };
  }

  /** What every entry has. Its title is the only part of it that is the owner's. */
  base<F extends EntryBase['folder']>(folder: F, entry: EntryBase, id: string, untitled: string) {
    const title = this.known('title', entry.title);
    const place = { file: this.file, line: 0, column: 0, field: '' };
    return {
      folder,
      id,
      file: this.file,
      place,
      keys: new Map<string, Place>(),
      title: title ?? { is: 'known' as const, value: untitled, written: untitled, place },
      body: this.allows('body') ? entry.body : '',
      bodyLine: 0,
      accepted: this.#accepted(entry.accepted),
      private: [],
      also: this.allows('also') ? entry.also : undefined,
    };
  }

  /** What the owner accepted of what the program said, and why: only where the share means to show it. */
  #accepted(list: readonly AcceptedCode[]): readonly AcceptedCode[] {
    return list.flatMap((one) => {
      const code = this.known('accepted', one.code);
      if (code === undefined) return [];
      return [
        {
          place: this.place(one.place),
          code,
          why: this.known('accepted.why', one.why),
          on: this.known('accepted.on', one.on),
        },
      ];
    });
  }

  /** Where a part may be shown though the whole may not. */
  #mayHold(key: string): boolean {
    return this.allows(key) || PARTS_OF[key]?.some((part) => this.allows(`${key}.${part}`)) === true;
  }

  #none(place: Place) {
    return { is: 'none' as const, written: 'none', place: this.place(place) };
  }

  #person(who: PersonRef): PersonRef {
    if (who.is !== 'entry') return who.is === 'owner' ? { is: 'owner' } : { is: who.is, text: who.text };
    const entry = this.#entries.people.find((person) => person.id === who.id);
    const hidden = entry === undefined || entry.private.some((key) => key.value === 'title');
    return { is: 'text', text: hidden ? 'someone' : entry.title.value };
  }
}

/** Maps of which a share may show a part. */
const PARTS_OF: Readonly<Record<string, readonly string[]>> = {
  recorded: ['on', 'by', 'at', 'for'],
  place: ['at', 'shelf', 'stored'],
  'run-out-sound': ['holds', 'length', 'form', 'counted'],
};

/** A side of an edition by its own letter or figure, and by the other way of counting: A is 1. */
export function sameSide(a: string, b: string): boolean {
  const plain = (side: string) => {
    const text = side.trim().toUpperCase();
    return /^[A-Z]$/.test(text) ? String(text.charCodeAt(0) - 64) : text;
  };
  return plain(a) === plain(b);
}
