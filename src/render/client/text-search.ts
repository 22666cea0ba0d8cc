import { askedOfIndex } from '#compute/identifiers/search-words.ts';
import { siteAddress } from './site-root.ts';

/** A page whose words answer. */
export interface TextHit {
  readonly address: string;
  readonly title: string;
  readonly what: string;
  /** Some words around the place, as text. */
  readonly excerpt: string;
}

export interface TextAnswer {
  readonly hits: readonly TextHit[];
  readonly total: number;
  /** By filter and value, how many pages of this answer have it. */
  readonly filters: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

export type Chosen = Readonly<Record<string, string>>;

interface Fragment {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: Readonly<Record<string, string>>;
}
interface Found {
  readonly results: readonly { readonly data: () => Promise<Fragment> }[];
  readonly filters?: TextAnswer['filters'];
}
interface TextIndex {
  readonly options: (given: { readonly baseUrl: string }) => Promise<void>;
  /** Fetches the filters; an answer counts by them only afterwards. */
  readonly filters: () => Promise<unknown>;
  readonly search: (text: string, given: { readonly filters: Chosen }) => Promise<Found>;
}

let loaded: Promise<TextIndex> | undefined;

function textIndex(): Promise<TextIndex> {
  loaded ??= load().catch((error: unknown) => {
    loaded = undefined;
    throw error;
  });
  return loaded;
}

async function load(): Promise<TextIndex> {
  const index: TextIndex = await import(/* @vite-ignore */ siteAddress('pagefind/pagefind.js'));
  await index.options({ baseUrl: new URL(siteAddress('')).pathname });
  return index;
}

/** Pages with these words, or with this number as a word, the best first.
 *
 * @param most    how many are read at most; all are counted.
 * @param chosen  what to narrow the answer to; without it the filters aren't fetched, and none are counted. */
export async function searchText(typed: string, most: number, chosen?: Chosen): Promise<TextAnswer> {
  const index = await textIndex();
  if (chosen !== undefined) await index.filters();
  for (const asked of askedOfIndex(typed)) {
    const { results, filters = {} } = await index.search(asked, { filters: chosen ?? {} });
    if (results.length === 0) continue;
    const hits = await Promise.all(results.slice(0, most).map(async ({ data }) => textHit(await data())));
    return { hits, total: results.length, filters };
  }
  return { hits: [], total: 0, filters: {} };
}

/** Words by which a number is found in the text index; no reader should see them. */
const NUMBER_WORDS = /\bn0[0-9a-z]+\b/g;

function textHit({ url, excerpt, meta }: Fragment): TextHit {
  const text = new DOMParser().parseFromString(excerpt, 'text/html').body.textContent ?? '';
  return {
    address: url,
    title: meta['title'] ?? url,
    what: meta['what'] ?? '',
    excerpt: text
      .replaceAll(NUMBER_WORDS, '')
      .replaceAll(/\s+/g, ' ')
      .replace(/(?<![\s.])[\s.]+$/, '')
      .trim(),
  };
}
