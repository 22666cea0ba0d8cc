import { type Parser, parsed } from './parsed.ts';

/** Free text, as written. */
export const parseText: Parser<string> = (text) => parsed(text);
