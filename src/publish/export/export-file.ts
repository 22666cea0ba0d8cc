/** What an export comes to: its files by path below where it goes (one with the name '' is the whole), and in words what
 * it can't carry. */
export interface Exported {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly leavesOut: readonly string[];
}
