import rehypeSanitize, { defaultSchema } from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';
import type { EntryBase } from '#model/entry.ts';
import { knownLinks } from './known-links.ts';
import { href } from './links.ts';
import { Markup } from './markup.ts';
import { elementsToSite, type HastNode, htmlAsText, type MdastNode } from './note-trees.ts';
import { site } from './site.ts';

/** Signs of tables, strike-through, footnotes, bare addresses and tick lists; without them the larger grammar costs for nothing. */
const NEEDS_GFM = /[|~]|\[\^|www\.|https?:|\[[ x]\]/iu;

/** Footnotes keep the ids that their links point at: raw HTML is never parsed, so no id can come from the entry. */
const SCHEMA = { ...defaultSchema, clobberPrefix: '', clobber: [] };

const chain = (gfm: boolean) => {
  const parse = gfm ? unified().use(remarkParse).use(remarkGfm) : unified().use(remarkParse);
  return parse
    .use(() => (tree) => htmlAsText(tree as MdastNode))
    .use(remarkRehype, { clobberPrefix: 'note-' })
    .use(rehypeSanitize, SCHEMA)
    .use(() => (tree, file) => elementsToSite(tree as HastNode, file.data['note'] as NoteContext))
    .use(rehypeStringify)
    .freeze();
};

const plain = chain(false);
const large = chain(true);

/** What the last step of the chain needs to know of the collection. */
export interface NoteContext {
  readonly linkOf: (address: string) => string | undefined;
  readonly pictureOf: (
    address: string,
  ) => { readonly src: string; readonly width: number; readonly height: number } | undefined;
  readonly split: ReturnType<typeof knownLinks>['split'];
}

/** An entry's body as HTML: raw HTML shown as text, nothing loaded from elsewhere, known numbers and ids as links,
 * pictures of the collection in the form that the site carries. */
export function noteHtml(entry: Pick<EntryBase, 'body' | 'file'>): Markup {
  const chosen = NEEDS_GFM.test(entry.body) ? large : plain;
  return new Markup(String(chosen.processSync({ value: entry.body, data: { note: contextOf(entry.file) } })));
}

function contextOf(file: string): NoteContext {
  const { catalogue, photographs } = site();
  const links = knownLinks(catalogue);
  return {
    split: links.split,
    linkOf: (address) => {
      if (/^(https?:|mailto:|#)/iu.test(address)) return address;
      const [path = '', fragment] = address.split('#');
      const page = links.pageOf(inside(file, path) ?? '');
      return page === undefined ? undefined : page + (fragment === undefined ? '' : `#${fragment}`);
    },
    pictureOf: (address) => {
      const picture = photographs.get(inside(file, address) ?? '')?.sizes.at(-1);
      return picture && { src: href(picture.webp), width: picture.widthPx, height: picture.heightPx };
    },
  };
}

/** A relative address as a path from the collection's root; undefined when it has a scheme or a host, or leads out. */
export function inside(file: string, address: string): string | undefined {
  if (/^[a-z][a-z0-9+.-]*:|^[/\\]/iu.test(address)) return undefined;
  const path = file.split('/').slice(0, -1);
  for (const part of decoded(address).split('/')) {
    if (part === '..' && path.length === 0) return undefined;
    if (part === '..') path.pop();
    else if (part !== '.' && part !== '') path.push(part);
  }
  return path.join('/');
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
