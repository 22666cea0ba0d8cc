/** How a link is known. stated: the owner wrote it. logged: a copy-log line names it. proposed: matched by the
 * program, and never a fact until the owner writes it. */
export const HOWS = ['stated', 'logged', 'proposed'] as const;
export type How = (typeof HOWS)[number];

/** `reel:<id>`, `cut:<reel>#<number>` or `edition:<id>`. */
export type NodeId = string;

export interface Edge {
  readonly from: NodeId;
  readonly to: NodeId;
  readonly how: How;
  /** Why it is thought so; for a proposed link each reason. */
  readonly because: readonly string[];
}

export interface Generation {
  /** Over all known paths, the original master being 1; null when no path is known. */
  readonly shortest: number | null;
  readonly longest: number | null;
  readonly unknownLinks: number;
  readonly stated: number | null;
}

export interface ReelLineage {
  readonly parents: readonly string[];
  readonly children: readonly string[];
  readonly ancestors: readonly string[];
  readonly descendants: readonly string[];
  readonly generation: Generation;
}

/** A copy-log line matched to a reel that nobody linked. */
export interface Proposal {
  readonly parent: string;
  /** Index of the line in the parent's copy log. */
  readonly line: number;
  readonly reel: string;
  readonly reasons: readonly string[];
  readonly against: readonly string[];
}

export interface EditionLineage {
  readonly edition: string;
  readonly reels: readonly string[];
  readonly edges: readonly Edge[];
}

export interface Lineage {
  /** All edges, sorted by from, to, how. */
  readonly edges: readonly Edge[];
  readonly byReel: ReadonlyMap<string, ReelLineage>;
  readonly byEdition: readonly EditionLineage[];
  readonly proposals: readonly Proposal[];
  /** Each ring of reels that copy each other, as ids in order; such edges are in `edges` too. */
  readonly cycles: readonly (readonly string[])[];
}
