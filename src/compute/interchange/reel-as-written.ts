import type { Loose } from '#model/entry.ts';
import type { Fact, Known } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';

/** Keys that an entry spells otherwise than the model does. */
const RENAMED: ReadonlyMap<string, string> = new Map([
  ['durationS', 'length'],
  ['gapAfterS', 'gap-after'],
  ['temperatureC', 'temperature'],
  ['halfSpeed', 'half-speed'],
]);

type Part = Fact<unknown> | readonly unknown[] | object | undefined;

/** Every recorded fact of a reel as its entry writes it, by dotted key: what is read back gives the same facts. Free text
 * under the front matter has the key `body`. */
export function reelAsWritten(reel: Reel): ReadonlyMap<string, Loose> {
  const facts = new Map<string, Loose>([['id', reel.id]]);
  const take = (key: string, part: Part) => {
    const text = writtenOf(part);
    if (text !== undefined) facts.set(key, text);
  };
  const below = (key: string, part: object | undefined) => {
    for (const [name, inner] of Object.entries(part ?? {}))
      if (name !== 'place') take(`${key}.${spelled(name)}`, inner as Part);
  };
  const either = (key: string, fact: Fact<object> | undefined) =>
    fact?.is === 'known' ? below(key, fact.value) : take(key, fact);

  take('title', reel.title);
  take('status', reel.status);
  below('lent', reel.lent);
  below('left', reel.left);
  take('kind', reel.kind);
  take('set', reel.set);
  take('side', reel.sides);
  take('edition', reel.editions);
  below('numbers', reel.numbers);
  take('client', reel.client);
  take('length', reel.durationS);
  take('contents', reel.contents);
  take('gaps', reel.gaps);
  either('run-out-sound', reel.runOutSound);
  below('format', reel.format);
  below('pack', reel.pack);
  take('stock', reel.stock);
  either('recorded', reel.recorded);
  take('copied-from', reel.copiedFrom);
  take('generation', reel.generation);
  take('copy-log', reel.copyLog);
  take('splices', reel.splices);
  take('cuts', reel.cuts);
  take('photos', reel.photos);
  take('readings', reel.readings);
  take('condition', reel.condition);
  if (reel.handling?.is === 'known')
    facts.set(
      'handling',
      reel.handling.value.map((line) => lineOf(line, HANDLING)),
    );
  else take('handling', reel.handling);
  either('place', reel.placeKept);
  take('custody', reel.custody);
  take('valuations', reel.valuations);
  take('rights', reel.rights);
  if (reel.private.length > 0) take('private', reel.private);
  if (reel.accepted.length > 0) take('accepted', reel.accepted);
  if (reel.also !== undefined) facts.set('also', reel.also);
  const body = reel.body.trim();
  if (body !== '') facts.set('body', body);
  return facts;
}

/** A treatment's time is a duration, while a title's is its length. */
const HANDLING: ReadonlyMap<string, string> = new Map([...RENAMED, ['durationS', 'duration']]);

function writtenOf(part: Part): Loose | undefined {
  if (part === undefined) return undefined;
  if (Array.isArray(part)) return part.map(itemOf);
  if (!('is' in part)) return lineOf(part, RENAMED);
  if (part.is === 'none') return 'none';
  const { value, written } = part as Known<unknown>;
  return Array.isArray(value) ? value.map(itemOf) : written;
}

const itemOf = (item: object): Loose => ('is' in item ? (item as Known<unknown>).written : lineOf(item, RENAMED));

function lineOf(line: object, names: ReadonlyMap<string, string>): Loose {
  const facts: Record<string, Loose> = {};
  for (const [name, part] of Object.entries(line)) {
    const text = name === 'place' ? undefined : writtenOf(part as Part);
    if (text !== undefined) facts[spelled(name, names)] = text;
  }
  return facts;
}

/** `noiseReduction` → `noise-reduction`. */
const spelled = (name: string, names = RENAMED): string =>
  names.get(name) ?? name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
