import { inMillimetres, type Micrometres, type Millimetres, millimetres } from '#model/units.ts';

/** Length of the tape in a wound pack.
 *
 *      L = π (D² − d²) / 4t        the pack's side area, unrolled
 *
 * Air between the turns is left out, so a loose pack reads long. A pack no wider than its hub holds nothing.
 *
 * @param outsideMm    D, across the wound tape (a diameter: 1 mm of radius is twice as much tape).
 * @param hubMm        d, where the tape starts.
 * @param thicknessUm  t, total: base, coat and back coat; over 0. A name such as "1.5 mil" is the base alone.
 * Source: geometry.
 */
export function packLength(outsideMm: Millimetres, hubMm: Millimetres, thicknessUm: Micrometres): Millimetres {
  const sideArea = (Math.PI * (outsideMm ** 2 - hubMm ** 2)) / 4;
  return millimetres(Math.max(0, sideArea) / inMillimetres(thicknessUm));
}

/** Diameter of the pack that a length of tape makes; the inverse of packLength.
 *
 *      D = √(d² + 4tL/π)
 *
 * Source: geometry.
 */
export function packDiameter(lengthMm: Millimetres, hubMm: Millimetres, thicknessUm: Micrometres): Millimetres {
  return millimetres(Math.sqrt(hubMm ** 2 + (4 * inMillimetres(thicknessUm) * lengthMm) / Math.PI));
}

/** Millimetres of tape that one millimetre of pack RADIUS holds at the rim: dL/dr = πD/t; a millimetre of diameter
 * holds half of it. The band of a pack is mostly this. Source: the derivative of packLength. */
export function lengthPerRadius(outsideMm: Millimetres, thicknessUm: Micrometres): number {
  return (Math.PI * outsideMm) / inMillimetres(thicknessUm);
}
