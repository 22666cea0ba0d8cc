/** The characters that turn the direction of whatever stands after them, up to an end that a text may leave out:
 * embeddings, overrides and isolates. Source: Unicode Bidirectional Algorithm (UAX #9), section 2. */
const TURNS = /[\u202a-\u202e\u2066-\u2069]/g;

/** A text, or a whole page of them, in which no such character is left: one entry's words could otherwise turn round the
 * words of the program beside them. In the place of each stands a sign that one can see, so that nothing is hidden. */
export const withoutTurns = (text: string): string => text.replace(TURNS, '\ufffd');
