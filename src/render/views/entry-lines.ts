import type { Diagnostic } from '#model/diagnostic.ts';
import { html, joined, type Markup } from '../markup.ts';
import { site } from '../site.ts';

const AROUND = 1;
/** A line of an entry can be a whole paragraph. */
const LONGEST = 160;

/** The lines of the entry round a problem, numbered, with what was found marked; undefined when the text isn't at hand. */
export function entryLines({ place, found }: Diagnostic): Markup | undefined {
  const lines = site().entryLines?.get(place.file);
  if (lines === undefined || lines[place.line - 1] === undefined) return undefined;
  const first = Math.max(1, place.line - AROUND);
  const shown = lines.slice(first - 1, place.line + AROUND);
  const width = String(place.line + AROUND).length + 1;
  return joined(
    shown.map((line, index) => {
      const number = first + index;
      const text = number === place.line ? marked(line, place.column, found) : shortened(line);
      return html`<span class="ln">${String(number).padStart(width)}  </span>${text}`;
    }),
    '\n',
  );
}

function marked(line: string, column: number, found: string): Markup {
  const at = line.indexOf(found, Math.max(0, column - 2));
  if (found === '' || found.includes('\n') || at < 0) return html`${shortened(line)}`;
  const before = at > LONGEST / 2 ? `…${line.slice(at - LONGEST / 2, at)}` : line.slice(0, at);
  return html`${before}<mark>${shortened(found)}</mark>${shortened(line.slice(at + found.length))}`;
}

const shortened = (text: string) => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);
