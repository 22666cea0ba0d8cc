import type { ImportedEntry } from '#compute/import/read-rows.ts';
import type { Loose } from '#model/entry.ts';
import { columnsOf } from '#model/entry-column.ts';
import { isMapWritten, type Written } from '#read/written-value.ts';
import { blockText } from '#read/yaml-text.ts';

/** The facts of an imported entry as its front matter has them, in the order of the columns. */
export function factsOf(entry: ImportedEntry): ReadonlyMap<string, Written> {
  const tops = new Map<string, Written>();
  const facts = new Map(entry.facts);
  if (entry.kind === 'reels' && !facts.has('status')) facts.set('status', 'held');
  for (const { key } of columnsOf(entry.kind)) {
    const value = facts.get(key);
    const [top = '', below] = key.split('.');
    if (value === undefined || key === 'id' || key === 'body' || key === 'also') continue;
    if (below === undefined) tops.set(top, value as Written);
    else tops.set(top, { ...mapAt(tops, top), [below]: value as Written });
  }
  const also = alsoOf(facts.get('also'), entry.also);
  if (also !== undefined) tops.set('also', also as Written);
  return tops;
}

/** Facts as lines of front matter. */
export const yamlOf = (facts: Iterable<readonly [key: string, value: Written]>): string =>
  [...facts].map(([key, value]) => `${key}:${blockText(value, 0)}\n`).join('');

function mapAt(tops: ReadonlyMap<string, Written>, key: string): { readonly [key: string]: Written } {
  const value = tops.get(key);
  return isMapWritten(value) ? value : {};
}

function alsoOf(own: Loose | undefined, kept: ReadonlyMap<string, string>): Loose | undefined {
  if (kept.size === 0) return own;
  const more = Object.fromEntries(kept);
  if (own === undefined) return more;
  return typeof own === 'string' || Array.isArray(own) ? { also: own, ...more } : { ...own, ...more };
}

/** A whole new entry. */
export function entryText(entry: ImportedEntry): string {
  const body = entry.facts.get('body');
  return `---\n${yamlOf(factsOf(entry))}---\n${typeof body === 'string' ? `${body}\n` : ''}`;
}
