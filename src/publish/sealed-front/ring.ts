/** What the words of a sealed site open: its key, and the name of the file that lists all others. */
export interface Ring {
  readonly key: string;
  readonly list: string;
}

/** Site paths to the names of their sealed files and what they are. */
export type FileList = Readonly<Record<string, readonly [name: string, type: string]>>;

/** Where a tab keeps the ring until it is closed. */
export const KEPT_AS = 'sealed-site';
/** What the worker asks an open page when it has been put to sleep and woken again. */
export const ASK = 'ring?';
export const KEEPER = '__keeper.js';

export function ringOf(text: string): Ring | undefined {
  try {
    const { key, list } = JSON.parse(text) as Partial<Ring>;
    return typeof key === 'string' && typeof list === 'string' ? { key, list } : undefined;
  } catch {
    return undefined;
  }
}

/** Files of the opening page itself, which are never sealed. */
export const OPENING: readonly string[] = ['open.js', 'open.css', 'worker.js'];
