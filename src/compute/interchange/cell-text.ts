import type { Loose } from '#model/entry.ts';
import type { CellForm } from '#model/reel-column.ts';

/** What people put into a cell when nobody knows. */
export const SAYS_NOTHING = /^(?:[-–—?]+|n\/?a|unknown|not known|tbc|tbd)$/iu;

/** A text that would be lost or misread by itself stands in double quotes, as JSON writes it. */
const plainly = (text: string, clash: RegExp) =>
  text === '' || text !== text.trim() || /^["[{]/u.test(text) || clash.test(text) || SAYS_NOTHING.test(text)
    ? JSON.stringify(text)
    : text;

const NOTHING = /(?!)/u;
const LINE_END = /[\r\n]/u;
const LINE_END_OR_SEMICOLON = /[\r\n;]/u;

/** What stands in the cell of a fact. */
export function cellOf(value: Loose, form: CellForm): string {
  if (typeof value === 'string') return plainly(value, form === 'text' || form === 'free' ? NOTHING : LINE_END);
  if (form === 'free' || !isList(value)) return JSON.stringify(value);
  return value.map((item) => (typeof item === 'string' ? plainly(item, LINE_END) : lineText(item))).join('\n');
}

function lineText(facts: Loose): string {
  if (isList(facts) || typeof facts === 'string') return JSON.stringify(facts);
  const parts = Object.entries(facts).map(([key, value]) => {
    const text = typeof value === 'string' ? plainly(value, LINE_END_OR_SEMICOLON) : JSON.stringify(value);
    return `${key}: ${text}`;
  });
  return parts.length === 0 ? '{}' : parts.join('; ');
}

/** The fact that a cell states, the other way round. undefined where the cell isn't in the form of its column, so that
 * it can be kept as it stands. */
export function valueOfCell(cell: string, form: CellForm): Loose | undefined {
  const text = cell.trim();
  if (form === 'text') return unquoted(text);
  if (form === 'free') return /^[[{"]/u.test(text) ? (jsonOf(text) ?? text) : text;
  if (text === 'none') return text;
  const lines = text.split(/\r\n|\r|\n/u).filter((line) => line.trim() !== '');
  if (form === 'list') return lines.map((line) => unquoted(line.trim()));
  const facts = lines.map((line) => factsOfLine(line.trim()));
  return facts.every((line) => line !== undefined) ? facts : undefined;
}

function unquoted(text: string): string {
  const quoted = text.startsWith('"') && text.endsWith('"') ? jsonOf(text) : undefined;
  return typeof quoted === 'string' ? quoted : text;
}

function factsOfLine(line: string): Loose | undefined {
  if (line === '{}') return {};
  const facts: Record<string, Loose> = Object.create(null);
  let at = 0;
  while (at < line.length) {
    const key = /^\s*([a-z][a-z0-9-]*): ?/u.exec(line.slice(at));
    if (key === null) return undefined;
    at += key[0].length;
    const end = endOfValue(line, at);
    const text = line.slice(at, end).trim();
    const value = /^["[{]/u.test(text) ? jsonOf(text) : text;
    if (value === undefined || text === '') return undefined;
    facts[key[1] ?? ''] = value;
    at = end + 1;
  }
  return facts;
}

/** The next semicolon that is outside quotes, or the end. */
function endOfValue(line: string, from: number): number {
  const quotes = /^["[{]/u.test(line.slice(from));
  let inside = false;
  for (let at = from; at < line.length; at++) {
    if (quotes && line[at] === '\\' && inside) at++;
    else if (quotes && line[at] === '"') inside = !inside;
    else if (line[at] === ';' && !inside) return at;
  }
  return line.length;
}

function jsonOf(text: string): Loose | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isLoose(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function isLoose(value: unknown): value is Loose {
  if (typeof value === 'string') return true;
  if (Array.isArray(value)) return value.every(isLoose);
  return typeof value === 'object' && value !== null && Object.values(value).every(isLoose);
}

const isList = (value: Loose): value is readonly Loose[] => Array.isArray(value);
