/** An element of XML: its name, its attributes, and its text or the elements in it. */
export interface Element {
  readonly name: string;
  readonly attributes?: Readonly<Record<string, string>>;
  readonly inside: string | readonly (Element | undefined)[];
}

export const element = (
  name: string,
  inside: Element['inside'],
  attributes?: Readonly<Record<string, string>>,
): Element => ({ name, inside, ...(attributes === undefined ? {} : { attributes }) });

/** A file of XML 1.0. */
export const xmlText = (root: Element): string => `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}`;

function written({ name, attributes = {}, inside }: Element, indent: string): string {
  const given = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  const open = `${indent}<${name}${given.join('')}>`;
  if (typeof inside === 'string') return `${open}${escaped(inside)}</${name}>\n`;
  const parts = inside.flatMap((one) => (one === undefined ? [] : [written(one, `${indent}  `)]));
  return `${open}\n${parts.join('')}${indent}</${name}>\n`;
}

/** Characters that XML 1.0 has no way to write are shown as unread. Source: XML 1.0, fifth edition, 2.2. */
const UNWRITABLE = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (text: string) =>
  text
    .replace(UNWRITABLE, '\ufffd')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll('\r', '&#13;');
