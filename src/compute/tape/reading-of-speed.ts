import type { MillimetresPerSecond } from '#model/units.ts';
import { parseReading } from '../identifiers/reading-pattern.ts';
import { countingTexts } from '../identifiers/words-read.ts';
import { nominalSpeed, STANDARD_SPEEDS, sameSpeed } from './speeds.ts';

const FRACTIONS: Readonly<Record<string, string>> = { '½': '.5', '¼': '.25', '¾': '.75', '⅞': '.875' };
const COMMON_FRACTION = / (1\/2|1\/4|3\/4|7\/8)/g;
const AS_DECIMAL: Readonly<Record<string, string>> = { '1/2': '.5', '1/4': '.25', '3/4': '.75', '7/8': '.875' };

/** Whether a label's text can mean this speed. Of a printed form only what stands by a ticked box counts. A text with
 * unread characters, with boxes of which none is ticked, or with no standard speed in it, allows anything. */
export function speedIsRead(read: string, speedMmPerS: MillimetresPerSecond): boolean {
  const pattern = parseReading(read);
  if (!pattern.ok || pattern.parts.some((part) => part.is === 'character' && part.doubt !== 'none')) return true;
  const speeds = countingTexts(pattern.parts).flatMap(speedsIn);
  return speeds.length === 0 || speeds.some((one) => sameSpeed(one, speedMmPerS));
}

function speedsIn(text: string): readonly MillimetresPerSecond[] {
  const decimals = text
    .replaceAll(COMMON_FRACTION, (_, fraction: string) => AS_DECIMAL[fraction] ?? '')
    .replaceAll(/[½¼¾⅞]/g, (fraction) => FRACTIONS[fraction] ?? '')
    .replaceAll(',', '.');
  return (decimals.match(/\d+(?:\.\d+)?/g) ?? []).flatMap((figures) => {
    const count = Number(figures);
    const nominal = STANDARD_SPEEDS.find((speed) => speed.inPerS === count)?.speedMmPerS ?? nominalSpeed(count);
    return nominal === undefined ? [] : [nominal];
  });
}
