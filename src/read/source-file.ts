/** An entry's file as it was read. */
export interface SourceFile {
  /** Relative to the collection, with `/`. */
  readonly path: string;
  /** UTF-8, as on disk: byte order mark and line ends included. */
  readonly text: string;
}
