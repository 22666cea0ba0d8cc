import type { Reel } from '#model/reel.ts';
import { entryHref } from '../links.ts';
import { html, joined, type Markup } from '../markup.ts';
import { factWords } from '../words/fact.ts';
import type { Lookup } from './lookup.ts';
import { personLink } from './person-link.ts';
import type { Cell } from './reel-cells.ts';

/** What the entry says for the keys that a reading may speak for: those of the form, and some that it has no cell for. */
export function readAs(reel: Reel, cells: readonly Cell[], lookup: Lookup): ReadonlyMap<string, Markup> {
  const facts = new Map(cells.map((cell) => [cell.key, cell.value] as const));
  const by = reel.recorded?.is === 'known' ? reel.recorded.value.by : undefined;
  if (by !== undefined) facts.set('recorded.by', personLink(by.value, lookup));
  if (reel.numbers.other !== undefined) {
    facts.set(
      'numbers.other',
      factWords(reel.numbers.other, (all) =>
        joined(
          all.map(({ value }) => html`<span class="as-written nb">${value}</span>`),
          ' ',
        ),
      ),
    );
  }
  if (reel.copiedFrom !== undefined) {
    facts.set(
      'copied-from',
      factWords(reel.copiedFrom, (ids) =>
        joined(
          ids.map(
            ({ value }) =>
              html`<a href="${entryHref('reels', value)}">${lookup.reel(value)?.reel.title.value ?? value}</a>`,
          ),
          ', ',
        ),
      ),
    );
  }
  return facts;
}
