import type { Catalogue } from '#model/catalogue.ts';
import { byText } from '#model/diagnostic.ts';
import { madeOnce } from '../../made-once.ts';
import type { Printable } from '../../markup.ts';
import type { Part } from '../../nav.ts';
import { type ListPage, listPages } from '../list-pages.ts';

interface EntryRow {
  readonly title: string;
  readonly to: string;
  readonly cells: readonly Printable[];
}

/** The list of one kind of entry. */
export interface EntryList {
  /** Its first page is `path/`, further ones `path/page/2/` and so on, which no entry's page can be. */
  readonly path: string;
  readonly title: string;
  /** What its rows are: `editions`. */
  readonly of: string;
  readonly part: Part;
  /** The section's title. */
  readonly heading: string;
  readonly columns: readonly string[];
  /** What to record when there are none. */
  readonly empty: string;
  /** How many pages it has, one at least. */
  readonly pages: number;
  /** @param at  from 0. */
  readonly page: (at: number) => ListPage<EntryRow>;
}

/** What is told of a kind of entry to make its list. */
export interface ListOf<T extends { readonly id: string }> extends Omit<EntryList, 'pages' | 'page'> {
  readonly all: (catalogue: Catalogue) => readonly T[];
  readonly titleOf: (entry: T) => string;
  readonly row: (entry: T, catalogue: Catalogue) => Omit<EntryRow, 'title'>;
}

/** Entries in order of their titles, in pages, which are made once a catalogue; the rows of a page are made when it is. */
export function entryList<T extends { readonly id: string }>(of: ListOf<T>): (catalogue: Catalogue) => EntryList {
  const { all, titleOf, row, ...list } = of;
  const pagesOf = madeOnce(`list of ${of.of}`, (catalogue: Catalogue) => {
    const titled = all(catalogue).map((entry) => ({ entry, title: titleOf(entry) }));
    titled.sort((a, b) => byText(a.title, b.title) || byText(a.entry.id, b.entry.id));
    return listPages(titled, ({ title }) => title);
  });
  return (catalogue) => {
    const pages = pagesOf(catalogue);
    const page = (at: number) => {
      const found = pages[at];
      if (found === undefined) throw new Error(`fault: the list of ${of.of} has no page ${at + 1}`);
      return { ...found, rows: found.rows.map(({ entry, title }) => ({ title, ...row(entry, catalogue) })) };
    };
    return { ...list, pages: pages.length, page };
  };
}
