import type { Catalogue } from '#model/catalogue.ts';
import { itemsOf } from '#model/fact.ts';
import { entryHref, href } from './links.ts';
import { madeOnce } from './made-once.ts';

/** Where the numbers and ids that a text may name lead to. */
export interface KnownLinks {
  /** Cuts a text into words to leave and names that lead somewhere. */
  readonly split: (text: string) => readonly (string | { readonly text: string; readonly to: string })[];
  /** The page of the entry in a file of the collection, given as a path from its root. */
  readonly pageOf: (file: string) => string | undefined;
}

/** Made once a catalogue. */
export const knownLinks = madeOnce('links', makeLinks);

/** A run of letters, digits and the signs that stand inside numbers and ids. */
const WORD = /[\p{L}\p{N}]+(?:[-/.][\p{L}\p{N}]+)*/gu;
/** A number may be written in up to this many words: `HLX 2207 A`. */
const MOST_WORDS = 3;
/** A figure by itself, a year say, is too common to be taken for a number. */
const TELLING = /^(?=.*\p{L})(?=.*\p{N}).{3,}$/u;

function makeLinks({ entries }: Catalogue): KnownLinks {
  const pages = new Map<string, string>();
  const names = new Map<string, string>();
  for (const kind of ['notes', 'people', 'places', 'stocks', 'machines', 'editions', 'reels'] as const) {
    for (const entry of entries[kind]) {
      pages.set(entry.file, entryHref(kind, entry.id));
      // One word in small letters may be a word of the text's own language; a hyphen or a figure makes it an id.
      if (/[-\d]/.test(entry.id)) names.set(entry.id, entryHref(kind, entry.id));
    }
  }
  const numbers = new Map<string, string>();
  const add = (written: string, to: string) => {
    const plain = plainOf(written);
    if (TELLING.test(plain) && !numbers.has(plain)) numbers.set(plain, to);
  };
  for (const edition of entries.editions)
    for (const number of itemsOf(edition.catalogue)) add(number.value, entryHref('editions', edition.id));
  for (const reel of entries.reels) {
    const { matrix, catalogue, job, other } = reel.numbers;
    for (const number of [matrix, catalogue, job, other].flatMap(itemsOf))
      add(number.value, entryHref('reels', reel.id));
  }
  pages.set('collection.md', href(''));
  return { pageOf: (file) => pages.get(file), split: (text) => split(text, names, numbers) };
}

const plainOf = (text: string) =>
  text
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '');

function split(text: string, names: ReadonlyMap<string, string>, numbers: ReadonlyMap<string, string>) {
  const parts: (string | { text: string; to: string })[] = [];
  const words = [...text.matchAll(WORD)];
  let done = 0;
  for (let index = 0; index < words.length; index += 1) {
    const found = nameAt(text, words, index, names, numbers);
    if (found === undefined) continue;
    parts.push(text.slice(done, found.start), { text: text.slice(found.start, found.end), to: found.to });
    done = found.end;
    index += found.words - 1;
  }
  return [...parts, text.slice(done)].filter((part) => part !== '');
}

/** The longest name that starts at a word. */
function nameAt(
  text: string,
  words: readonly RegExpExecArray[],
  index: number,
  names: ReadonlyMap<string, string>,
  numbers: ReadonlyMap<string, string>,
) {
  const first = words[index];
  if (first === undefined) return undefined;
  for (let many = MOST_WORDS; many > 0; many -= 1) {
    const last = words[index + many - 1];
    if (last === undefined) continue;
    const [start, end] = [first.index, last.index + last[0].length];
    const written = text.slice(start, end);
    if (many > 1 && !/^[\p{L}\p{N}/. -]+$/u.test(written)) continue;
    const to = (many === 1 ? names.get(written) : undefined) ?? numbers.get(plainOf(written));
    if (to !== undefined) return { start, end, to, words: many };
  }
  return undefined;
}
