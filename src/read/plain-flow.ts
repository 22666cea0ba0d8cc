import type { Place } from '#model/place.ts';
import type { Node } from './tree.ts';

/** That a text has a form that isn't read here. */
export class NotPlain extends Error {}

/** What a text without quotes may begin with here: no sign that means something to YAML. */
const PLAIN_START = /[\p{L}\p{N}.(/$£€+½¼¾⅓⅔]/uy;
/** A key within brackets, and the colon and space behind it. */
const KEY = /([A-Za-z][A-Za-z0-9-]*): +/y;
const BEHIND = /^ *(?: #.*)?$/;
const DEEPEST = 8;

/** A value that ends on its own line, and its place.
 *
 * @param start  of the value on its line, from 0.
 * @throws {NotPlain} for what has another form. */
export function lineValue(
  line: string,
  start: number,
  placeAt: (column: number, field: string) => Place,
  field: string,
): Node | undefined {
  const first = line[start];
  if (first !== '[' && first !== '{' && first !== '"' && first !== "'") {
    const text = plainEnd(line, start, /(?: #|$)/g);
    return { is: 'scalar', text, place: placeAt(start, field) };
  }
  const reader = new FlowReader(line, start, placeAt);
  const node = reader.value(field, 0);
  if (!BEHIND.test(line.slice(reader.at))) throw new NotPlain();
  return node;
}

/** A text without quotes, up to what ends it. */
function plainEnd(line: string, start: number, end: RegExp): string {
  PLAIN_START.lastIndex = start;
  if (!PLAIN_START.test(line)) throw new NotPlain();
  end.lastIndex = start;
  let last = end.exec(line)?.index ?? line.length;
  // Spaces only: other blanks belong to the text.
  while (line.charCodeAt(last - 1) === 32) last -= 1;
  const text = line.slice(start, last);
  if (text.endsWith(':') || text.includes(': ')) throw new NotPlain();
  return text;
}

class FlowReader {
  readonly #line: string;
  readonly #placeAt: (column: number, field: string) => Place;
  at: number;

  constructor(line: string, at: number, placeAt: (column: number, field: string) => Place) {
    this.#line = line;
    this.at = at;
    this.#placeAt = placeAt;
  }

  value(field: string, depth: number): Node | undefined {
    if (depth > DEEPEST) throw new NotPlain();
    switch (this.#line[this.at]) {
      case '"':
      case "'":
        return this.#quoted(field);
      case '[':
        return this.#list(field, depth);
      case '{':
        return this.#map(field, depth);
      default:
        return this.#plain(field);
    }
  }

  #quoted(field: string): Node | undefined {
    const start = this.at;
    const sign = this.#line[start] ?? '';
    const end = this.#line.indexOf(sign, start + 1);
    const text = this.#line.slice(start + 1, end);
    // A doubled or a marked sign is part of the text.
    if (end < 0 || this.#line[end + 1] === sign || (sign === '"' && text.includes('\\'))) throw new NotPlain();
    this.at = end + 1;
    return text === '' ? undefined : { is: 'scalar', text, place: this.#placeAt(start, field) };
  }

  #plain(field: string): Node {
    const start = this.at;
    const text = plainEnd(this.#line, start, /[[\]{},]| #|:[[\]{},]/g);
    this.at = start + text.length;
    return { is: 'scalar', text, place: this.#placeAt(start, field) };
  }

  #list(field: string, depth: number): Node {
    const place = this.#placeAt(this.at, field);
    const items: (Node | undefined)[] = [];
    this.#each(']', () => items.push(this.value(`${field}[${items.length}]`, depth + 1)));
    return { is: 'list', items, place };
  }

  #map(field: string, depth: number): Node {
    const place = this.#placeAt(this.at, field);
    const fields: Record<string, Node | undefined> = Object.create(null);
    const keyPlaces = new Map<string, Place>();
    this.#each('}', () => {
      KEY.lastIndex = this.at;
      const name = KEY.exec(this.#line)?.[1];
      if (name === undefined || keyPlaces.has(name)) throw new NotPlain();
      const path = `${field}.${name}`;
      keyPlaces.set(name, this.#placeAt(this.at, path));
      this.at = KEY.lastIndex;
      fields[name] = this.value(path, depth + 1);
    });
    return { is: 'map', fields, keyPlaces, place };
  }

  /** What stands between the brackets, with commas between; none behind the last. */
  #each(close: string, take: () => void): void {
    this.at += 1;
    this.#skipSpaces();
    if (this.#line[this.at] === close) {
      this.at += 1;
      return;
    }
    for (;;) {
      take();
      this.#skipSpaces();
      const sign = this.#line[this.at];
      this.at += 1;
      if (sign === close) return;
      if (sign !== ',') throw new NotPlain();
      this.#skipSpaces();
    }
  }

  #skipSpaces(): void {
    while (this.#line.charCodeAt(this.at) === 32) this.at += 1;
  }
}
