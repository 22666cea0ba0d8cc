import { type Parsed, parsed, quoted, refused } from './parsed.ts';

/** No language in use has a longer tag, and the maker of the text index stops at one. */
const LONGEST = 30;

/** A language by its tag: `en`, `de`, `pt-BR`. Source: BCP 47 (RFC 5646), section 2.1; of its forms for the language
 * itself, those that are in use: two or three letters. */
export function parseLanguage(text: string): Parsed<string> {
  try {
    const [tag] = text.length <= LONGEST && /^[a-z]{2,3}(?:-|$)/iu.test(text) ? Intl.getCanonicalLocales(text) : [];
    if (tag !== undefined) return parsed(tag);
  } catch {
    // Answered below: it isn't a tag.
  }
  return refused(
    `${quoted(text)} isn't a language's tag.`,
    'en, or de, or pt-BR',
    'Write the two or three letters that stand for the language; leave the line out for English.',
  );
}
