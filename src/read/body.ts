import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Diagnostic } from '#model/diagnostic.ts';
import { entryProblem } from './entry-problem.ts';

const MAYBE_HTML = /<[a-z!/?]/iu;
/** A longer body isn't looked through: the note is a courtesy, and the page shows the HTML as text either way. */
const LONGEST = 100_000;

const markdown = unified().use(remarkParse).freeze();

type Root = ReturnType<typeof markdown.parse>;
type MarkdownNode = Root | Root['children'][number];

/** A note where a body has raw HTML, which pages show as text. Bodies without a `<` cost nothing. */
export function htmlInBody(body: string, file: string, bodyLine: number): readonly Diagnostic[] {
  if (body.length > LONGEST || !MAYBE_HTML.test(body)) return [];
  const html = firstHtml(markdown.parse(body));
  if (html === undefined) return [];
  const start = html.position?.start ?? { line: 1, column: 1 };
  const place = { file, line: bodyLine + start.line - 1, column: start.column, field: '' };
  const words = {
    message: 'Raw HTML is shown as text.',
    found: html.value.slice(0, 200),
    expected: 'Markdown',
    action: 'Use Markdown for it; leave it if the text is meant to be read as it stands.',
  };
  return [entryProblem('entry/html-shown-as-text', place, words, 'note')];
}

function firstHtml(node: MarkdownNode): Extract<MarkdownNode, { type: 'html' }> | undefined {
  if (node.type === 'html') return node;
  if (!('children' in node)) return undefined;
  for (const child of node.children) {
    const html = firstHtml(child);
    if (html !== undefined) return html;
  }
  return undefined;
}
