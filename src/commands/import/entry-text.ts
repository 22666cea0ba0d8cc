import type { ImportedReel } from '#compute/import/read-rows.ts';
import type { Loose } from '#model/entry.ts';
import { REEL_COLUMNS } from '#model/reel-column.ts';
import { isMapWritten, type Written } from '#read/written-value.ts';
import { blockText } from '#read/yaml-text.ts';

/** The front matter of an imported reel, a line or more a top-level key, in the order of the columns. */
export function frontMatterOf(reel: ImportedReel): ReadonlyMap<string, string> {
  const tops = new Map<string, Written>();
  const facts = new Map(reel.facts);
  if (!facts.has('status')) facts.set('status', 'held');
  for (const { key } of REEL_COLUMNS) {
    const value = facts.get(key);
    const [top = '', below] = key.split('.');
    if (value === undefined || key === 'id' || key === 'body' || key === 'also') continue;
    if (below === undefined) tops.set(top, value as Written);
    else tops.set(top, { ...mapAt(tops, top), [below]: value as Written });
  }
  const also = alsoOf(facts.get('also'), reel.also);
  if (also !== undefined) tops.set('also', also as Written);
  return new Map([...tops].map(([key, value]) => [key, `${key}:${blockText(value, 0)}\n`]));
}

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
export function entryText(reel: ImportedReel): string {
  const body = reel.facts.get('body');
  return `---\n${[...frontMatterOf(reel).values()].join('')}---\n${typeof body === 'string' ? `${body}\n` : ''}`;
}
