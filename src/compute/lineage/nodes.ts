import type { NodeId } from '#model/lineage.ts';
import type { Cut } from '#model/reel.ts';

export const reelNode = (id: string): NodeId => `reel:${id}`;
export const editionNode = (id: string): NodeId => `edition:${id}`;

/** A lacquer's node. One whose dash number nobody recorded goes by its place in the list, so that two stay two. */
export function cutNode(reel: string, cut: Cut, index: number): NodeId {
  return `cut:${reel}#${cut.number?.written ?? `unnumbered ${index + 1}`}`;
}

/** The reel's id, or undefined when the node is a cut or an edition. */
export const reelOf = (node: NodeId): string | undefined => (node.startsWith('reel:') ? node.slice(5) : undefined);

/** The reel that a cut was made from, or undefined when the node is no cut. */
export function reelOfCut(node: NodeId): string | undefined {
  return node.startsWith('cut:') ? node.slice(4, node.indexOf('#')) : undefined;
}
