import { inchesPerSecond } from '#model/units.ts';
import { dateIsRead } from '../identifiers/dates-read.ts';
import { readingAllows } from '../identifiers/reading-allows.ts';
import { orderOf } from '../identifiers/sides.ts';
import {
  curveIsRead,
  kindIsRead,
  noiseReductionIsRead,
  saidOnLabel,
  tracksAreRead,
} from '../identifiers/words-read.ts';
import { speedIsRead } from '../tape/reading-of-speed.ts';
import { timeIsRead } from '../tape/reading-of-time.ts';
import type { ReadFact } from './read-facts.ts';

/** At this speed and below, IEC and NAB are one curve (IASA-TC 04 section 5.4.10.2, table 1). */
const ONE_CURVE_UP_TO = inchesPerSecond(3.75);

/** Whether a fact can be what a label was read as. */
export function isAsRead(fact: ReadFact, read: string): boolean {
  switch (fact.is) {
    case 'number':
      return fact.values.some((number) => readingAllows(read, number.value));
    case 'duration':
      return timeIsRead(read, fact.value.value);
    case 'speed':
      return speedIsRead(read, fact.value.value);
    case 'date':
      return dateIsRead(read, fact.value.value);
    case 'kind':
      return kindIsRead(read, fact.value.value);
    case 'tracks':
      return tracksAreRead(read, fact.value.value);
    case 'equalisation': {
      const curve = fact.value.value;
      return curve.is !== 'name' || curveIsRead(read, curve.name, (fact.speed ?? 0) <= ONE_CURVE_UP_TO);
    }
    case 'noise reduction':
      return noiseReductionIsRead(read, fact.value.is === 'known' ? fact.value.value : undefined);
    case 'side':
      return sideIsRead(
        read,
        fact.values.map((side) => side.value),
      );
  }
}

/** Whether the two differ and may both be right: a letter and a figure of one shape, as a typewriter has them, or a word
 * that a label uses for more than this, such as a mono programme on two tracks, or a copy in its master's box. */
export function mayBeBoth(fact: ReadFact, read: string): boolean {
  if (fact.is === 'kind' || fact.is === 'tracks') return true;
  return fact.is === 'number' && fact.values.some((number) => readingAllows(oneShape(read), oneShape(number.value)));
}

const oneShape = (text: string) => text.replaceAll(/[oO]/g, '0').replaceAll(/[Iil]/g, '1');

const SIDE_WORDS: Readonly<Record<string, string>> = { one: '1', two: '2', three: '3', four: '4' };
const AFTER_SIDE = /\b(?:side|face|seite)\W{0,3}(one|two|three|four|[a-h]|[1-8])\b/g;

/** A side stands after the word, or on a label by itself, as a figure or a letter; a text without one allows any. */
function sideIsRead(read: string, sides: readonly string[]): boolean {
  const text = saidOnLabel(read);
  if (text === undefined) return true;
  const after = [...text.matchAll(AFTER_SIDE)].map(([, word = '']) => SIDE_WORDS[word] ?? word);
  const words = after.length > 0 ? after : text.split(/[^\p{L}\p{N}]+/u);
  const named = words.flatMap((word) => orderOf(word.toUpperCase()) ?? []);
  return named.length === 0 || sides.some((side) => named.includes(orderOf(side) ?? 0));
}
