/** The characters that turn the direction of whatever stands after them, up to an end that a text may leave out:
 * embeddings, overrides and isolates. Source: Unicode Bidirectional Algorithm (UAX #9), section 2. */
const TURNS = /[\u202a-\u202e\u2066-\u2069]/g;

/** A text, or a whole page of them, in which no such character is left: one entry's words could otherwise turn round the
 * words of the program beside them. In the place of each stands a sign that one can see, so that nothing is hidden. */
export const withoutTurns = (text: string): string => text.replace(TURNS, '\ufffd');

/** Whether UTF-8 holds one of them, which is quicker to know than to decode ten thousand pages that don't. */
export function holdsTurns(utf8: Uint8Array): boolean {
  for (let at = utf8.indexOf(0xe2); at >= 0; at = utf8.indexOf(0xe2, at + 1)) {
    const [second, third = 0] = [utf8[at + 1], utf8[at + 2]];
    if (second === 0x80 && third >= 0xaa && third <= 0xae) return true;
    if (second === 0x81 && third >= 0xa6 && third <= 0xa9) return true;
  }
  return false;
}
