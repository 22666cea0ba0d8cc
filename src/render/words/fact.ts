import type { Fact } from '#model/fact.ts';
import { none, notRecorded } from '../marks.ts';
import { html, type Markup, type Printable } from '../markup.ts';

/** A fact as it is known: its value, `none` as a struck box, or *not recorded* as a broken one. They never look alike. */
export function factWords<T>(fact: Fact<T> | undefined, show: (value: T, written: string) => Printable): Markup {
  if (fact === undefined) return notRecorded();
  if (fact.is === 'none') return none();
  return html`${show(fact.value, fact.written)}`;
}

/** Letter by letter as an object or an entry has it. */
export const asWritten = (text: Printable): Markup => html`<span class="as-written">${text}</span>`;
