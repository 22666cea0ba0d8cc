/** A line of the table of ratios. `goal` is what the ratio should stay under; `peak_MiB` of ours. */
export interface BenchRow {
  readonly work: string;
  readonly size: number | string;
  readonly seconds: number;
  readonly floor: number;
  readonly ratio: number;
  readonly goal: number;
  readonly peak_MiB: number;
}

export const round = (count: number, places = 2) => Number(count.toFixed(places));
