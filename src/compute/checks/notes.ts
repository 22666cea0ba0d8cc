/** What one piece of work read, to tell later whether it would read the same again. */
export interface Note {
  /** Which of the sources, by the order in which they were made. */
  readonly source: number;
  readonly key: unknown;
  readonly value: unknown;
}

/** Notes what is read of sources while work is done. A later set of sources, made in the same order, can then be asked
 * whether all that was read is still the same: by identity, so what didn't change must be the same object. */
export class Notes {
  readonly #sources: ((key: unknown) => unknown)[] = [];
  #noting: Note[] | undefined;

  /** A value by itself. */
  value<T>(value: T): () => T {
    const source = this.#add(() => value);
    return () => {
      this.#note(source, undefined, value);
      return value;
    };
  }

  /** A map of which each key that is asked for is noted by itself.
   *
   * @param whole  stands for all of it, where it is walked through. */
  map<V>(map: ReadonlyMap<string, V>, whole: unknown): ReadonlyMap<string, V> {
    const all = this.value(whole);
    const source = this.#add((key) => map.get(key as string));
    const get = (key: string) => {
      const value = map.get(key);
      this.#note(source, key, value);
      return value;
    };
    const walked = () => {
      all();
      return map;
    };
    return {
      get,
      has: (key) => get(key) !== undefined,
      get size() {
        return walked().size;
      },
      forEach: (...given) => walked().forEach(...given),
      entries: () => walked().entries(),
      keys: () => walked().keys(),
      values: () => walked().values(),
      [Symbol.iterator]: () => walked()[Symbol.iterator](),
    };
  }

  /** Does work, and gives what it read. Work within work isn't provided for. */
  during<T>(work: () => T): { readonly answer: T; readonly notes: readonly Note[] } {
    const notes: Note[] = [];
    this.#noting = notes;
    try {
      return { answer: work(), notes };
    } finally {
      this.#noting = undefined;
    }
  }

  /** Whether these sources would give all that was read of earlier ones. */
  hold(notes: readonly Note[]): boolean {
    return notes.every(({ source, key, value }) => this.#sources[source]?.(key) === value);
  }

  #add(source: (key: unknown) => unknown): number {
    return this.#sources.push(source) - 1;
  }

  #note(source: number, key: unknown, value: unknown): void {
    const notes = this.#noting;
    if (notes === undefined) return;
    for (const note of notes) if (note.source === source && note.key === key) return;
    notes.push({ source, key, value });
  }
}
