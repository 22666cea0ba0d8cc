import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type ParsedNode,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

/** One piece of text put in place of another. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export type MapNode = YAMLMap.Parsed;
export type ListNode = YAMLSeq.Parsed;
export type PairNode = Pair<ParsedNode, ParsedNode | null>;

/** A parsed text and where things in it begin and end. Columns and offsets are from 0. */
export class YamlPlaces {
  readonly text: string;
  readonly root: MapNode;

  constructor(text: string, document: Document.Parsed) {
    this.text = text;
    const root = document.contents;
    if (!isMap(root)) throw new Error('fault: front matter that was read as facts is no map');
    this.root = root as MapNode;
  }

  lineStart = (at: number): number => this.text.lastIndexOf('\n', at - 1) + 1;
  columnOf = (at: number): number => at - this.lineStart(at);

  /** Past the line break of the line that `at` is on. */
  nextLine(at: number): number {
    const end = this.text.indexOf('\n', at);
    return end < 0 ? this.text.length : end + 1;
  }

  pairs = (map: MapNode): readonly PairNode[] => map.items as unknown as readonly PairNode[];
  items = (list: ListNode): readonly (ParsedNode | null)[] => list.items as readonly (ParsedNode | null)[];

  /** The first pair with a key: a later one isn't read. */
  pairOf(map: MapNode, key: string): PairNode | undefined {
    return this.pairs(map).find((pair) => keyOf(pair) === key);
  }

  startOf = (pair: PairNode): number => pair.key.range[0];

  /** Just past the colon. */
  colonEnd(pair: PairNode): number {
    const sep = pair.srcToken?.sep ?? [];
    const colon = sep.find((token) => token.type === 'map-value-ind');
    if (colon === undefined) return pair.key.range[1];
    return colon.offset + 1;
  }

  /** Just past the last character of a pair. */
  endOfPair(pair: PairNode): number {
    return isNothing(pair.value) ? this.colonEnd(pair) : this.endOf(pair.value);
  }

  endOf(node: ParsedNode): number {
    if (isScalar(node)) {
      const written = this.text.slice(node.range[0], node.range[1]);
      return isBlockScalar(node) ? node.range[0] + written.trimEnd().length : node.range[1];
    }
    if (isFlow(node)) return node.range[1];
    if (isMap(node)) {
      const last = this.pairs(node as MapNode).at(-1);
      return last === undefined ? node.range[1] : this.endOfPair(last);
    }
    if (isSeq(node)) {
      const last = this.items(node as ListNode).at(-1);
      if (last !== null && last !== undefined && !isNothing(last)) return this.endOf(last);
      return node.range[0] + this.text.slice(node.range[0], node.range[1]).trimEnd().length;
    }
    return node.range[1];
  }

  /** Where a line goes that follows `at` in a block at `column`: behind the rest of the line, and behind the comments
   * that are set in further than the block. */
  lineAfter(at: number, column: number): number {
    let next = this.nextLine(at);
    for (;;) {
      const comment = /^( *)#/u.exec(this.text.slice(next, next + 200));
      if (comment === null || (comment[1] ?? '').length <= column) return next;
      next = this.nextLine(next);
    }
  }
}

export const keyOf = (pair: PairNode): string | undefined =>
  isScalar(pair.key) ? String(pair.key.value ?? '') : undefined;

/** Whether nothing stands behind a key or a dash. */
export const isNothing = (node: ParsedNode | null | undefined): node is null | undefined =>
  node === null || node === undefined || (isScalar(node) && node.range[0] === node.range[1]);

export const isFlow = (node: ParsedNode): boolean => (isMap(node) || isSeq(node)) && node.flow === true;

export const isBlockScalar = (node: Scalar): boolean => node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED';
