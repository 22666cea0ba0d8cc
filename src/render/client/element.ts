type Child = Node | string;

/** An element with its attributes and children; text is only ever text, so that what an entry says can't become markup. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...children);
  return made;
}

const SVG = 'http://www.w3.org/2000/svg';

/** A mark of the page's own sprite with its word beside it. */
export function markElement(shape: string, words: string, tone = 'plain'): HTMLElement {
  const picture = document.createElementNS(SVG, 'svg');
  picture.setAttribute('aria-hidden', 'true');
  const use = document.createElementNS(SVG, 'use');
  use.setAttribute('href', `#mk-${shape}`);
  picture.append(use);
  return element('span', { class: `mk ${tone}` }, picture, words);
}
