import type { Entries } from '#model/entries.ts';
import { itemsOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { Share } from '#model/share.ts';

/** Names in place of ids and file names, which the owner made up and which may say anything: `reel-1`, `outside-2`.
 * Given out as they are asked for. */
export class NeutralNames {
  readonly #given = new Map<string, string>();
  readonly #counts = new Map<string, number>();

  /** The name of a thing of one kind, the same each time. */
  of(kind: string, id: string): string {
    const key = `${kind} ${id}`;
    const known = this.#given.get(key);
    if (known !== undefined) return known;
    const count = (this.#counts.get(kind) ?? 0) + 1;
    this.#counts.set(kind, count);
    const name = `${kind}-${count}`;
    this.#given.set(key, name);
    return name;
  }

  /** Whether it was given out. */
  has(kind: string, id: string): boolean {
    return this.#given.has(`${kind} ${id}`);
  }

  /** Each id of a kind that was named, in order. */
  named(kind: string): readonly string[] {
    return [...this.#given.keys()].filter((key) => key.startsWith(`${kind} `)).map((key) => key.slice(kind.length + 1));
  }
}

/** The reels that a share shows and that there are, in its order, each once. */
export function reelsOf(share: Share, entries: Pick<Entries, 'reels'>): readonly Reel[] {
  const ids = new Set(itemsOf(share.reels).map((id) => id.value));
  return [...ids].flatMap((id) => entries.reels.find((reel) => reel.id === id) ?? []);
}
