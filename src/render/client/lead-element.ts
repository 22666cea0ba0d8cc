import type { Lead } from '#compute/identifiers/number-search.ts';
import type { Whereabouts } from '#model/numbered.ts';
import { element, markElement } from './element.ts';
import { siteAddress } from './site-root.ts';

const MARKS: Readonly<Record<Whereabouts, readonly [shape: string, words: string, tone?: string]>> = {
  held: ['held', 'held', 'ok'],
  lent: ['away', 'lent'],
  elsewhere: ['away', 'elsewhere'],
  missing: ['missing', 'missing'],
  gone: ['none', 'gone', 'quiet'],
  destroyed: ['none', 'destroyed', 'quiet'],
  known: ['away', 'known of'],
};

/** Whether the thing is here, in shape and word. */
export const whereaboutsMark = (state: Whereabouts): HTMLElement => markElement(...MARKS[state]);

const SECTIONS: Partial<Record<Lead['of'], string>> = { cut: '#cuts', 'log line': '#lineage' };

/** The page that a number leads to; a cut and a log line stand on their reel's. */
export const leadAddress = ({ of, id }: Pick<Lead, 'of' | 'id'>): string =>
  siteAddress(`${of === 'edition' ? 'editions' : 'reels'}/${id}/${SECTIONS[of] ?? ''}`);

/** What the number is, and where it was read: `matrix, read from the box front`. */
export function useWords({ as, from, of }: Pick<Lead, 'as' | 'from' | 'of'>): string {
  if (as === 'cut') return 'lacquer';
  if (as === 'run-out') return 'run-out, as etched';
  if (as === 'copy log') return 'copy log';
  if (of === 'edition') return `${as} number of an edition`;
  return from === '' ? `${as} number` : `${as} number, read from: ${from}`;
}

/** A number as it is written. */
export const asWritten = (text: string): HTMLElement => element('span', { class: 'as-written' }, text);
