import { globSync } from 'node:fs';
import { join } from 'node:path';
import matter from 'gray-matter';
import { LineCounter, parseDocument } from 'yaml';

/** The entries of a collection, absolute. */
export const entryFiles = (collection: string): string[] =>
  globSync('**/*.md', { cwd: collection })
    .sort()
    .map((file) => join(collection, file));

/** Reading and parsing, and no more: gray-matter with yaml and positions. */
export function parsed(text: string): { data: unknown; content: string } {
  const parse = (yaml: string) => {
    const document = parseDocument(yaml, { schema: 'failsafe', uniqueKeys: true, lineCounter: new LineCounter() });
    return document.toJS() as object;
  };
  const { data, content } = matter(text, { language: 'yaml', engines: { yaml: { parse, stringify: () => '' } } });
  return { data, content };
}
