type Given = string | number | boolean | undefined | ((event: Event) => void);

/** An element with attributes, listeners (`onclick`) and children. Texts are put in as texts, never as markup. */
export function el<T extends keyof HTMLElementTagNameMap>(
  tag: T,
  given: Readonly<Record<string, Given>> = {},
  ...children: (Node | string | undefined)[]
): HTMLElementTagNameMap[T] {
  const made = document.createElement(tag);
  for (const [key, value] of Object.entries(given)) {
    if (typeof value === 'function') made.addEventListener(key.slice(2), value);
    else if (value === true) made.setAttribute(key, '');
    else if (value !== false && value !== undefined) made.setAttribute(key, String(value));
  }
  made.append(...children.filter((child) => child !== undefined));
  return made;
}

export const button = (label: string, act: () => void, light = true, more: Record<string, Given> = {}) =>
  el('button', { type: 'button', class: light ? 'btn light' : 'btn', onclick: act, ...more }, label);

let count = 0;
/** An id that no other element of the page has. */
export const freshId = (): string => `f${++count}`;
