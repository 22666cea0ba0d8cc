/** The builder bundles the pages and what they pass through, which have a copy of this module of their own: only the global
 * object is shared. */
const KEY = Symbol.for('tailout.page-bytes');
const shared = globalThis as unknown as Record<symbol, { bytes?: Uint8Array } | undefined>;

/** Asks for the bytes of the next page that is made, as they are: in an answer they would be copied twice more, ten
 * thousand times. Gives what hands them out, once. */
export function takeBytes(): () => Uint8Array | undefined {
  const taker: { bytes?: Uint8Array } = {};
  shared[KEY] = taker;
  return () => {
    if (shared[KEY] === taker) shared[KEY] = undefined;
    return taker.bytes;
  };
}

/** Gives a page's bytes to whoever asked for them; false when nobody did. */
export function giveBytes(bytes: Uint8Array): boolean {
  const taker = shared[KEY];
  if (taker === undefined) return false;
  taker.bytes = bytes;
  shared[KEY] = undefined;
  return true;
}
