/** The least and the greatest that a figure comes to when each input lies anywhere in its own band.
 *
 * Tried at every corner of the bands: exact for a figure that only rises or only falls with each input by itself,
 * as all of ours do. Errors are taken as limits and not as chances, so they aren't added as squares.
 *
 * @param bands  [low, high] of each input, in the order in which `figure` takes them. Up to some 12 that aren't exact.
 */
export function extremes(bands: readonly Band[], figure: (...inputs: number[]) => number): Band {
  const open = bands.flatMap(([low, high], at) => (low === high ? [] : [at]));
  const inputs = bands.map(([low]) => low);
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let corner = 0; corner < 2 ** open.length; corner += 1) {
    for (const [bit, at] of open.entries()) inputs[at] = bands[at]?.[(corner >> bit) & 1] ?? 0;
    const value = figure(...inputs);
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  return [least, greatest];
}

export type Band = readonly [low: number, high: number];
