/** The floor of a build: a bare site that reads and parses each entry, passes each body through the same unified chain,
 * and runs Astro and Pagefind over as many pages and bytes. What ours costs above it is ours.
 *
 *     node tests/bench/floor/build.ts COLLECTION OUT PAGES BYTES_A_PAGE TEXTS
 *
 * TEXTS is a JSON list of what the text index is to hold, a text a page; the other pages aren't indexed. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';
import { entryFiles, parsed } from './parse.ts';

const [collection = '', out = '', pages = '0', bytes = '0', texts = ''] = process.argv.slice(2);
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';

const chain = unified().use(remarkParse).use(remarkRehype).use(rehypeSanitize).use(rehypeStringify).freeze();
const SENTENCE = '<p>As many plain words as one of ours, so that both write as much.</p>\n';
const indexed = JSON.parse(readFileSync(texts, 'utf8')) as readonly string[];
const bodies = entryFiles(collection).map((file, at) => {
  const { content } = parsed(readFileSync(file, 'utf8'));
  const html = String(chain.processSync(content));
  const short = Number(bytes) - html.length - (indexed[at]?.length ?? 0);
  return short > 0 ? html + SENTENCE.repeat(Math.ceil(short / SENTENCE.length)) : html;
});
(globalThis as unknown as Record<symbol, unknown>)[Symbol.for('tailout.floor')] = {
  bodies,
  indexed,
  pages: Number(pages),
};

const { build } = await import('astro');
await build({
  configFile: false,
  root: resolve(import.meta.dirname),
  srcDir: resolve(import.meta.dirname),
  outDir: out,
  cacheDir: `${out}-cache`,
  output: 'static',
  logLevel: 'warn',
  devToolbar: { enabled: false },
  build: { format: 'directory', inlineStylesheets: 'never' },
});

const { createIndex, close } = await import('pagefind');
const { index } = await createIndex({});
if (index === undefined) throw new Error('fault: no search index was made');
await index.addDirectory({ path: out });
await index.writeFiles({ outputPath: `${out}/pagefind` });
await close();
