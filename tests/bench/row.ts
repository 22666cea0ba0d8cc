/** A line of the table of ratios. `goal` is what the ratio should stay under; `peak_MiB` of ours. */
export interface BenchRow {
  readonly work: string;
  readonly size: number | string;
  readonly seconds: number;
  readonly floor: number;
  readonly ratio: number;
  readonly goal: number;
  readonly peak_MiB: number;
  /** Seconds of processor, ours over the floor’s: steadier than the clock on a machine that others use. */
  readonly cpu_ratio?: number;
}

export const round = (count: number, places = 2) => Number(count.toFixed(places));
