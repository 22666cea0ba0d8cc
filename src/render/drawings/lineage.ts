import type { Edge, NodeId } from '#model/lineage.ts';
import { html, type Markup } from '../markup.ts';
import type { LineageNode } from '../views/lineage-node.ts';
import { BOX, layOut } from './lineage-layout.ts';
import { routeLinks } from './lineage-routes.ts';

export interface LineageDrawing {
  readonly edges: readonly Edge[];
  readonly describe: (id: NodeId) => LineageNode;
  /** 1 for the first tape; null when nobody knows. */
  readonly generation: (reel: string) => number | null;
  /** The node whose page this is. */
  readonly own?: NodeId | undefined;
  readonly title: string;
}

const HEAD = 34;
/** Up to this width the drawing shrinks to its column; a wider one keeps its size and is scrolled. None is made larger. */
const FITS = 1180;

/** Copies in order, from left to right: the line says how a link is known, the outline whether the thing is here. */
export function drawLineage(drawing: LineageDrawing): Markup {
  const layout = layOut(drawing.edges, drawing.generation);
  const { columnX, width, paths } = routeLinks(drawing.edges, layout);
  const box = `-4 ${-HEAD} ${width + 8} ${layout.height + HEAD + 6}`;
  const size = html` width="${width + 8}" height="${layout.height + HEAD + 6}"`;
  const heads = layout.columns.map((name, column) => {
    const x = columnX[column] ?? 0;
    return html`<text class="c" x="${x}" y="-16">${name}</text><path class="head" d="M${x} -8h${BOX.width}"/>`;
  });
  const links = [...paths].map(([edge, path]) => html`<path class="link ${edge.how}" d="${path}"/>`);
  const boxes = [...layout.at].map(([id, { column, y }]) =>
    drawBox(drawing.describe(id), { x: columnX[column] ?? 0, y }, id === drawing.own),
  );
  return html`<svg class="chart${width > FITS ? '' : ' fits'}" viewBox="${box}"${size} role="group" aria-label="${drawing.title}">${heads}${links}${boxes}</svg>`;
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

function drawBox(node: LineageNode, { x, y }: Corner, own: boolean): Markup {
  const ne =
    node.trouble &&
    html`<g class="ne"><use href="#mk-differs" x="${x + BOX.width - 26}" y="${y + 39}" width="17" height="17"/></g>`;
  const inner = html`<title>${node.name}: ${node.caption}</title><rect class="${boxClass(node, own)}" x="${x}" y="${y}" width="${BOX.width}" height="${BOX.height}"/><text class="c" x="${x + 10}" y="${y + 21}">${cut(node.caption, 33)}</text><text class="tt" x="${x + 10}" y="${y + 43}">${cut(node.title, node.trouble ? 22 : 25)}</text><text class="l" x="${x + 10}" y="${y + 64}">${cut(node.line, 29)}</text>${ne}`;
  return node.link === undefined || own ? html`<g>${inner}</g>` : html`<a href="${node.link}">${inner}</a>`;
}

function boxClass(node: LineageNode, own: boolean): string {
  const here = node.status === 'held' ? ' held' : '';
  const lost =
    node.status === 'missing' || node.status === 'unknown' || node.status === 'gone' || node.status === 'destroyed'
      ? ' lost'
      : '';
  return `box${here}${lost}${node.trouble ? ' bad' : ''}${own ? ' this' : ''}`;
}

/** The list beside the drawing has the words in full. */
const cut = (words: string, most: number) => (words.length > most ? `${words.slice(0, most - 1).trimEnd()}…` : words);
