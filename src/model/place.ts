/** Where something stands in an entry: `file` relative to the collection, with `/`; line and column count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** A dotted path with indexes, such as `cuts[1].on`; empty for the entry as a whole. */
  readonly field: string;
}
