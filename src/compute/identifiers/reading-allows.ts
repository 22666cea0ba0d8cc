import { mistakenFor } from './confusables.ts';
import { plainForm } from './plain.ts';
import { parseReading, type ReadCharacter } from './reading-pattern.ts';

/** What one place of a reading may be, in plain characters; undefined for one that could be anything. */
type May = ReadonlySet<string> | undefined;

/** Whether a number can be what a label was read as, letter by letter. An unread character may be any; one of several,
 * each of these; one in doubt, also what it is easily mistaken for. Spaces, dashes and case don't count, and a label
 * may hold more than the number, or only a part of it. A reading that can't be followed allows everything. */
export function readingAllows(read: string, number: string): boolean {
  const pattern = parseReading(read);
  if (!pattern.ok) return true;
  const places = pattern.parts.flatMap((part) => (part.is === 'character' ? placesOf(part) : []));
  const plain = [...plainForm(number)];
  if (places.length === 0 || plain.length === 0) return true;
  return isWithin(plain, places) || isAround(plain, places);
}

function placesOf(character: ReadCharacter): readonly May[] {
  if (character.mayBe.length === 0) return [undefined];
  const readings = character.mayBe.map(plainForm).filter((plain) => plain !== '');
  if (readings.length === 0) return [];
  if (readings.length > 1) return [new Set(readings)];
  const [only = ''] = readings;
  const also = character.doubt === 'doubtful' ? [...mistakenFor(only).keys()] : [];
  return [...only].map((one) => new Set([one, ...also]));
}

/** The number stands somewhere in the reading. */
function isWithin(plain: readonly string[], places: readonly May[]): boolean {
  for (let from = 0; from + plain.length <= places.length; from += 1) {
    if (plain.every((character, at) => allows(places[from + at], character))) return true;
  }
  return false;
}

/** The reading is a part of the number. */
function isAround(plain: readonly string[], places: readonly May[]): boolean {
  for (let from = 0; from + places.length <= plain.length; from += 1) {
    if (places.every((may, at) => allows(may, plain[from + at] ?? ''))) return true;
  }
  return false;
}

const allows = (may: May, character: string) => may === undefined || may.has(character);
