import type { ReelSheet } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import type { Machine } from '#model/machine.ts';
import type { Millimetres } from '#model/units.ts';
import type { UnitSystem } from '#model/words.ts';
import type { PackShape } from '../drawings/pack.ts';
import { nominal, size } from '../words/size.ts';

/** The pack as it can be drawn; undefined while the hub, or every outside diameter, is unknown. */
export function packShape(
  { reel, worked }: ReelSheet,
  machines: readonly Machine[],
  units: UnitSystem,
): PackShape | undefined {
  const hub = valueOf(reel.pack.hubDiameter);
  if (hub === undefined) return undefined;
  const outside = valueOf(reel.pack.outsideDiameter);
  const workedMm = worked.find((one) => one.name === 'pack-diameter' && one.unit === 'mm')?.value;
  const shown = outside?.value ?? workedMm;
  if (shown === undefined) return undefined;
  const flange = flangeOf(reel, machines);
  const outsideWords =
    outside === undefined ? `${size(shown as Millimetres, units)} worked` : size(outside.value, units);
  const title = [
    `The pack to scale: hub ${size(hub.value, units)}`,
    outside && `wound tape to ${size(outside.value, units)}, measured`,
    workedMm !== undefined && `${size(workedMm as Millimetres, units)} worked out from the stated length`,
    flange && `the outline of a ${nominal(flange.mm as Millimetres)} flange`,
  ];
  return {
    hubMm: hub.value,
    measuredMm: outside?.value,
    workedMm,
    flange,
    words: { hub: size(hub.value, units), outside: outsideWords, title: title.filter(Boolean).join(', ') },
  };
}

/** The reel that it is on; for a bare hub the largest that a machine here takes, only for scale. */
function flangeOf(reel: ReelSheet['reel'], machines: readonly Machine[]): PackShape['flange'] {
  const own = valueOf(reel.pack.reelSize);
  if (own !== undefined) return { mm: own.value, there: true };
  const largest = Math.max(0, ...machines.map((machine) => valueOf(machine.largestReel)?.value ?? 0));
  return largest === 0 ? undefined : { mm: largest, there: false };
}

/** What the lines of the drawing mean, for the caption. */
export function packCaption(shape: PackShape): string {
  const measured =
    shape.measuredMm === undefined
      ? 'Broken line: worked out; nobody measured across the tape.'
      : 'Solid line: measured.';
  const dotted =
    shape.measuredMm !== undefined && shape.workedMm !== undefined
      ? ' Dotted line: worked out from the stated length.'
      : '';
  const flange =
    shape.flange === undefined
      ? ''
      : shape.flange.there
        ? ' Outer line: its reel.'
        : ' Fine outline: the largest reel that a machine here takes, for scale.';
  return measured + dotted + flange;
}
