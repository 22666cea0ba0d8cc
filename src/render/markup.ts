/** Text that is already HTML. Astro prints an object with this symbol as it stands, and escapes every other string. */
export class Markup extends String {
  get [Symbol.for('astro:html-string')]() {
    return true;
  }
}

export type Printable = Markup | string | number | undefined | false | readonly Printable[];

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export const escaped = (text: string): string => text.replace(/[&<>"']/g, (character) => ESCAPES[character] ?? '');

/** HTML or SVG with every value escaped, but for what is Markup already; lists are joined, `false` and undefined give nothing.
 * Values may stand in text and in quoted attributes, nowhere else. */
export function html(parts: TemplateStringsArray, ...values: readonly Printable[]): Markup {
  let text = parts[0] ?? '';
  for (let index = 0; index < values.length; index += 1) text += printed(values[index]) + (parts[index + 1] ?? '');
  return new Markup(text);
}

export const NOTHING = new Markup('');

/** Parts with something between them. */
export function joined(parts: readonly Printable[], between: string): Markup {
  return new Markup(parts.map(printed).join(escaped(between)));
}

function printed(value: Printable): string {
  if (value === undefined || value === false) return '';
  if (value instanceof Markup) return value.toString();
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return escaped(value);
  return (value as readonly Printable[]).map(printed).join('');
}
