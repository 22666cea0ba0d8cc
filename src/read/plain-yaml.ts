import type { Place } from '#model/place.ts';
import { lineValue, NotPlain } from './plain-flow.ts';
import type { Branch, Node } from './tree.ts';

/** Signs that the forms read here have no place for: tabs, carriage returns, controls, other line ends, a byte order mark. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const ODD = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff\ud800-\udfff]/u;
const KEY = /([A-Za-z][A-Za-z0-9-]*):(?: +|$)/y;
const BLANK = /^ *(?:#.*)?$/;
/** Front matter in the plain forms that entries are written in: keys and values a line, lists of dashes, brackets that
 * close on their own line, texts with or without quotes. It gives the very values and places that the YAML library
 * gives, in a tenth of the time; for every other form, and for whatever has a problem, `undefined`: the library is then
 * asked. That the two agree is tested on thousands of texts.
 *
 * @param yaml  Between the two `---` lines; its first line is the file's second. */
export function plainYaml(yaml: string, file: string): Branch | undefined {
  if (!yaml.endsWith('\n') || ODD.test(yaml)) return undefined;
  const lines = new Lines(yaml, file);
  try {
    const root = blockMap(lines, 0, '');
    return lines.isDone ? root : undefined;
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}

/** The lines that say something, from the first on. */
class Lines {
  readonly file: string;
  readonly #lines: readonly string[];
  #at = -1;
  /** Of the line at hand: where what is still to be read begins, which is its indent at first. */
  column = 0;

  constructor(yaml: string, file: string) {
    this.file = file;
    this.#lines = yaml.split('\n');
    this.next();
  }

  get isDone(): boolean {
    return this.#at >= this.#lines.length;
  }

  get text(): string {
    return this.#lines[this.#at] ?? '';
  }

  next(): void {
    do this.#at += 1;
    while (!this.isDone && BLANK.test(this.text));
    let indent = 0;
    while (this.text.charCodeAt(indent) === 32) indent += 1;
    this.column = this.isDone ? -1 : indent;
  }

  place(column: number, field: string): Place {
    return { file: this.file, line: this.#at + 2, column: column + 1, field };
  }
}

/** @param indent  of its keys, the first of which stands at the lines' column. */
function blockMap(lines: Lines, indent: number, field: string): Branch {
  const fields: Record<string, Node | undefined> = Object.create(null);
  const keyPlaces = new Map<string, Place>();
  const place = lines.place(lines.column, field);
  if (lines.column !== indent) throw new NotPlain();
  while (lines.column === indent) {
    KEY.lastIndex = indent;
    const name = KEY.exec(lines.text)?.[1];
    if (name === undefined || keyPlaces.has(name)) throw new NotPlain();
    const path = field === '' ? name : `${field}.${name}`;
    keyPlaces.set(name, lines.place(indent, path));
    fields[name] = behindKey(lines, KEY.lastIndex, indent, path);
  }
  return { is: 'map', fields, keyPlaces, place };
}

function behindKey(lines: Lines, column: number, indent: number, field: string): Node | undefined {
  const { text } = lines;
  if (column < text.length && text[column] !== '#') {
    const node = lineValue(text, column, (at, name) => lines.place(at, name), field);
    lines.next();
    // Deeper lines would go on with the value.
    if (lines.column > indent) throw new NotPlain();
    return node;
  }
  lines.next();
  if (lines.column < indent) return undefined;
  const dashed = isDash(lines);
  if (lines.column === indent) {
    if (dashed) throw new NotPlain();
    return undefined;
  }
  return dashed ? blockList(lines, field) : blockMap(lines, lines.column, field);
}

const isDash = (lines: Lines) => lines.text.startsWith('- ', lines.column);

function blockList(lines: Lines, field: string): Node {
  const indent = lines.column;
  const place = lines.place(indent, field);
  const items: (Node | undefined)[] = [];
  while (lines.column === indent) {
    const { text } = lines;
    if (!isDash(lines)) throw new NotPlain();
    let column = indent + 2;
    while (text.charCodeAt(column) === 32) column += 1;
    const path = `${field}[${items.length}]`;
    KEY.lastIndex = column;
    if (KEY.test(text)) {
      lines.column = column;
      items.push(blockMap(lines, column, path));
    } else {
      if (column >= text.length || text[column] === '#') throw new NotPlain();
      items.push(lineValue(text, column, (at, name) => lines.place(at, name), path));
      lines.next();
    }
    if (lines.column > indent) throw new NotPlain();
  }
  return { is: 'list', items, place };
}
