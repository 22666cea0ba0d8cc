import { type Parsed, parsed, quoted, refused } from './parsed.ts';

const EXPECTED = 'a file beside the entry, such as box-front.jpg';
const ODD = /[\p{Cc}\\]|^[/~]|^[a-z]:/iu;

/** The name of a file in the entry's own folder, or in a folder within it, with `/`. No name leads out of it, however it
 * is spelled. */
export function parseFileName(text: string): Parsed<string> {
  const spelled = decoded(text);
  const parts = spelled?.split('/') ?? [];
  if (
    spelled === undefined ||
    ODD.test(text) ||
    ODD.test(spelled) ||
    parts.some((part) => part === '..' || part === '.' || part === '')
  ) {
    return refused(
      `${quoted(text)} isn't the name of a file beside the entry.`,
      EXPECTED,
      "Put the file into the entry's own folder, and write its name alone.",
    );
  }
  return parsed(text);
}

/** As an address would be understood; undefined when its percent signs make no sense, which is harmless in a file's name. */
function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
