/** Chance with a seed: the same seed gives the same run of numbers on any machine (mulberry32, public domain). */
export function seededNoise(seed: number) {
  let state = seed >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  /** Mean 0, spread 1 (Box and Muller's way). */
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());
  return { unit, normal };
}
