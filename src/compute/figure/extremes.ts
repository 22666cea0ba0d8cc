/** The least and the greatest that a figure comes to when each input lies anywhere in its own band.
 *
 * Tried at every corner of the bands: exact for a figure that only rises or only falls with each input by itself,
 * as all of ours do. Errors are taken as limits and not as chances, so they aren't added as squares.
 *
 * @param bands  [low, high] of each input, in the order in which `figure` takes them. Up to some 12 that aren't exact.
 */
export function extremes(bands: readonly Band[], figure: (...inputs: number[]) => number): Band {
  let corners: number[][] = [[]];
  for (const [low, high] of bands) {
    const ends = low === high ? [low] : [low, high];
    corners = corners.flatMap((corner) => ends.map((end) => [...corner, end]));
  }
  const figures = corners.map((corner) => figure(...corner));
  return [Math.min(...figures), Math.max(...figures)];
}

export type Band = readonly [low: number, high: number];
