import type { Edge, NodeId } from '#model/lineage.ts';
import { html, type Markup } from '../markup.ts';
import type { LineageNode } from '../views/lineage-node.ts';
import { withoutRings } from './lineage-layout.ts';

const HOW_WORDS = {
  stated: 'stated',
  logged: 'logged on another box',
  proposed: 'proposed by the program, not a fact',
} as const;

/** The same as the drawing, as a nested list: for narrow screens, paper and screen readers. Something with two parents
 * stands under the first and is named again in one line under the other. */
export function lineageTree(edges: readonly Edge[], describe: (id: NodeId) => LineageNode, own?: NodeId): Markup {
  const straight = withoutRings(edges);
  const children = Map.groupBy(straight, (edge) => edge.from);
  const below = new Set(straight.map((edge) => edge.to));
  const roots = [...children.keys()].filter((node) => !below.has(node));
  const told = new Set<NodeId>();
  const branch = (id: NodeId, how: Edge | undefined): Markup => {
    const again = told.has(id);
    told.add(id);
    const node = describe(id);
    const kind = how === undefined || how.how === 'stated' ? '' : how.how;
    const note =
      how !== undefined && how.how !== 'stated' && html` <span class="small soft">${HOW_WORDS[how.how]}</span>`;
    if (again)
      return html`<li class="${kind}"><span class="small soft">also: ${node.link === undefined ? node.title : html`<a href="${node.link}">${node.title}</a>`}, above</span></li>`;
    const next = children.get(id) ?? [];
    return html`<li class="${kind}">${box(node, id === own)}${note}${next.length > 0 && html`<ul>${next.map((edge) => branch(edge.to, edge))}</ul>`}</li>`;
  };
  return html`<ul class="tree">${roots.map((root) => branch(root, undefined))}</ul>`;
}

function box(node: LineageNode, own: boolean): Markup {
  const lost =
    node.status === 'missing' || node.status === 'unknown' || node.status === 'gone' || node.status === 'destroyed';
  const className = `node${lost ? ' lost' : ''}${node.status === 'held' ? ' held' : ''}${node.trouble ? ' bad' : ''}${own ? ' this' : ''}`;
  const words = html`<span class="cap">${node.caption}${own && ' · this one'}${node.trouble && ' · disagrees'}</span><b>${node.title}</b>${node.line !== '' && `, ${node.line}`}${node.is === 'reel' && node.name !== node.title && html`<span class="cap">${node.name}</span>`}`;
  return node.link === undefined || own
    ? html`<span class="${className}">${words}</span>`
    : html`<a class="${className}" href="${node.link}">${words}</a>`;
}
