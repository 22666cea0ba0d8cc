import type { NoteContext } from './notes.ts';

/** As much of a Markdown tree as these steps look at. */
export interface MdastNode {
  type: string;
  value?: string;
  children?: MdastNode[];
}

/** As much of an HTML tree as these steps look at. */
export interface HastNode {
  type: string;
  tagName?: string;
  value?: string;
  properties?: Record<string, unknown>;
  children?: HastNode[];
}

const BLOCKS = new Set(['root', 'blockquote', 'listItem', 'footnoteDefinition']);

/** Raw HTML becomes the text that it is; where it stands by itself it becomes a paragraph. */
export function htmlAsText(node: MdastNode): void {
  for (const [index, child] of (node.children ?? []).entries()) {
    if (child.type !== 'html') {
      htmlAsText(child);
      continue;
    }
    const text = { type: 'text', value: child.value ?? '' };
    node.children?.splice(index, 1, BLOCKS.has(node.type) ? { type: 'paragraph', children: [text] } : text);
  }
}

/** A note stands under a section's heading: its own begin two levels lower. */
const HEADINGS: Readonly<Record<string, string>> = { h1: 'h3', h2: 'h4', h3: 'h5', h4: 'h6', h5: 'h6', h6: 'h6' };
const LEFT_ALONE = new Set(['a', 'pre', 'code']);

/** Links and pictures lead into the site; known numbers and ids become links; what leads nowhere stays as its words. */
export function elementsToSite(node: HastNode, note: NoteContext): void {
  const children: HastNode[] = [];
  for (const child of node.children ?? []) {
    if (child.type === 'text' && !LEFT_ALONE.has(node.tagName ?? ''))
      children.push(...linkedText(child.value ?? '', note));
    else if (child.type === 'element') children.push(...elementToSite(child, note));
    else children.push(child);
  }
  if (node.children !== undefined) node.children = children;
}

function elementToSite(element: HastNode, note: NoteContext): HastNode[] {
  if (element.tagName === 'img') return [picture(element, note)];
  elementsToSite(element, note);
  if (element.tagName === 'a') return link(element, note);
  const heading = HEADINGS[element.tagName ?? ''];
  if (heading !== undefined) element.tagName = heading;
  if (element.tagName === 'input')
    element.properties = { ...element.properties, ariaLabel: element.properties?.['checked'] ? 'done' : 'to do' };
  return [element];
}

function link(element: HastNode, note: NoteContext): HastNode[] {
  const to = note.linkOf(String(element.properties?.['href'] ?? ''));
  if (to === undefined) return element.children ?? [];
  const away = /^https?:/iu.test(to);
  element.properties = {
    ...element.properties,
    href: to,
    ...(away ? { rel: ['noreferrer', 'noopener', 'external'] } : {}),
  };
  return [element];
}

function picture(element: HastNode, note: NoteContext): HastNode {
  const alt = String(element.properties?.['alt'] ?? '');
  const found = note.pictureOf(String(element.properties?.['src'] ?? ''));
  if (found === undefined)
    return { type: 'text', value: `[picture not in the collection${alt === '' ? '' : `: ${alt}`}]` };
  return { ...element, properties: { ...found, alt, loading: 'lazy' } };
}

function linkedText(text: string, note: NoteContext): HastNode[] {
  return note.split(text).map((part) =>
    typeof part === 'string'
      ? { type: 'text', value: part }
      : {
          type: 'element',
          tagName: 'a',
          properties: { href: part.to },
          children: [{ type: 'text', value: part.text }],
        },
  );
}
