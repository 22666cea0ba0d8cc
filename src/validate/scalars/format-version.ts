import { FORMAT } from '#model/format.ts';
import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** The version of the entries' form; a later one than this program knows isn't read as if it were known. */
export function parseFormatVersion(text: string): Parsed<number> {
  const version = /^[1-9]\d{0,3}$/u.test(text) ? Number(text) : undefined;
  if (version !== undefined && version <= FORMAT) return parsed(version);
  if (version === undefined)
    return refused(
      `${quoted(text)} is no version of a collection.`,
      String(FORMAT),
      'Take the key away, or write the number.',
    );
  return refused(
    `The entries are in form ${version}, and this program knows them up to form ${FORMAT}.`,
    `${FORMAT}, or a lower number`,
    'Get the newer program: this one may misread them.',
  );
}
